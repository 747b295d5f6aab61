import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Step } from "../../src/core/basis/step";
import { targetThickness } from "../../src/functions/boardSizes";
import { boardFeet } from "../../src/functions/boards";
import { logCubic } from "../../src/functions/logCubic";
import { logScale } from "../../src/functions/logs";
import { cardScale } from "../../src/functions/scaleSheets";
import { workings } from "../../src/functions/shell/working";
import { lumberWeight } from "../../src/functions/wood";
import { working as askedOf, WorkingName } from "../../src/functions/working";
import { errorOf } from "../support/cells";
import { expectWorking } from "../support/expectWorking";

type Shell = (...args: never[]) => unknown[][];

/** A cell holds any text. */
const working = (name: string, given: unknown[][][]) => askedOf(name as WorkingName, given);

/** Arguments as a spreadsheet hands them over: each a range of one cell, all of them as one list. */
const ranges = (args: readonly unknown[]) =>
  args.map((arg) => (arg === null ? null : Array.isArray(arg) ? arg : [[arg]])) as unknown[][][];

const stepsOf = (name: string, args: readonly unknown[]): Step[] =>
  (working(name, ranges(args)).slice(1) as [string, string, number, string][]).map(([sum, meaning, value, unit]) => ({
    sum,
    meaning,
    value,
    unit,
  }));

it("offers the functions that have a working", () => {
  expect(Object.values(WorkingName)).toEqual(workings.map(({ title }) => title));
});

it("sets down the way to 100 bf for a Doyle log of 14 in and 16 ft", () => {
  expect(working("logscale", ranges([14, 16, "Doyle"]))).toEqual([
    ["Step", "Meaning", "Number", "Unit"],
    ["14 - 4", "Diameter less slabs and edgings", 10, "in"],
    ["10 / 4", "A quarter of it", 2.5, "in"],
    ["2.5 ^ 2", "Squared: board feet in each foot of length", 6.25, "bf"],
    ["6.25 * 16", "Times the length", 100, "bf"],
    ["round 100", "Rounded as the rule's printed tables are", 100, "bf"],
  ]);
});

it("turns metric measures into those of the rule first", () => {
  expect(working("LOGSCALE", ranges([36, 5, "Doyle", null, null, null, null, null, "metric"])).slice(1, 3)).toEqual([
    ["36 / 2.54", "Diameter, in in", 36 / 2.54, "in"],
    ["5 / 0.3048", "Length, in ft", 5 / 0.3048, "ft"],
  ]);
  expect(
    working("LOGCUBIC", ranges([30, 36, 5, null, null, "metric"]))
      .at(-1)
      ?.slice(1),
  ).toEqual([
    "In cubic metres",
    logCubic([[30]], [[36]], [[5]], null as never, null as never, "metric" as never)[0]?.[0],
    "m3",
  ]);
});

/** An invented card, 6 to 20 in by 4 to 16 ft, whose figures grow both ways. */
const card = [
  ["", ...[4, 8, 12, 16]],
  ...Array.from({ length: 15 }, (_, i) => [6 + i, ...[4, 8, 12, 16].map((along) => (2 + i) * along)]),
];

const units = fc.constantFrom(null, "imperial", "metric");
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** For each function with a working: the function itself, and arguments that it has an answer for. */
const answering: Record<string, { readonly shell: Shell; readonly args: fc.Arbitrary<readonly unknown[]> }> = {
  LOGSCALE: {
    shell: logScale,
    args: fc.tuple(
      within(16, 40),
      within(4, 12),
      fc.constantFrom("Doyle", "Scribner", "International 1/4", "International 1/8"),
      fc.oneof(fc.constantFrom(null, 0), within(1, 100)),
      fc.constantFrom(null, "None"),
      fc.constantFrom(null, 6, 8),
      fc.constantFrom(null, 0, 44),
      fc.constantFrom(null, "Half up", "Always down"),
      units,
    ),
  },
  CARDSCALE: {
    shell: cardScale,
    args: fc.tuple(
      within(8, 20),
      within(8, 15),
      fc.constant(card),
      fc.oneof(fc.constantFrom(null, 0), within(1, 100)),
      fc.constantFrom(null, "None"),
      fc.constantFrom(null, 8),
      fc.constantFrom(null, 0, 20),
      fc.constantFrom(null, "Half up", "Always down"),
      fc.constantFrom(null, "imperial"),
    ),
  },
  LOGCUBIC: {
    shell: logCubic,
    args: fc.tuple(
      within(3, 40),
      within(3, 40),
      within(1, 36),
      fc.constantFrom(null, "Smalian", "Huber", "Newton", "Cone", "Neiloid"),
      within(3, 40),
      units,
    ),
  },
  BOARDFEET: {
    shell: boardFeet,
    args: fc.tuple(
      within(0.5, 12),
      within(1, 40),
      within(1, 36),
      fc.oneof(fc.constantFrom(null, 0), fc.integer({ min: 1, max: 500 })),
      units,
    ),
  },
  TARGETTHICKNESS: {
    shell: targetThickness,
    args: fc.tuple(
      within(0.5, 12),
      fc.oneof(fc.constant(0), within(0.2, 15)),
      fc.oneof(fc.constant(null), within(0, 0.5)),
      fc.oneof(fc.constant(null), within(0, 0.5)),
      units,
    ),
  },
  LUMBERWEIGHT: {
    shell: lumberWeight,
    args: fc.tuple(
      within(1, 1e5),
      fc.constantFrom("white oak", "eastern white pine", 318),
      fc.oneof(fc.constant("Green"), within(1, 100)),
      units,
    ),
  },
};

/** BUCKPLAN answers with a table and takes lists: its working has a test of its own. */
const ofOneCell = workings.filter(({ title }) => title !== "BUCKPLAN");

describe.each(ofOneCell)("the working of $title", ({ title, takes }) => {
  const { shell, args } = answering[title] as (typeof answering)[string];

  it("ends in what the function itself answers, and every step adds up", () => {
    fc.assert(
      fc.property(args, (given) => {
        const [answer] = shell(...(ranges(given) as never[]));
        expectWorking(stepsOf(title, given), answer?.[0] as number);
      }),
    );
  });

  it("refuses in the words of the function itself", () => {
    const bad = ["14.3in", 5_000, -1, "5/4", true];
    fc.assert(
      fc.property(args, fc.constantFrom(...bad), (given, wrong) => {
        const spoilt = [wrong, ...given.slice(1)];
        const cell = shell(...(ranges(spoilt) as never[]))[0]?.[0] as { code: string; message: string };
        if (typeof cell !== "object") return; // a load may well be 5,000 board feet
        expect(errorOf(() => working(title, ranges(spoilt)))).toMatchObject({ code: cell.code, message: cell.message });
      }),
    );
  });

  it("takes as many arguments as the function", () => {
    expect(takes).toBe(shell.length);
    expect(() => working(title, ranges(Array<number>(takes + 1).fill(1)))).toThrow(
      `${title} takes up to ${takes} arguments after its name. You have ${takes + 1}.`,
    );
  });

  it("wants single values, none of them missing", () => {
    expect(() => working(title, [])).toThrow();
    expect(() => working(title, [[[10], [12]], ...ranges([12, 12, 12])])).toThrow();
  });
});

it("names the functions that have a working when it is asked for another", () => {
  expect(() => working("STANDSUMMARY", [])).toThrow(
    'Function should be one of: LOGSCALE, CARDSCALE, LOGCUBIC, BOARDFEET, TARGETTHICKNESS, LUMBERWEIGHT, BUCKPLAN. You have "STANDSUMMARY".',
  );
});

it("says which argument is missing", () => {
  expect(() => working("BOARDFEET", ranges([1, 8, ""]))).toThrow("Length is missing, so there is nothing to work out.");
  expect(() => working("BOARDFEET", [[[1]], [[8], [9]], [[12]]])).toThrow("Width should be one cell here. You have 2.");
});
