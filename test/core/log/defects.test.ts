import fc from "fast-check";
import { existsSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { InvalidInput, Problem } from "../../../src/core/basis/problem";
import { feet } from "../../../src/core/basis/units";
import { defectPercent } from "../../../src/core/log/defectPercent";
import { defectKinds } from "../../../src/core/log/defects";
import type { DefectExtent, DefectKind } from "../../../src/core/log/defects/defectKind";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";
import { defectOf } from "./defectOf";
import { log, printedLog } from "./printedLog";

const table = published("log/defects.csv");

describe.each(defectKinds)("$title", (kind) => {
  it("lies in the file that bears its name, and tells what is from memory", () => {
    expect(existsSync(new URL(`../../../src/core/log/defects/${kind.id}.ts`, import.meta.url))).toBe(true);
    expect(kind.sources.map(({ standing }) => standing)).toContain("from memory");
  });

  const rows = table.rows.filter((row) => row["kind"] === kind.title);
  it.each(rows)("takes $percent % of $diameter in x $length ft: $affectedLength ft, $size, $width", (row) => {
    expectAsPrinted(defectPercent(kind, printedLog(row), defectOf(row)), numberIn(row, "percent"), table.printedTo);
  });

  it("has rows to be held against", () => expect(rows.length).toBeGreaterThan(0));

  it("takes more the larger it is, from 0 to 100 %, and never between 0 and 1", () => {
    const grown = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 40, noNaN: true }),
        fc.double({ min: 4, max: 20, noNaN: true }),
        grown,
        grown,
        (diameter, length, one, other) => {
          const [less, more] = [Math.min(one, other), Math.max(one, other)].map((part) =>
            defectPercent(kind, log(diameter, length), extentOf(kind, part, length)),
          );
          expect(more).toBeGreaterThanOrEqual(less ?? NaN);
          expect(less === 0 || (less ?? NaN) >= 1).toBe(true);
          expect(more).toBeLessThanOrEqual(100);
        },
      ),
    );
  });

  it("asks by name for a measure that is missing, and for none to be given in vain", () => {
    const whole = extentOf(kind, 0.5, 16);
    for (const { of, what } of kind.asks) {
      const rest = Object.fromEntries(Object.entries(whole).filter(([name]) => name !== of));
      expect(() => defectPercent(kind, log(12, 16), rest)).toThrow(
        `${kind.title} needs a number for ${what.toLowerCase()}`,
      );
    }
    const spare = (["affectedLength", "size", "width"] as const).filter(
      (of) => !kind.asks.some((one) => one.of === of),
    );
    for (const of of spare)
      expect(() => defectPercent(kind, log(12, 16), { ...whole, [of]: 3 })).toThrow(`${kind.title} asks for `);
  });

  it("answers any numbers with a percent or a problem", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (diameter, length, size) => {
        try {
          const lost = defectPercent(kind, log(diameter, length), extentOf(kind, size, 16));
          return lost >= 0 && lost <= 100;
        } catch (problem) {
          return problem instanceof Problem;
        }
      }),
    );
  });
});

describe("the sentences of a defect", () => {
  const [section, sector, sweep] = defectKinds as [DefectKind, DefectKind, DefectKind];

  it("say what is missing, in its unit", () => {
    expect(() => defectPercent(sector, log(12, 16), { affectedLength: feet(8) })).toThrow(
      "Sector needs a number for angle (degrees), but the cell is blank.",
    );
    expect(() => defectPercent(sweep, log(12, 16), { affectedLength: feet(8), size: 3 })).toThrow(
      "Sweep asks for departure only. Leave the affected length blank.",
    );
    expect(() => defectPercent(sector, log(12, 16), { affectedLength: feet(8), size: 60, width: 3 })).toThrow(
      "Sector asks for affected length and angle only. Leave the width blank.",
    );
  });

  it("keep a defect within its log, in the user's unit", () => {
    expect(() => defectPercent(section, log(12, 16), { affectedLength: feet(17) })).toThrow(InvalidInput);
    expect(() => defectPercent(section, log(12, 16), { affectedLength: feet(17) })).toThrow(
      "Affected length should be at most the length of the log, 16 ft. You have 17.",
    );
    const metric = {
      diameter: { name: "cm", perOurs: 2.54 },
      length: { name: "m", perOurs: 0.3048 },
      degrees: { name: "degrees", perOurs: 1 },
    };
    expect(() => defectPercent(section, log(12, 10 / 0.3048), { affectedLength: feet(12 / 0.3048) }, metric)).toThrow(
      "Affected length should be at most the length of the log, 10 m. You have 12.",
    );
    expect(() => defectPercent(sector, log(12, 16), { affectedLength: feet(8), size: 400 })).toThrow(
      "Angle should be between 0 and 360 degrees. You have 400.",
    );
  });
});

it("a defect below 1 % counts as none, as a net scale has it", () => {
  const [section] = defectKinds as [DefectKind];
  expect(defectPercent(section, log(12, 20), { affectedLength: feet(0.19) })).toBe(0); // 0.95 %
  expect(defectPercent(section, log(12, 20), { affectedLength: feet(0.2) })).toBe(1);
});

/** A defect of so large a share of what its kind can measure. */
function extentOf(kind: DefectKind, part: number, length: number): DefectExtent {
  const most = { affectedLength: length, size: kind.asks.some(({ unit }) => unit === "degrees") ? 360 : 20, width: 20 };
  return Object.fromEntries(kind.asks.map(({ of }) => [of, most[of] * part]));
}
