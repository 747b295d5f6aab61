import { expect, it } from "vitest";
import { upperLogTaper } from "../../../src/core/reference/upperLogTaper";

const { rows, source } = upperLogTaper;
const sum = (lists: readonly (readonly number[])[]) => lists.flat().reduce((total, one) => total + one, 0);

it("the upper-log tapers stand for every second inch from 10 to 40", () => {
  expect(rows.map(({ dbh }) => dbh)).toEqual(Array.from({ length: 16 }, (_, index) => 10 + 2 * index));
  expect(source.standing).toBe("from memory");
});

it("their columns add up as written down at transcription", () => {
  expect(sum(rows.map(({ two }) => two))).toBeCloseTo(36.8, 9);
  expect(sum(rows.map(({ three }) => three))).toBeCloseTo(63.9, 9);
  const four = rows.flatMap((row) => ("four" in row ? [row] : []));
  expect(four.map(({ dbh }) => dbh)).toEqual([12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32]);
  expect(sum(four.map((row) => row.four))).toBeCloseTo(64.8, 9);
});

it("within a tree each log tapers more than the one below, and no taper falls as trees grow thicker", () => {
  const lists = (pick: (row: (typeof rows)[number]) => readonly number[] | undefined) =>
    rows.map(pick).filter((one) => one !== undefined);
  for (const column of [
    lists((row) => row.two),
    lists((row) => row.three),
    lists((row) => ("four" in row ? row.four : undefined)),
  ]) {
    column.forEach((tapers, at) => {
      tapers.forEach((taper, log) => {
        if (log > 0) expect(taper).toBeGreaterThan(tapers[log - 1] as number);
        if (at > 0) expect(taper).toBeGreaterThanOrEqual(column[at - 1]?.[log] as number);
      });
    });
  }
});
