import { excelHost } from "../../../src/hosts/excel/excelHost";
import { contract } from "./contract";

/**
 * Runs the contract in Excel itself, by hand. Side-load the add-in in an empty workbook that may be thrown away, and
 * build one script of this file:
 *
 *     npx esbuild test/hosts/contract/byHand.ts --bundle --outfile=dist/contract.js
 *
 * Open the task pane's developer tools (on the web: the browser's own, with the pane's frame chosen) and paste the script
 * into the console. It writes one line for each check; none may say FAILED.
 */
async function byHand(): Promise<void> {
  for (const { name, run } of contract) {
    try {
      await run(excelHost());
      console.info(`held    ${name}`);
    } catch (problem) {
      console.error(`FAILED  ${name}: ${problem instanceof Error ? problem.message : String(problem)}`);
    }
  }
}

void byHand();
