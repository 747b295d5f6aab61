import { describe, expect, it } from "vitest";
import { grains } from "../../src/core/lumber/driedSize";
import { driedSize, equilibriumMc, GrainName, lumberWeight, WoodUnits } from "../../src/functions/wood";
import { column } from "../support/cells";

const NONE = null as never;

describe("DRIEDSIZE", () => {
  it("offers the grains there are", () => {
    expect(Object.values(GrainName)).toEqual(grains.map(({ title }) => title));
  });

  it("takes 0.505 in from 8 in of flat-sawn northern red oak, green to 8 % (by hand), and less from quarter-sawn", () => {
    const flat = driedSize([[8]], [["northern red oak"]], [["Green"]], [[8]])[0]?.[0] as number;
    expect(8 - flat).toBeCloseTo(0.505, 3);
    const quarter = driedSize([[8]], [[833]], [[30]], [[8]], "quarter-sawn" as never)[0]?.[0] as number;
    expect(8 - quarter).toBeCloseTo(8 * 0.04 * (22 / 30), 9);
  });

  it("answers a column, and names what a species may have meant in its own cell", () => {
    const answers = driedSize([[8]], column(["white oak", "", "red oak"]), [[12]], [[12]]);
    expect(answers.slice(0, 2)).toEqual([[8], [""]]);
    expect(answers[2]).toMatchObject([
      {
        code: "#N/A",
        message: '"red oak" is not in the wood table. Did you mean northern red oak or southern red oak?',
      },
    ]);
  });

  it("leaves a row without a moisture blank, whether that is blank or 0", () => {
    expect(driedSize([[8]], [["white oak"]], column([12, 12]), column(["", 0]))).toEqual([[""], [""]]);
  });

  it("takes a share for a slip", () => {
    expect(driedSize([[8]], [["white oak"]], [["green"]], [[0.08]])).toMatchObject([
      [{ message: "Moisture afterwards should be between 1 and 300 %. You have 0.08." }],
    ]);
  });
});

describe("EQUILIBRIUMMC", () => {
  it("is 9.2 at 70 F and 50 %, as printed, and 12.0 at 65 %", () => {
    const [[dry], [damp]] = equilibriumMc([[70]], column([50, 65])) as [[number], [number]];
    expect(Math.abs(dry - 9.2)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(damp - 12)).toBeLessThanOrEqual(0.05);
  });

  it("takes Celsius when metric, 0 among them, and leaves a blank blank", () => {
    const celsius = equilibriumMc(column([20, 0, "", null]), [[50]], WoodUnits.metric);
    expect(celsius.slice(0, 2)).toEqual(equilibriumMc(column([68, 32]), [[50]]));
    expect(celsius.slice(2)).toEqual([[""], [""]]);
    expect(equilibriumMc([[0]], [[0]], WoodUnits.metric)).toEqual([[""]]); // a row not measured at all
  });

  it("says how far the table reaches", () => {
    expect(equilibriumMc([[150]], [[50]])).toMatchObject([
      [
        {
          code: "#N/A",
          message:
            "Equilibrium moisture as published covers 30 to 130 F (-1.1 to 54.4 C) and 5 to 95 % humidity, no more.",
        },
      ],
    ]);
    expect(equilibriumMc([[70]], [[0.5]])).toMatchObject([
      [{ message: "Humidity should be between 1 and 100 %. You have 0.5." }],
    ]);
  });
});

describe("LUMBERWEIGHT", () => {
  it("is 5,329 lb for a thousand board feet of northern red oak at 83 % (by hand), green being 83.1 %", () => {
    expect(lumberWeight([[1000]], [["northern red oak"]], [[83]])[0]?.[0]).toBeCloseTo(5329, 0);
    expect(lumberWeight([[1000]], [["Quercus rubra"]], [["green"]])).toEqual(
      lumberWeight([[1000]], [["oak, northern red"]], [[83.1]]),
    );
  });

  it("is the same load in kilograms", () => {
    const [pound] = lumberWeight([[1000]], [["white ash"]], [[12]])[0] as [number];
    const [kilogram] = lumberWeight([[1000]], [["white ash"]], [[12]], WoodUnits.metric)[0] as [number];
    expect(kilogram).toBeCloseTo(pound * 0.45359237, 9);
  });

  it("leaves a row without board feet, species or moisture blank, and says when wood cannot be so wet", () => {
    expect(lumberWeight(column([0, 5, 5]), column(["white ash", "", "white ash"]), column([12, 12, ""]))).toEqual([
      [""],
      [""],
      [""],
    ]);
    expect(lumberWeight([[5]], [["white oak"]], [[150]], NONE)).toMatchObject([
      [{ code: "#VALUE!", message: "Wood of white oak holds at most 101 % water. You have 150." }],
    ]);
  });
});
