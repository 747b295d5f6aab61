import { expect } from "vitest";

/** Passes when a value agrees with print to half the printed step. */
export function expectAsPrinted(actual: number, printed: number, printedTo: number): void {
  expect(Math.abs(actual - printed), `${actual} against ${printed} as printed`).toBeLessThanOrEqual(
    printedTo / 2 + 1e-9,
  );
}
