import { describe, expect, it } from "vitest";
import { treeWeight, WeightOfTree, WeightUnits } from "../../src/functions/treeWeight";
import { numberIn, published } from "../support/published";

/** A text or number as a cell may hold it, whatever the argument is meant to be. */
const cell = (value: unknown) => value as never;
const valueError = (message: string) => expect.objectContaining({ code: "#VALUE!", message }) as unknown;
const notAvailable = (message: string) => expect.objectContaining({ code: "#N/A", message }) as unknown;
const near = (value: number, digits: number) => expect.closeTo(value, digits) as unknown;

const examples = published("tree/national/workedExamples.csv");
const printed = (example: string, quantity: string) =>
  numberIn(examples.rows.find((row) => row.example === example && row.quantity === quantity) ?? {}, "value");

/** The report's example 2: red maple of division M210, 11.1 in and 38 ft, 3 percent cull. */
const maple = (weight: WeightOfTree, cull: unknown = null, broken: unknown = null) =>
  treeWeight(cell(316), cell(11.1), cell(38), weight, cell("M210"), cell(null), cell(cull), cell(broken));
/** Example 4: white oak of division M220, 18.1 in and 65 ft, 2 percent cull, broken off at 59 ft. */
const oak = (cull: unknown, broken: unknown) =>
  treeWeight(cell(802), cell(18.1), cell(65), WeightOfTree.StemDry, cell("M220"), cell(null), cell(cull), cell(broken));

describe("TREEWEIGHT of a tree with cull or a broken top", () => {
  it("is 284.27 lb of dry stem wood in the report's red maple, where it is 288.24 without the cull", () => {
    expect(maple(WeightOfTree.StemDry, 3)).toEqual([[near(printed("2", "Wwood_red_lb"), 2)]]);
    expect(maple(WeightOfTree.StemDry, 0)).toEqual([[near(printed("2", "Wwood_lb"), 2)]]);
    expect(maple(WeightOfTree.StemDry, "", "")).toEqual(maple(WeightOfTree.StemDry));
  });

  it("leaves of the report's white oak what its share of wood below the break says", () => {
    const whole = printed("4", "Wwood_lb");
    const below = printed("4", "R_at_break");
    expect(oak(null, null)).toEqual([[near(whole, 1)]]);
    expect(oak(null, 59)).toEqual([[near(whole * below, 1)]]);
    // Rotten hardwood keeps 0.54 of its density, Table 1 of the report.
    expect(oak(2, 59)).toEqual([[near(whole * below * (1 - 0.02 * (1 - 0.54)), 1)]]);
  });

  it("keeps 0.92 of the density of rotten softwood", () => {
    const fir = (cull: number) =>
      treeWeight(cell(202), cell(20), cell(110), WeightOfTree.StemDry, cell(240), cell(null), cell(cull));
    expect(fir(25)).toEqual([[near(printed("1", "Wwood_lb") * (1 - 0.25 * 0.08), 2)]]);
  });

  it("takes the same share off green wood, and a break in meters", () => {
    const [whole, rotten] = [0, 3].map((cull) => maple(WeightOfTree.StemGreen, cull)[0]?.[0] as number);
    expect((rotten ?? NaN) / (whole ?? NaN)).toBeCloseTo(284.265641 / 288.2434, 5);
    const metric = treeWeight(
      cell(802),
      cell(18.1 * 2.54),
      cell(65 * 0.3048),
      WeightOfTree.StemDry,
      cell("M220"),
      cell(null),
      cell(null),
      cell(59 * 0.3048),
      WeightUnits.Metric,
    );
    expect(metric[0]?.[0]).toBeCloseTo((oak(null, 59)[0]?.[0] as number) * 0.45359237, 4);
  });

  it("says that a weight with branches in it is known for a whole tree only", () => {
    for (const weight of [WeightOfTree.AboveGround, WeightOfTree.Carbon]) {
      const words = `${weight} is known for a sound, whole tree only. With cull or a broken top, ask for Stem wood.`;
      expect(maple(weight, 3)).toEqual([[notAvailable(words)]]);
      expect(maple(weight, 0, 30)).toEqual([[notAvailable(words)]]);
      expect(maple(weight, 0, 0)).toEqual(maple(weight));
    }
  });

  it("says in the row what is wrong with cull and break", () => {
    expect(maple(WeightOfTree.StemDry, 120)).toEqual([
      [valueError("Cull should be between 0 and 100 %. You have 120. Missing a decimal point?")],
    ]);
    expect(maple(WeightOfTree.StemDry, 0, 39)).toEqual([
      [valueError("Broken at should be between 0 and 38 ft. You have 39. Missing a decimal point?")],
    ]);
  });
});
