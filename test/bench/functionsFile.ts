import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { build, type Plugin } from "esbuild";
import { gzipSync } from "node:zlib";
import { projectRoot } from "../support/sourceFiles";

/** The tables of the national equations: species, coefficients, scientific names. */
const SPECIES_TABLES = /core[\\/]reference[\\/]national[\\/](species|speciesCoefficients|groupCoefficients)\.ts$/;

const file = path.join(projectRoot, "dist", "functions.js");
const ROUNDS = 25;

/** What the tables of the national equations weigh in functions.js, and how long it takes until cells may call it. */
export async function functionsFile(): Promise<readonly string[]> {
  const [whole, without] = [await bundled([]), await bundled([withoutSpeciesTables])];
  return [
    `| of it the species tables of the national equations | ${((whole - without) / 1000).toFixed(1)} kB | |`,
    `| functions.js, until a bare engine has every function | ${readyAfter().toFixed(1)} ms | |`,
  ];
}

async function bundled(plugins: readonly Plugin[]): Promise<number> {
  const { outputFiles } = await build({
    entryPoints: [path.join(projectRoot, "src/functions/register.ts")],
    bundle: true,
    minify: true,
    write: false,
    target: "es2020",
    plugins: [...plugins],
  });
  return gzipSync(outputFiles[0]?.contents ?? new Uint8Array(), { level: 9 }).length;
}

const withoutSpeciesTables: Plugin = {
  name: "withoutSpeciesTables",
  setup(building) {
    building.onLoad({ filter: SPECIES_TABLES }, ({ path: table }) => ({
      contents: `export const ${path.basename(table, ".ts")} = { lines: "" };`,
    }));
  },
};

function readyAfter(): number {
  const text = readFileSync(file, "utf8");
  const CustomFunctions = { associate: () => undefined, Error, ErrorCode: {} };
  const times = Array.from({ length: ROUNDS }, (_, round) => {
    const context = vm.createContext({ CustomFunctions });
    const start = performance.now();
    // A text of its own each time, so that no compiled copy is taken up again.
    vm.runInContext(`${text}\n//${round}`, context);
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? NaN;
}
