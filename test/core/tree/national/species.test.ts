import { describe, expect, it } from "vitest";
import { InvalidInput, OutOfRange } from "../../../../src/core/basis/problem";
import { findSpecies } from "../../../../src/core/tree/national/findSpecies";
import { scientificNames } from "../../../../src/core/tree/national/scientificNames";
import { allSpecies } from "../../../../src/core/tree/national/species";
import { listedSpecies } from "../../../support/national/speciesLists";

describe("the species list", () => {
  it("has every printed row, in order", () => {
    const none = (text: string) => (text === "" ? undefined : Number(text));
    expect(allSpecies().length).toBe(572);
    expect(
      allSpecies().map(({ code, name, group, woodGravity, greenMoisture, carbon }) => [
        code,
        name,
        group,
        woodGravity,
        greenMoisture,
        carbon,
        scientificNames().get(findSpecies(String(code))),
      ]),
    ).toEqual(
      listedSpecies().map((row) => [
        Number(row.spcd),
        row.common_name,
        Number(row.jenkins_spgrpcd),
        none(row.wood_spgr_greenvol_drywt ?? ""),
        none(row.mc_pct_green_wood ?? ""),
        none(row.wood_carbon_pct ?? ""),
        `${row.genus} ${row.species}`,
      ]),
    );
  });

  it("tells softwoods from hardwoods as print does, and the larches and the palm that print leaves open", () => {
    const listed = new Map(listedSpecies().map((row) => [Number(row.spcd), row.sftwd_hrdwd]));
    const open = allSpecies().filter(({ code }) => listed.get(code) === "");
    expect(open.map(({ name, softwood }) => [name, softwood])).toEqual([
      ["Japanese larch", true],
      ["Siberian larch", true],
      ["South American jelly palm", false],
    ]);
    for (const { code, name, softwood } of allSpecies()) {
      if (listed.get(code) !== "") expect(softwood, name).toBe(listed.get(code) === "S");
    }
  });

  it("has a wood density of more than a cork's and less than water's for all that it has one for", () => {
    for (const { name, woodGravity = 0.5 } of allSpecies()) {
      expect(woodGravity, name).toBeGreaterThan(0.24);
      expect(woodGravity, name).toBeLessThan(1);
    }
  });
});

describe("the species that a text means", () => {
  it.each([
    ["316", 316],
    [" 802 ", 802],
    ["red maple", 316],
    ["Red Maple", 316],
    ["maple, red", 316],
    ["yellow poplar", 621],
    ["Douglas fir", 202],
    ["honey mesquite", 756],
    ["devils walkingstick", 5233],
  ] as const)('"%s" is species %s', (text, code) => {
    expect(findSpecies(text).code).toBe(code);
  });

  it.each([
    ["red mapel", '"red mapel" is not in your species list. Fix the code or add it on Setup. Did you mean red maple'],
    ["RP", '"RP" is not in your species list. Fix the code or add it on Setup.'],
    ["1", '"1" is not in your species list. Fix the code or add it on Setup.'],
    ["white pine", '"white pine" is not in your species list. Fix the code or add it on Setup. Did you mean '],
  ])('"%s" is none: %s', (text, sentence) => {
    expect(() => findSpecies(text)).toThrow(OutOfRange);
    expect(() => findSpecies(text)).toThrow(sentence);
  });

  it("proposes what is likest first", () => {
    expect(() => findSpecies("red mapel")).toThrow(/Did you mean red maple[,?]/);
    expect(() => findSpecies("white pine")).toThrow(/Did you mean .*eastern white pine.*\?$/);
    expect(() => findSpecies("red oak")).toThrow(/Did you mean .*northern red oak.*\?$/);
  });

  it("asks for a code where a name is shared", () => {
    expect(() => findSpecies("bastard oak")).toThrow(InvalidInput);
    expect(() => findSpecies("bastard oak")).toThrow(
      /^"bastard oak" is the name of more than one species\. Use a code instead: \d+ and \d+\.$/,
    );
  });
});
