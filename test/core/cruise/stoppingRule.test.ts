import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { sources, understatementAt, understatements } from "../../../src/core/cruise/stoppingRule";

it("the figures come from a script that is there, go down with the margin that is wanted, and are found by the nearest", () => {
  expect(readFileSync(new URL("../../bench/stopping.ts", import.meta.url), "utf8")).toContain("understatements");
  expect(sources[0]?.where).toContain("test/bench/stopping.ts");
  const falls = understatements.map(({ percent }) => percent);
  expect([...falls].sort((one, other) => other - one)).toEqual(falls);
  expect(understatementAt(19).wanted).toBe(20);
  expect(understatementAt(5).wanted).toBe(15);
  expect(understatementAt(80).wanted).toBe(30);
});
