import { describe, expect, it } from "vitest";
import { buckPlan } from "../../src/functions/bucking";
import { CubicFormulaName, logCubic } from "../../src/functions/logCubic";
import { stemDiameter } from "../../src/functions/taper";
import { stemVolume } from "../../src/functions/stem";

/** A text or number as a cell may hold it, whatever the argument is meant to be. */
const cell = (value: unknown) => value as never;

/** Invented products and prices. */
const PRODUCTS = [
  ["Veneer", 14, 8, 10, 1, "Doyle", 900],
  ["Sawlog", 10, 8, 16, 2, "Doyle", 400],
  ["Pulpwood", 4, 8, 20, 4, "Cubic", 0.2],
  ["", null, null, null, null, null, null],
];

const HEADER = [
  "Log",
  "From ft",
  "To ft",
  "Product",
  "Small end in",
  "Volume bf or ft3",
  "Value $",
  "Length ft",
  "Large end in",
];
const oak = (...rest: unknown[]) =>
  buckPlan(cell("white oak"), cell(20), cell(80), PRODUCTS, ...(rest as never[])) as (string | number)[][];
const number = (cells: unknown[][]) => cells[0]?.[0] as number;

describe("BUCKPLAN", () => {
  it("lays the logs end on end from the stump, with small ends and values that other functions confirm", () => {
    const [header, ...logs] = oak();
    expect(header).toEqual(HEADER);
    expect(logs.length).toBeGreaterThan(2);
    let free = 1;
    logs.forEach(([log, from, to, product, smallEnd, volume, value, bought, largeEnd], place) => {
      expect(log).toBe(place + 1);
      expect(from).toBeCloseTo(free, 9);
      free = to as number;
      expect(smallEnd).toBeCloseTo(number(stemDiameter(cell("white oak"), cell(20), cell(80), cell(to))), 9);
      const length = (to as number) - (from as number) - 0.33;
      expect(bought).toBeCloseTo(length, 9);
      expect(largeEnd).toBeCloseTo(number(stemDiameter(cell("white oak"), cell(20), cell(80), cell(from))), 9);
      if (product === "Pulpwood") expect(value).toBeCloseTo((volume as number) * 0.2, 9);
      // Doyle, to the nearest board foot.
      else
        expect(Math.abs((volume as number) - (((smallEnd as number) - 4) ** 2 * length) / 16)).toBeLessThanOrEqual(0.5);
    });
    expect(free).toBeLessThan(80);
  });

  it("sells no more wood than the stem holds", () => {
    const cubic = [["Any", 2, 4, 20, 1, "ft3", 1]];
    const [, ...logs] = buckPlan(cell("white oak"), cell(20), cell(80), cubic, cell(0.5), cell(0)) as number[][];
    const sold = logs.reduce((sum, log) => sum + (log[5] ?? NaN), 0);
    const whole = number(stemVolume(cell("white oak"), cell(20), cell(80)));
    expect(sold).toBeLessThan(whole);
    expect(sold).toBeGreaterThan(0.95 * whole);
  });

  it("sells by a cubic formula what LOGCUBIC makes of the same log", () => {
    const sold = (rule: string) =>
      buckPlan(cell("white oak"), cell(20), cell(80), [["Any", 6, 16, 16, 1, rule, 1]], cell(1), cell(0)) as (
        string | number
      )[][];
    const across = (height: unknown) => [[number(stemDiameter(cell("white oak"), cell(20), cell(80), cell(height)))]];
    for (const formula of Object.values(CubicFormulaName)) {
      const [header, ...logs] = sold(formula);
      expect(header?.[5]).toBe("Volume ft3");
      for (const [, from, to, , smallEnd, volume] of logs as number[][]) {
        const expected = logCubic([[smallEnd]], across(from), [[16]], formula, across((from! + to!) / 2));
        expect(volume).toBeCloseTo(number(expected), 9);
      }
    }
  });

  it("keeps out of the cull", () => {
    for (const [, from, to] of oak(null, null, 10, 24).slice(1)) {
      expect((to as number) <= 10 || (from as number) >= 24).toBe(true);
    }
    expect(oak(null, null, null, 12)[1]?.[1]).toBe(12);
    for (const [, , to] of oak(null, null, 30, null).slice(1)) expect(to).toBeLessThanOrEqual(30);
  });

  it("keeps out of several flaws, in any order, and cuts in a crook", () => {
    const logs = oak(null, null, [[44], [20], [null], [12]], [[44], [23], [null], [16]]).slice(1) as number[][];
    expect(logs.some(([, from]) => from === 23) && logs.some(([, from]) => from === 44)).toBe(true);
    for (const [, from = NaN, to = NaN] of logs) {
      for (const [begins, ends] of [
        [12, 16],
        [20, 23],
        [44, 44],
      ] as const)
        expect(to <= begins || from >= ends, `${from} to ${to}`).toBe(true);
    }
    expect(() => oak(null, null, [[10], [30]], [[12], [20]])).toThrow(
      "Cull should not end below the height at which it begins.",
    );
    expect(() => oak(null, null, [[10], ["x"]], [[12], [20]])).toThrow(/^Cull row 2: Cull from needs a number/);
  });

  it("sells nothing above a broken top", () => {
    const whole = oak().slice(1) as number[][];
    const broken = oak(null, null, 40).slice(1) as number[][];
    expect(Math.max(...broken.map(([, , to = NaN]) => to))).toBeLessThanOrEqual(40);
    expect(broken[0]?.[4]).toBeCloseTo(
      number(stemDiameter(cell("white oak"), cell(20), cell(80), cell(broken[0]?.[2]))),
      9,
    );
    expect(whole.length).toBeGreaterThan(broken.length);
  });

  it("gives the same plan in metric", () => {
    const metric = PRODUCTS.slice(0, 3).map(([name, end, shortest, longest, step, rule, price]) => [
      name,
      (end as number) * 2.54,
      (shortest as number) * 0.3048,
      (longest as number) * 0.3048,
      (step as number) * 0.3048,
      rule,
      rule === "Cubic" ? (price as number) / 0.3048 ** 3 : price,
    ]);
    const none = cell(null);
    const [header, ...logs] = buckPlan(
      cell("white oak"),
      cell(50.8),
      cell(80 * 0.3048),
      metric,
      ...([none, none, none, none, none, none, none, none] as const),
      cell("metric"),
    ) as (string | number)[][];
    expect(header).toEqual([
      "Log",
      "From m",
      "To m",
      "Product",
      "Small end cm",
      "Volume bf or m3",
      "Value $",
      "Length m",
      "Large end cm",
    ]);
    expect(logs.map((log) => log[3])).toEqual(
      oak()
        .slice(1)
        .map((log) => log[3]),
    );
    expect(logs.map((log) => log[6])).toEqual(
      oak()
        .slice(1)
        .map((log) => expect.closeTo(log[6] as number, 6) as unknown),
    );
  });

  it("says so when there is no tree yet, and when nothing fits", () => {
    expect(buckPlan(cell(null), cell(20), cell(80), PRODUCTS)[1]).toEqual([
      "No trees yet",
      "",
      "",
      "",
      "",
      "",
      "",
      "",
      "",
    ]);
    expect(() => buckPlan(cell("white oak"), cell(4), cell(30), PRODUCTS.slice(0, 2))).toThrow(
      "No product in your list fits this stem.",
    );
  });

  it("names the row of the product list that cannot be used", () => {
    const ask = (product: unknown[]) => () =>
      buckPlan(cell("white oak"), cell(20), cell(80), [PRODUCTS[0] as never[], product]);
    expect(ask(["Tie", "9in", 8, 16, 2, "Doyle", 300])).toThrow(
      'Row 2: Smallest small end needs a number, but the cell has "9in". Type just the number.',
    );
    expect(ask(["Tie", null, 8, 16, 2, "Doyle", 300])).toThrow(
      "Row 2: Smallest small end needs a number, but the cell is blank.",
    );
    expect(ask(["Tie", 9, 8, 16, 2, "Dole", 300])).toThrow(
      /^Row 2: Rule should be one of: Doyle, .*Cubic\. You have "Dole"\.$/,
    );
    expect(ask(["Tie", 9, 16, 8, 2, "Doyle", 300])).toThrow(
      'The longest length of "Tie" should not be below its shortest.',
    );
    expect(() => buckPlan(cell("white oak"), cell(20), cell(80), [["Tie", 9]])).toThrow(
      "Row 1: A product needs 7 columns: name, smallest small end, shortest, longest, step, rule, price. You have 2.",
    );
  });
});
