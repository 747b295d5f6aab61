import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { associated } from "../support/customFunctions";
import { projectRoot } from "../support/sourceFiles";

type CellFunction = (...args: readonly unknown[]) => unknown;

let run = false;

/** A cell function out of the built functions.js, which is what the spreadsheet runs; its sources, file by file, run slower. */
export function builtFunction(id: string): CellFunction {
  if (!run) vm.runInThisContext(readFileSync(path.join(projectRoot, "dist", "functions.js"), "utf8"));
  run = true;
  const found = associated.get(id);
  if (!found) throw new Error(`dist/functions.js has no ${id}`);
  return found as CellFunction;
}
