import { describe, expect, it } from "vitest";
import { localFit } from "../../../src/functions/localTables";
import { localCurves, offBy } from "../../../src/pane/local/localCurves";
import { fitFinding, sayEquation, sayError } from "../../../src/pane/local/sayFit";
import { sayCurves } from "../../../src/pane/charts/localChart";
import { readLocalVolume } from "../../../src/pane/job/readLocalVolume";
import type { WorkbookHost } from "../../../src/workbook/host";
import type { CellValue, TableRow } from "../../../src/workbook/plan";
import { felled, named, out } from "../../../src/workbook/tables";

/** Volumes that V = 1 + 0.002 D2 H gives exactly, but for 2 ft3 that are added to one tree and taken off another. */
const trees = [
  [8, 50, 1 + 6.4],
  [12, 60, 1 + 17.28 + 2],
  [12, 60, 1 + 17.28 - 2],
  [20, 80, 1 + 64],
] as const;
const column = (at: number) => trees.map((tree) => [tree[at]]);
const fitted = (units = "imperial") =>
  localFit(column(0), column(1), column(2), "Combined variable" as never, units) as CellValue[][];

const host = (fit: readonly (readonly CellValue[])[], settings: Readonly<Record<string, CellValue>> = {}) =>
  ({
    hasTable: () => Promise.resolve(true),
    readNames: () => Promise.resolve({ [named.localForm]: "Combined variable", ...settings }),
    readTable: () =>
      Promise.resolve({
        rows: [
          ...trees.map(([dbh, height, volume], i): TableRow => ({
            [felled.tree]: i + 1,
            [felled.dbh]: dbh,
            [felled.height]: height,
            [felled.volume]: volume,
          })),
          { [felled.tree]: 5, [felled.dbh]: 14, [felled.height]: null, [felled.volume]: null },
        ],
      }),
    readSpill: (name: string) => Promise.resolve(name === out.localFit ? fit : []),
  }) as unknown as WorkbookHost;

const read = async (...given: Parameters<typeof host>) => {
  const answers = await readLocalVolume(host(...given));
  if (answers === "none") throw new Error("no sheet");
  return answers;
};

describe("the sheet Local volume", () => {
  it("is read with its trees, its equation and its error; a tree without a measure is left out", async () => {
    const { felled: measured, fit, used, species, lacking } = await read(fitted());
    expect([measured.length, used, species, lacking]).toEqual([4, false, "", ""]);
    // The two misses of 2 ft3 weigh each other out: a = 1, b = 0.002, s = sqrt(8 / (4 - 2)) = 2, mean 22.49 + 1.25.
    expect(fit?.table.coefficients.a).toBeCloseTo(1, 9);
    expect(fit?.table.coefficients.b).toBeCloseTo(0.002, 12);
    expect(fit?.error).toBeCloseTo(2, 9);
    expect(fit?.errorPercent).toBeCloseTo((100 * 2) / ((7.4 + 2 * 18.28 + 65) / 4), 9);
    expect(fit?.table.dbh).toEqual({ least: 8, most: 20 });
  });

  it("tells whether Trees takes it, for which species, and in which units", async () => {
    const settings = { [named.localUse]: "Yes", [named.localSpecies]: "wo", [named.units]: "metric" };
    const { used, species, units, fit } = await read(fitted("metric"), settings);
    expect([used, species, units]).toEqual([true, "wo", { diameter: "cm", distance: "m", volume: "m³" }]);
    expect(fit?.table.height).toEqual({ least: 50, most: 80 });
  });

  it("says why there is no equation", async () => {
    expect((await read([["#N/A"]])).lacking).toMatch(/^No equation yet: it takes at least 3 felled trees/);
    expect((await read([["#VALUE!"]])).lacking).toMatch(/cannot be used/);
    expect(
      (
        await read([
          ["Local table", "Value"],
          ["No trees yet", ""],
        ])
      ).lacking,
    ).toBe("No felled trees yet.");
  });

  it("is put into words", async () => {
    const { fit, units } = await read(fitted());
    if (!fit) throw new Error("no fit");
    expect(sayEquation(fit)).toBe("V = 1 + 0.002 × D² × H");
    expect(fitFinding(fit)).toBe(
      "V = 1 + 0.002 × D² × H, give or take 7.3\u00a0% for one tree".replace("7.3", (200 / 27.24).toFixed(1)),
    );
    expect(sayError(fit, units)).toContain("Of 4 felled trees, 8 to 20 in thick and 50 to 80 ft tall.");
    expect(sayError(fit, units)).toContain("within 2 ft³ of it");
  });

  it("is drawn for the shortest, the mean and the tallest of the trees, and each tree has how far it is off", async () => {
    const { fit, felled: measured, units } = await read(fitted());
    if (!fit) throw new Error("no fit");
    const curves = localCurves(fit, measured);
    expect(curves.map(({ height }) => height)).toEqual([50, 62.5, 80]);
    const [first, last] = [curves[0]?.points[0], curves[2]?.points.at(-1)];
    expect([first?.dbh, last?.dbh]).toEqual([8, 20]);
    expect(first?.volume).toBeCloseTo(7.4, 9);
    expect(last?.volume).toBeCloseTo(65, 9);
    expect(sayCurves(curves, units)).toContain("shortest of them (50 ft, dotted), their mean height (62.5 ft)");
    const tree = measured[1];
    expect(tree && offBy(fit, tree)).toBeCloseTo(100 * (18.28 / 20.28 - 1), 9);
  });
});
