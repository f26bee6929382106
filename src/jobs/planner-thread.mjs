// What a worker thread loads first: Piscina imports plain JavaScript, and this hands on to the TypeScript beside it.
import { Piscina } from "piscina";
import { tsImport } from "tsx/esm/api";

const { createRun } = await tsImport("./planner-worker.ts", import.meta.url);

export default createRun(Piscina.workerData);
