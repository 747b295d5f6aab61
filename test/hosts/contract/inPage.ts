import { excelHost } from "../../../src/hosts/excel/excelHost";
import { contract } from "./contract";

/** Bundled and put into the page by the browser test, which then runs one check after the other. */
Object.assign(globalThis, {
  contractNames: contract.map(({ name }) => name),
  runContract: (index: number) => contract[index]?.run(excelHost()),
});
