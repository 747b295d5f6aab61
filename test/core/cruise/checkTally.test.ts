import { describe, expect, it } from "vitest";
import type { Telling } from "../../../src/core/basis/telling";
import { feet, inches } from "../../../src/core/basis/units";
import { checkTally, type FullTallyLine } from "../../../src/core/cruise/checkTally";
import { NameList } from "../../../src/core/cruise/nameList";

const rules = {
  plots: new NameList(["1", "2"]),
  species: new NameList(["ro", "wo"]),
  leastDbh: inches(1),
  mostDbh: inches(60),
  logsMeasured: true,
};
const line = (change: Partial<FullTallyLine> = {}): FullTallyLine => ({
  plot: "1",
  species: "ro",
  dbh: 14,
  logs: 2,
  volume: undefined,
  distance: undefined,
  limit: undefined,
  ...change,
});
const check = (...lines: readonly FullTallyLine[]) => checkTally(lines, rules);
const odd = (...lines: readonly FullTallyLine[]) => check(...lines).filter((said) => said !== "");

describe("a whole tally", () => {
  it("says of each line first what the line says of itself", () => {
    expect(check(line(), line({ dbh: 143 }), line({ species: "rp" }), line({ logs: 32 }))).toEqual([
      "",
      "DBH 143 in is over your 60 in limit. Missing a decimal point?",
      '"rp" is not in your species list. Fix the code or add it on Setup. Did you mean ro?',
      "32 logs look like feet: 32 ft make 2 logs.",
    ]);
  });

  it("asks once whether all of it is in centimetres", () => {
    const metric = [31, 36, 41, 28, 33].map((dbh) => line({ dbh }));
    expect(odd(...metric)).toEqual([
      "Half of the trees are 33 in DBH or more. Is the whole tally in centimetres? It should be in inches.",
    ]);
    expect(odd(...[12, 16, 14, 11, 13, 40].map((dbh) => line({ dbh })))).not.toContainEqual(
      expect.stringContaining("centimetres"),
    );
  });

  it("finds a tree that stands beyond its own limiting distance", () => {
    // 14.3 in at BAF 10: 2.75 ft for an inch, 39.3 ft.
    const at = (distance: number) => check(line({ dbh: 14.3, distance: feet(distance), limit: feet(39.325) }))[0];
    expect(at(39)).toBe("");
    expect(at(39.4)).toBe("");
    expect(at(45)).toBe("Taped at 45 ft, but a tree of 14.3 in is out beyond 39.3 ft. Distance, DBH or gauge?");
    expect(check(line({ distance: feet(45) }))).toEqual([""]);
  });

  it("finds a diameter far from the others of its point, and leaves other points out of it", () => {
    const small = [12, 13, 14, 13, 12].map((dbh) => line({ dbh }));
    const large = [28, 30, 29, 31, 30].map((dbh) => line({ dbh, plot: "2" }));
    expect(odd(...small, ...large)).toEqual([]);
    expect(odd(...small, line({ dbh: 40 }), ...large)).toEqual([
      "DBH 40 in is far from the other trees of this point: 12 in to 14 in. Is it right?",
    ]);
  });

  it("finds a volume that does not go with its basal area", () => {
    const usual = Array.from({ length: 10 }, (_, tree) => line({ volume: 100 + tree }));
    expect(odd(...usual)).toEqual([]);
    expect(odd(...usual, line({ volume: 400 }))).toEqual([
      "It has 374 bf for each ft2 of its basal area, far from the other trees: 94 to 102. Check DBH and logs.",
    ]);
    expect(odd(...usual.slice(0, 8), line({ volume: 400 }))).toEqual([]);
  });

  it("does not hold sound trees against one that is odd already", () => {
    const trees = [14, 15, 14, 15, 143, 14].map((dbh) => line({ dbh }));
    expect(odd(...trees)).toEqual(["DBH 143 in is over your 60 in limit. Missing a decimal point?"]);
  });

  it("tells measures in the units of the tally", () => {
    const per: Readonly<Record<string, number>> = { in: 2.54, ft: 0.3048 };
    const telling: Telling = {
      number: (value, unit) => String(Number((value * (per[unit] ?? 1)).toFixed(4))),
      unit: (name) => ({ in: "cm", ft: "m" })[name] ?? name,
    };
    const [beyond] = checkTally([line({ dbh: 36.3 / 2.54, distance: feet(15 / 0.3048), limit: feet(12 / 0.3048) })], {
      ...rules,
      telling,
    });
    expect(beyond).toBe("Taped at 15 m, but a tree of 36.3 cm is out beyond 12 m. Distance, DBH or gauge?");
  });
});
