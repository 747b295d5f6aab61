import { describe, expect, it } from "vitest";
import { allSpecies } from "../../../src/core/tree/national/species";
import { speciesLine, speciesList } from "../../../src/pane/plan/speciesList";
import { proposeCode } from "../../../src/pane/species/proposeCode";
import { searchSpecies } from "../../../src/pane/species/speciesSearch";
import { halfTypedSpecies, sayOfSuggestion, suggestionsFor } from "../../../src/pane/species/suggestions";

const list = [
  { code: "ro", name: "red oak", fia: 833, scientific: "Quercus rubra" },
  { code: "sm", name: "sugar maple", fia: 318, scientific: "Acer saccharum" },
  { code: "yp", name: "yellow-poplar" },
];
const words = (text: string) => suggestionsFor(text, list, searchSpecies).map(sayOfSuggestion);

describe("the search through the national list", () => {
  it.each([
    ["sugar maple", 318],
    ["su ma", 318],
    ["acer sacc", 318],
    ["acer rub", 316],
    ["316", 316],
    ["white oak", 802],
    ["maple red", 316],
  ])('"%s" finds species %d first or among the first', (text, code) => {
    expect(searchSpecies(text, 8).map(({ fia }) => fia)).toContain(code);
  });

  it("proposes what is like a name where nothing begins with it", () => {
    expect(searchSpecies("red mapel", 3)[0]?.name).toBe("red maple");
    expect(searchSpecies("xyzzy", 3)).toEqual([]);
  });

  it("finds each of all species by its own name and by its scientific name", () => {
    for (const { name, code } of allSpecies()) {
      const named = searchSpecies(name, 600).map(({ fia }) => fia);
      expect(named, name).toContain(code);
    }
  });
});

describe("what a half-typed line suggests", () => {
  it("is the owner's own species first, by code, name or scientific name", () => {
    expect(words("s")).toEqual(["sm: sugar maple, Acer saccharum"]);
    expect(words("oak").slice(0, 1)).toEqual(["ro: red oak, Quercus rubra"]);
    expect(words("quer").slice(0, 1)).toEqual(["ro: red oak, Quercus rubra"]);
  });

  it("goes on in the national list, without what is in the owner's own", () => {
    expect(words("red map")).toEqual(["red maple, Acer rubrum, 316"]);
    expect(words("sugar mapel")[0]).toBe("sm: sugar maple, Acer saccharum");
    expect(words("sugar map")).toEqual(["sm: sugar maple, Acer saccharum"]);
  });

  it("is nothing once a code or a name is complete, or a number stands in the line", () => {
    expect(words("ro")).toEqual([]);
    expect(words("Red Oak")).toEqual([]);
    expect(words("")).toEqual([]);
    expect(halfTypedSpecies("red ma")).toBe("red ma");
    expect(halfTypedSpecies("ro 14")).toBeUndefined();
    expect(halfTypedSpecies("14.3")).toBeUndefined();
    expect(halfTypedSpecies("  ")).toBeUndefined();
  });
});

describe("the code proposed for a species", () => {
  it.each([
    ["red maple", "rm"],
    ["American beech", "ab"],
    ["hickory spp.", "hi"],
    ["red osier", "ros"],
    ["eastern white pine", "ewp"],
  ])("%s: %s", (name, code) => {
    expect(proposeCode(name, [...list, { code: "ro", name: "" }])).toBe(code);
  });

  it("is never taken, never a mark, and there is one for every species after every other", () => {
    const taken: { code: string; name: string }[] = [];
    for (const { name } of allSpecies()) {
      const code = proposeCode(name, taken);
      expect(taken.some((one) => one.code === code)).toBe(false);
      expect(code).not.toMatch(/^[xch]$/i);
      taken.push({ code, name });
    }
  });
});

describe("the list of species of a plan", () => {
  it("takes the inventory code at the end of a line, and writes it there", () => {
    expect(speciesList("ro red oak 833\nwo white oak")).toEqual([
      { code: "ro", name: "red oak", fia: 833 },
      { code: "wo", name: "white oak" },
    ]);
    expect(speciesList("ro red oak 833").map(speciesLine)).toEqual(["ro red oak 833"]);
  });
});
