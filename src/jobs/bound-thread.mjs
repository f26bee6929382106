// What the bound's worker thread loads first: Piscina imports plain JavaScript, and this hands on to the TypeScript beside it.
import { tsImport } from "tsx/esm/api";

const { createRun } = await tsImport("./bound-worker.ts", import.meta.url);

export default await createRun();
