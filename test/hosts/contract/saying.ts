import type { HostProblem } from "../../../src/workbook/host";

/** Assertions that need no test runner, so that the contract runs wherever a spreadsheet is. */

export function same(actual: unknown, expected: unknown): void {
  const [a, b] = [told(actual), told(expected)];
  if (a !== b) throw new Error(`Expected ${b}, got ${a}.`);
}

/** Numbers to twelve digits: a spreadsheet may work the last ones out in another order. */
const told = (value: unknown): string =>
  JSON.stringify(value, (_, one: unknown) => (typeof one === "number" ? Number(one.toPrecision(12)) : one));

/** Holds when the promise is refused with a HostProblem of this kind whose sentence says this. */
export async function refuses(promise: Promise<unknown>, kind: HostProblem["kind"], says: string): Promise<void> {
  const problem = await promise.then(
    () => undefined,
    (refusal: unknown) => refusal as Partial<HostProblem>,
  );
  if (!problem) throw new Error("Expected a refusal, and it was done.");
  if (problem.kind !== kind || !problem.message?.includes(says)) {
    throw new Error(`Expected "${kind}" about ${says}, got "${problem.kind}": ${problem.message}`);
  }
}

export async function until(holds: () => boolean, longest = 5_000): Promise<void> {
  const end = performance.now() + longest;
  while (!holds()) {
    if (performance.now() > end) throw new Error("It did not happen in time.");
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
