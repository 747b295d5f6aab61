import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InvalidInput, OutOfRange } from "../../../src/core/basis/problem";
import { inches, percent } from "../../../src/core/basis/units";
import { logRule } from "../../../src/core/log/findLogRule";
import type { LogRule } from "../../../src/core/log/logRule";
import { logRules } from "../../../src/core/log/rules";
import { treeVolume } from "../../../src/core/tree/treeVolume";

const volume = (dbh: number, logs: number, formClass: number, rule: LogRule | string) =>
  treeVolume(
    { dbh: inches(dbh), logs, formClass: percent(formClass) },
    typeof rule === "string" ? logRule(rule) : rule,
  );

describe("the log-by-log build, worked by hand: 16 in, 3 logs, form class 78 is 12.5, 11.0 and 9.3 in", () => {
  it("adds up by Doyle", () => expect(volume(16, 3, 78, "Doyle")).toBeCloseTo(72.25 + 49 + 28.09, 9));
  it("adds up by Scribner", () => {
    const scribner = (d: number) => 0.79 * d * d - 2 * d - 4;
    expect(volume(16, 3, 78, "Scribner")).toBeCloseTo(scribner(12.5) + scribner(11) + scribner(9.3), 9);
  });
  it("adds up by International", () => expect(volume(16, 3, 78, "International 1/4")).toBeCloseTo(240.8, 1));
  it("adds up by Scribner Decimal C, 12, 11 and 9 in of the table", () => {
    // 80, 70 and 40 bf for 16-ft logs, as read in the Forest Service table.
    expect(volume(16, 3, 78, "Scribner Decimal C")).toBe(80 + 70 + 40);
  });
});

describe("between the cells of the tables", () => {
  it("a half log is the mean of its neighbours", () => {
    expect(volume(16, 2.5, 78, "Doyle")).toBeCloseTo((72.25 + 43.56 + 149.34) / 2, 9);
    expect(volume(16, 2.5, 78, "Doyle")).toBeCloseTo((volume(16, 2, 78, "Doyle") + volume(16, 3, 78, "Doyle")) / 2, 9);
  });

  it("an odd diameter is the mean of the even ones", () => {
    expect(volume(17, 3, 78, "Doyle")).toBeCloseTo((volume(16, 3, 78, "Doyle") + volume(18, 3, 78, "Doyle")) / 2, 9);
  });

  it("a tenth of an inch is a straight line: 14.3 in, 2 logs by Doyle", () => {
    // 14 in: 10.9 and 9.2 in, 47.61 + 27.04; 16 in: 12.5 and 10.6 in, 72.25 + 43.56
    expect(volume(14.3, 2, 78, "Doyle")).toBeCloseTo(74.65 + (115.81 - 74.65) * 0.15, 9);
  });

  it("the same tree gives the same volume, whatever was asked before", () => {
    const asked = [volume(21.7, 2.5, 78, "Doyle"), volume(33, 3, 80, "Doyle"), volume(21.7, 2.5, 79, "Doyle")];
    expect(volume(21.7, 2.5, 78, "Doyle")).toBe(asked[0]);
    expect(volume(21.7, 2.5, 79, "Doyle")).toBe(asked[2]);
  });
});

describe("a tree volume never falls", () => {
  const reach = fc.record({
    rule: fc.constantFrom(...logRules),
    dbh: fc.double({ min: 12, max: 32, noNaN: true }),
    logs: fc.double({ min: 1, max: 4, noNaN: true }),
    formClass: fc.double({ min: 65, max: 90, noNaN: true }),
    more: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  const orNone = (...tree: Parameters<typeof volume>) => {
    try {
      return volume(...tree);
    } catch (problem) {
      if (problem instanceof OutOfRange) return undefined;
      throw problem;
    }
  };
  const holds = (less: number | undefined, more: number | undefined) => {
    fc.pre(less !== undefined && more !== undefined);
    expect(more - less).toBeGreaterThanOrEqual(-1e-9);
  };

  it("as the tree grows thicker", () => {
    fc.assert(
      fc.property(reach, ({ rule, dbh, logs, formClass, more }) =>
        holds(orNone(dbh, logs, formClass, rule), orNone(dbh + (32 - dbh) * more, logs, formClass, rule)),
      ),
    );
  });

  it("as it grows taller", () => {
    fc.assert(
      fc.property(reach, ({ rule, dbh, logs, formClass, more }) =>
        holds(orNone(dbh, logs, formClass, rule), orNone(dbh, logs + (4 - logs) * more, formClass, rule)),
      ),
    );
  });

  it("as its form gets fuller", () => {
    fc.assert(
      fc.property(reach, ({ rule, dbh, logs, formClass, more }) =>
        holds(orNone(dbh, logs, formClass, rule), orNone(dbh, logs, formClass + (90 - formClass) * more, rule)),
      ),
    );
  });
});

describe("outside the tables", () => {
  it.each([
    [9.9, 1, 78, "The form-class table as published has no value below 10 in DBH. You have 9.9."],
    [40.5, 1, 78, "The form-class table as published has no value above 40 in DBH. You have 40.5."],
    [14, 0.5, 78, "The form-class table as published has no value below 1 log of 16 ft. You have 0.5."],
    [24, 4.5, 78, "Upper-log tapers are known for up to 4 logs of 16 ft. You have 4.5."],
    [34, 4, 78, "Upper-log tapers of more than 3 logs are known from 12 to 32 in DBH. You have 4 logs at 34 in."],
    [11, 3.5, 78, "Upper-log tapers of more than 3 logs are known from 12 to 32 in DBH. You have 3.5 logs at 11 in."],
    [20, 2, 64, "The form-class table as published has no value below 65 % form class. You have 64."],
    [20, 2, 91, "The form-class table as published has no value above 90 % form class. You have 91."],
  ])("%s in, %s logs, form class %s", (dbh, logs, formClass, sentence) => {
    expect(() => volume(dbh, logs, formClass, "Doyle")).toThrow(new OutOfRange(sentence));
  });

  it.each([10, 40])("the edge at %s in still counts", (dbh) => expect(volume(dbh, 3, 78, "Doyle")).toBeGreaterThan(0));
  it.each([12, 32])("4 logs at %s in still count", (dbh) => expect(volume(dbh, 4, 78, "Doyle")).toBeGreaterThan(0));

  it("names the log that the rule has no value for", () => {
    expect(() => volume(10, 3, 65, "Doyle")).toThrow(
      new OutOfRange(
        "Log 3 of this tree is 3.9 in at its small end. The Doyle rule as published has no value below 4 in. You have 3.9.",
      ),
    );
    expect(() => volume(10, 3, 78, "Scribner Decimal C")).toThrow(/^Log 3 of this tree is 5\.2 in at its small end\. /);
  });

  it.each([NaN, -1, Infinity])("refuses %s for a measure", (bad) => {
    expect(() => volume(bad, 2, 78, "Doyle")).toThrow(InvalidInput);
    expect(() => volume(20, bad, 78, "Doyle")).toThrow(InvalidInput);
    expect(() => volume(20, 2, bad, "Doyle")).toThrow(InvalidInput);
  });

  it("lets a bug in a rule through as it is", () => {
    const bug = () => {
      throw new TypeError("bug");
    };
    const broken: LogRule = { id: "broken", title: "Broken", sources: [], scale: bug, round: bug };
    expect(() => volume(20, 2, 78, broken)).toThrow(TypeError);
  });
});
