/**
 * Compares a database with prisma/schema.prisma and returns the SQL that would make the database match; empty when they agree.
 * Policies, checks and functions are outside what Prisma models and never appear here.
 * Runs the schema engine as WebAssembly, so nothing is downloaded.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { PrismaPg } from "@prisma/adapter-pg";
import { bindMigrationAwareSqlAdapterFactory, ColumnTypeEnum } from "@prisma/driver-adapter-utils";
import { makeScratchDirectory, startEmbedded } from "./embedded.js";
import { migrate } from "./migrate.js";

/** The parts of the adapter and the engine touched here; neither package exports types for them. */
type Loose = Record<string, (...args: never[]) => Promise<unknown>>;

const CHAR_OID = 18;
const TEXT_OID = 25;

/** adapter-pg does not know PostgreSQL's one-byte "char" type, which the catalogue queries of the engine return. */
function readCharAsText(connection: object): object {
  const adapter = connection as Loose;
  const performIo = adapter["performIO"]!.bind(adapter) as (
    query: unknown,
  ) => Promise<{ fields?: { dataTypeID: number }[] }>;
  const queryRaw = adapter["queryRaw"]!.bind(adapter) as (query: unknown) => Promise<{ columnTypes: number[] }>;
  let charColumns: number[] = [];
  Object.assign(adapter, {
    performIO: async (query: unknown) => {
      const answer = await performIo(query);
      charColumns = [];
      answer.fields?.forEach((field, column) => {
        if (field.dataTypeID !== CHAR_OID) return;
        field.dataTypeID = TEXT_OID;
        charColumns.push(column);
      });
      return answer;
    },
    queryRaw: async (query: unknown) => {
      const answer = await queryRaw(query);
      for (const column of charColumns) answer.columnTypes[column] = ColumnTypeEnum.Character;
      return answer;
    },
  });
  return adapter;
}

class CharTolerantPg extends PrismaPg {
  override async connect() {
    return readCharAsText(await super.connect()) as Awaited<ReturnType<PrismaPg["connect"]>>;
  }
  override async connectToShadowDb() {
    return readCharAsText(await super.connectToShadowDb()) as Awaited<ReturnType<PrismaPg["connectToShadowDb"]>>;
  }
}

/** The lib files of Node's types leave the global out. */
interface WebAssemblyGlobal {
  Module: new (bytes: Uint8Array) => object;
  Instance: new (module: object, imports: Record<string, object>) => { exports: Record<string, unknown> };
}

interface SchemaEngine {
  diff(request: object): Promise<{ exitCode: number; stdout?: string }>;
}

/** @public A test runs it in a process of its own: the engine does not run inside Jest. */
export async function diffSchema(connectionString: string, schemaPath = "prisma/schema.prisma"): Promise<string> {
  const require = createRequire(import.meta.url);
  const wasmDirectory = dirname(require.resolve("@prisma/schema-engine-wasm"));
  const background = (await import("@prisma/schema-engine-wasm/schema_engine_bg")) as {
    __wbg_set_wasm(exports: unknown): void;
    SchemaEngine: { new: (options: object, log: () => void, factory: unknown) => Promise<SchemaEngine> };
  };
  const { WebAssembly } = globalThis as unknown as { WebAssembly: WebAssemblyGlobal };
  const instance = new WebAssembly.Instance(
    new WebAssembly.Module(readFileSync(join(wasmDirectory, "schema_engine_bg.wasm"))),
    { "./schema_engine_bg.js": background },
  );
  background.__wbg_set_wasm(instance.exports);
  (instance.exports["__wbindgen_start"] as () => void)();
  Object.assign(globalThis, {
    PRISMA_WASM_PANIC_REGISTRY: { set_message: (message: string) => process.stderr.write(`${message}\n`) },
  });
  const content = readFileSync(schemaPath, "utf8");
  const files = [{ path: "schema.prisma", content }];
  const engine = await background.SchemaEngine.new(
    { datamodels: [["schema.prisma", content]] },
    () => undefined,
    bindMigrationAwareSqlAdapterFactory(new CharTolerantPg({ connectionString })),
  );
  const answer = await engine.diff({
    from: { tag: "schemaDatasource", files, configDir: "." },
    to: { tag: "schemaDatamodel", files },
    script: true,
    shadowDatabaseUrl: null,
    exitCode: true,
    filters: { externalTables: ["public._prisma_migrations"], externalEnums: [] },
  });
  return answer.exitCode === 0 ? "" : (answer.stdout ?? "").trim();
}

/** The SQL that prisma/schema.prisma asks for beyond the migrations, found on a throw-away server; empty when they agree. */
export async function diffMigrations(): Promise<string> {
  const embedded = await startEmbedded(makeScratchDirectory(), { keep: false });
  try {
    await embedded.createDatabase("draft");
    await migrate(embedded.url("draft"));
    return await diffSchema(embedded.url("draft"));
  } finally {
    await embedded.stop();
  }
}
