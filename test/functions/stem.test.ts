import { describe, expect, it } from "vitest";
import { barkSides } from "../../src/core/tree/national/barkSides";
import { standOrigins } from "../../src/core/tree/national/standOrigins";
import { stemParts } from "../../src/core/tree/national/stemParts";
import { treeWeights } from "../../src/core/tree/national/treeWeights";
import { OriginOfStand, PartOfStem, StemUnits, stemVolume } from "../../src/functions/stem";
import { OriginOfStem, SideOfBark, stemDiameter, TaperUnits } from "../../src/functions/taper";
import { OriginOfTree, treeWeight, WeightOfTree, WeightUnits } from "../../src/functions/treeWeight";

/** A text or number as a cell may hold it, whatever the argument is meant to be. */
const cell = (value: unknown) => value as never;
const column = (...values: unknown[]) => values.map((value) => [value]);
const valueError = (message: string) => expect.objectContaining({ code: "#VALUE!", message }) as unknown;
const notAvailable = (message: string) => expect.objectContaining({ code: "#N/A", message }) as unknown;
const near = (value: number, digits: number) => expect.closeTo(value, digits) as unknown;

describe("STEMVOLUME", () => {
  // The report's examples: Douglas-fir of division 240, 20 in and 110 ft; red maple of 11.1 in and 38 ft.
  it("is 88.452 ft3 of wood in the report's Douglas-fir", () => {
    expect(stemVolume(cell("Douglas-fir"), cell(20), cell(110), cell(null), cell("240"))).toEqual([[near(88.4523, 3)]]);
  });

  it("gives every part of it", () => {
    const part = (name: PartOfStem) => stemVolume(cell(202), cell(20), cell(110), name, cell(240));
    expect(part(PartOfStem.Wood)).toEqual([[near(88.4523, 3)]]);
    expect(part(PartOfStem.Bark)).toEqual([[near(13.19, 1)]]);
    expect(part(PartOfStem.WoodAndBark)).toEqual([[near(101.64, 1)]]);
    expect(part(PartOfStem.Merchantable)).toEqual([[near(85.7286, 3)]]);
    expect(part(PartOfStem.Sawlog)).toEqual([[near(82.8227, 3)]]);
  });

  it("takes names and codes, a column of them, and passes over blanks", () => {
    expect(
      stemVolume(
        column("red maple", 316, "316", "", 0, "red maple", null),
        column(11.1, 11.1, 11.1, 9, 9, 0, 9),
        cell(38),
      ),
    ).toEqual(column(near(9.42711, 4), near(9.42711, 4), near(9.42711, 4), "", "", "", ""));
  });

  it("has no merchantable part under 5 in, and no sawlog under 9 in in softwood and 11 in in hardwood", () => {
    const parts = (species: string, dbh: number) =>
      [PartOfStem.Merchantable, PartOfStem.Sawlog].map(
        (part) => stemVolume(cell(species), cell(dbh), cell(60), part)[0]?.[0] as number,
      );
    expect(parts("white oak", 4.9)).toEqual([0, 0]);
    expect(parts("white oak", 10.9)).toEqual([expect.any(Number), 0]);
    expect(parts("white oak", 11)[1]).toBeGreaterThan(0);
    expect(parts("red pine", 8.9)[1]).toBe(0);
    expect(parts("red pine", 9)[1]).toBeGreaterThan(0);
  });

  it("tells planted loblolly pine from natural, and takes natural when it is not said", () => {
    const wood = (origin: unknown) =>
      stemVolume(cell("loblolly pine"), cell(14), cell(75), cell(null), cell(null), cell(origin));
    expect(wood(null)).toEqual(wood("Natural"));
    expect(wood("planted")).not.toEqual(wood("Natural"));
  });

  it("reads and answers in metric: 50.8 cm and 33.528 m are 2.5047 m3", () => {
    expect(
      stemVolume(
        cell(202),
        cell(50.8),
        cell(33.528),
        cell(null),
        cell("240"),
        cell(null),
        cell(null),
        cell(null),
        StemUnits.Metric,
      ),
    ).toEqual([[near(88.4523 * 0.3048 ** 3, 4)]]);
  });

  // Of the report: example 2, a red maple of 11.1 in and 38 ft with 3 percent cull; example 3, a tanoak broken off.
  it("takes off cull and what is broken off, from every part", () => {
    const maple = (part: PartOfStem, cull: unknown, broken: unknown) =>
      stemVolume(
        cell(316),
        cell(11.1),
        cell(38),
        part,
        cell(null),
        cell(null),
        cell(cull),
        cell(broken),
      )[0]?.[0] as number;
    expect(maple(PartOfStem.Wood, 3, null)).toBeCloseTo(9.427113 * 0.97, 4);
    expect(maple(PartOfStem.Merchantable, 3, null)).toBeCloseTo(8.289903 * 0.97, 4);
    expect(maple(PartOfStem.Sawlog, 3, null)).toBeCloseTo(4.610401 * 0.97, 4);
    expect(maple(PartOfStem.Bark, 3, null)).toBeCloseTo(2.155106, 4);
    expect(maple(PartOfStem.WoodAndBark, 3, null)).toBeCloseTo(9.427113 * 0.97 + 2.155106, 4);
    // Up to 9.98078 ft the sawlog part ends of itself; the stump and it are all there is below that height.
    const [, below] = [maple(PartOfStem.Wood, 0, 38), maple(PartOfStem.Wood, null, 9.98078)];
    expect(maple(PartOfStem.Sawlog, null, 9.98078)).toBeCloseTo(4.610401, 4);
    expect(maple(PartOfStem.Merchantable, null, 9.98078)).toBeCloseTo(4.610401, 4);
    expect(below).toBeLessThan(9.427113);
    expect(below).toBeGreaterThan(4.610401);
    expect(maple(PartOfStem.Wood, 0, 38)).toBeCloseTo(9.427113, 4);
    expect(maple(PartOfStem.Bark, null, 9.98078) / below).toBeCloseTo(2.155106 / 9.427113, 4);
  });

  it("says in the row when a break lies above the tip", () => {
    const broken = stemVolume(
      cell(316),
      cell(11.1),
      cell(38),
      cell(null),
      cell(null),
      cell(null),
      cell(null),
      column(30, 39),
    );
    expect(broken).toEqual([
      [expect.any(Number)],
      [valueError("Broken at should be between 0 and 38 ft. You have 39. Missing a decimal point?")],
    ]);
  });

  it("says in the row what is wrong with it", () => {
    expect(
      stemVolume(
        column("red mapel", "RP", "Gambel oak", "red maple", "red maple", "red maple"),
        column(12, 12, 12, 143, 12, "12in"),
        column(60, 60, 60, 60, 3, 60),
      ),
    ).toEqual([
      [
        expect.objectContaining({
          code: "#N/A",
          message: expect.stringMatching(/Did you mean red maple.*\?$/) as unknown,
        }),
      ],
      [notAvailable('"RP" is not in your species list. Fix the code or add it on Setup.')],
      [notAvailable("The national equations as published have no row for Gambel oak, a woodland tree.")],
      [valueError("DBH should be between 1 and 80 in. You have 143. Missing a decimal point?")],
      [valueError("Height should be between 5 and 400 ft. You have 3.")],
      [valueError('DBH needs a number, but the cell has "12in". Type just the number.')],
    ]);
  });

  it("refuses an unknown part, division or origin for the whole column", () => {
    const ask = (part: unknown, division: unknown, origin: unknown) => () =>
      stemVolume(cell(316), cell(12), cell(60), cell(part), cell(division), cell(origin));
    expect(ask("Twigs", null, null)).toThrow(
      'Part should be one of: Wood, Bark, Wood and bark, Merchantable wood, Sawlog wood. You have "Twigs".',
    );
    expect(ask(null, "Ohio", null)).toThrow(/^Division should be a Bailey ecodivision: 130, .* You have "Ohio"\.$/);
    expect(ask(null, null, "Old")).toThrow('Origin should be one of: Natural, Planted. You have "Old".');
  });
});

describe("STEMDIAMETER", () => {
  // An independent computation from the same tables: white oak of division M220, 18.1 in and 65 ft.
  const oak = (at: unknown, bark: unknown = null) =>
    stemDiameter(cell("white oak"), cell(18.1), cell(65), cell(at), cell(bark), cell("M220"));

  it("is 13.18 in inside bark and 14.46 in outside at 17.3 ft", () => {
    expect(oak(17.3)).toEqual([[near(13.1813, 3)]]);
    expect(oak(17.3, SideOfBark.Outside)).toEqual([[near(14.4595, 3)]]);
  });

  it("falls to nothing at the tip, and is blank where no height is given", () => {
    expect(oak(column(65, null, 0, ""))).toEqual(column(0, "", "", ""));
  });

  it("refuses a height above the tip, in the unit that was given", () => {
    expect(oak(66)).toEqual([[valueError("At height should be between 0.1 and 65 ft. You have 66.")]]);
    expect(
      stemDiameter(cell(802), cell(46), cell(20), cell(21), cell(null), cell(null), cell(null), TaperUnits.Metric),
    ).toEqual([[valueError("At height should be between 0.03048 and 20 m. You have 21.")]]);
  });

  it("answers in cm when metric", () => {
    const metric = stemDiameter(
      cell(802),
      cell(18.1 * 2.54),
      cell(65 * 0.3048),
      cell(17.3 * 0.3048),
      cell(null),
      cell("M220"),
      cell(null),
      TaperUnits.Metric,
    );
    expect(metric).toEqual([[near(13.1813 * 2.54, 3)]]);
  });
});

/** Of the species list: moisture of green Douglas-fir wood. [% of dry weight] */
const MOISTURE_OF_DOUGLAS_FIR = 35.33333;

describe("TREEWEIGHT", () => {
  const fir = (component: unknown) => treeWeight(cell(202), cell(20), cell(110), cell(component), cell("240"));

  it("is 3154.55 lb above ground, dry, in the report's Douglas-fir, and 1626.47 lb of it carbon", () => {
    expect(fir(null)).toEqual([[near(3154.554, 2)]]);
    expect(fir(WeightOfTree.Carbon)).toEqual([[near(1626.475, 2)]]);
  });

  it("is 2483.74 lb of dry stem wood, and a third more when green", () => {
    expect(fir(WeightOfTree.StemDry)).toEqual([[near(2483.74, 2)]]);
    const green = fir(WeightOfTree.StemGreen)[0]?.[0] as number;
    expect(green / 2483.74).toBeCloseTo(1 + MOISTURE_OF_DOUGLAS_FIR / 100, 5);
  });

  it("answers in kilograms when metric", () => {
    const [none, metric] = [cell(null), WeightUnits.Metric];
    expect(treeWeight(cell(202), cell(50.8), cell(33.528), none, cell("240"), none, none, none, metric)).toEqual([
      [near(3154.554 * 0.45359237, 2)],
    ]);
  });

  it("says when the list has no density, in the row", () => {
    expect(treeWeight(column("State Street Maple", 316), cell(12), cell(60))).toEqual([
      [notAvailable("The national species list has no wood density for State Street Maple.")],
      [expect.any(Number)],
    ]);
  });
});

describe("the menus that a formula offers", () => {
  it.each([
    ["parts", PartOfStem, stemParts],
    ["sides of the bark", SideOfBark, barkSides],
    ["weights", WeightOfTree, treeWeights],
    ["origins", OriginOfStand, standOrigins],
    ["origins where taper is asked", OriginOfStem, standOrigins],
    ["origins where weight is asked", OriginOfTree, standOrigins],
  ] as const)("hold all %s", (_, menu, choices) => {
    expect(Object.values(menu)).toEqual(choices.map(({ title }) => title));
  });

  it("hold both unit systems", () => {
    for (const menu of [StemUnits, TaperUnits, WeightUnits])
      expect(Object.values(menu)).toEqual(["imperial", "metric"]);
  });
});
