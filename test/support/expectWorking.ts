import { expect } from "vitest";
import type { Step } from "../../src/core/basis/step";
import { arithmetic } from "./arithmetic";

/**
 * Passes when every step that shows arithmetic comes to the number beside it, and the last step to the answer.
 * The figures in a step are written to six decimals, so its sum is held to what that leaves of them.
 */
export function expectWorking(steps: readonly Step[], answer: number): void {
  for (const { sum, value, meaning, unit } of steps) {
    const worked = arithmetic(sum);
    if (worked !== undefined) expectClose(worked, value, 1e-4, `${sum} = ${value}`);
    expect([meaning, unit].map((text) => text.trim().length > 0)).toEqual([true, true]);
  }
  expectClose(steps.at(-1)?.value ?? NaN, answer, 1e-9, "the last step");
}

function expectClose(actual: number, expected: number, share: number, what: string): void {
  expect(Math.abs(actual - expected), what).toBeLessThanOrEqual(share * Math.max(1, Math.abs(expected)));
}
