import { describe, expect, it } from "vitest";
import { findSpecies } from "../../../../src/core/tree/national/findSpecies";
import { numberIn } from "../../../support/published";
import { examples, NOT_HERE, ourQuantities, restsOnShortBark } from "./workedExamples";

/** The report worked with coefficients of 12 decimals; its tables have 9, and six of bark have three digits. */
const TOLERANCE = 1e-5;
const TOLERANCE_OF_SHORT_BARK = 1e-3;

const here = examples.rows.filter(({ quantity = "" }) => !NOT_HERE.test(quantity));

describe("the report's worked examples", () => {
  it.each(here.map((row) => [row.example, row.species, row.quantity, row] as const))(
    "example %s, %s: %s",
    (_, __, quantity, row) => {
      const printed = numberIn(row, "value");
      const ours = ourQuantities(row)[quantity ?? ""];
      expect(ours).toBeDefined();
      const tolerance = restsOnShortBark(row) ? TOLERANCE_OF_SHORT_BARK : TOLERANCE;
      expect(Math.abs((ours ?? NaN) / printed - 1)).toBeLessThanOrEqual(tolerance);
    },
  );

  it("print the bark of example 1 to the digit once its own coefficient is put in for the short one of the table", () => {
    const OF_THE_EXAMPLE = 0.000031886237; // where Table S2a has 3.19E-5
    const bark = examples.rows.find(({ example, quantity }) => example === "1" && quantity === "Vtotbk") ?? {};
    const ours = (ourQuantities(bark)["Vtotbk"] ?? NaN) * (OF_THE_EXAMPLE / 3.19e-5);
    expect(Math.abs(ours - numberIn(bark, "value"))).toBeLessThanOrEqual(0.5e-5);
  });

  it("cover every quantity that these tables can give", () => {
    expect(here.length).toBe(16 + 18 + 20 + 1);
  });

  it("hold the carbon percent of the species list", () => {
    const value = (example: string, quantity: string) =>
      numberIn(examples.rows.find((row) => row.example === example && row.quantity === quantity) ?? {}, "value");
    // The examples' carbon is that of the tree as it stands, so it is held against the weight that they give it.
    expect(value("1", "carbon_lb") / value("1", "AGB_predicted_lb")).toBeCloseTo(
      (findSpecies("202").carbon ?? NaN) / 100,
      6,
    );
    expect(value("2", "carbon_lb") / value("2", "AGB_predicted_red_lb")).toBeCloseTo(
      (findSpecies("316").carbon ?? NaN) / 100,
      6,
    );
    expect(value("4", "carbon_lb") / value("4", "AGB_predicted_red_lb")).toBeCloseTo(
      (findSpecies("802").carbon ?? NaN) / 100,
      6,
    );
  });
});
