import { describe, expect, it } from "vitest";
import { demoContent } from "../../src/demo/demoWorkbook";
import { boardTally } from "../../src/functions/boards";
import { logScale, logScaleRules } from "../../src/functions/logs";
import { checkPlots, checkTrees } from "../../src/functions/checks";
import { breakEvenPrice, compareWays, homeSawNet, valueRange } from "../../src/functions/money";
import { marginOfError, morePlots } from "../../src/functions/sampling";
import { scalingDiameter, scalingLength } from "../../src/functions/scaling";
import { sawPlan, sawYield } from "../../src/functions/sawing";
import { standTable, stockTable } from "../../src/functions/classTables";
import { tractTotal } from "../../src/functions/stand";
import { plotTable, speciesTable, standSummary } from "../../src/functions/standSummary";
import { RULE_DIAMETERS, RULE_LENGTH } from "../../src/workbook/sheets/rules";
import { log, sawn, species, tree } from "../../src/workbook/tables";
import * as demo from "./demoColumns";

const { settings, trees, plots, logs, sawn: boardsSawn, species: speciesList } = demoContent;
const confidence = settings.confidence;
const summary = (dbh: unknown[][], volume: unknown[][]) =>
  standSummary(
    demo.plotColumn,
    dbh,
    demo.countedPlots,
    "Point" as never,
    settings.size as never,
    volume,
    undefined,
    confidence,
  );
const numbers = (cells: readonly (readonly unknown[])[]) => cells.flat().filter((cell) => typeof cell === "number");
const isClean = (cells: readonly (readonly unknown[])[]) =>
  cells.flat().every((cell) => typeof cell === "string" || (typeof cell === "number" && Number.isFinite(cell)));

describe("the demo's tally", () => {
  it("has the 132 trees of 14 points, of six species", () => {
    const tallied = plots.map((_, i) => trees.filter((row) => row[tree.plot] === i + 1).length);
    expect(tallied).toEqual([9, 11, 7, 12, 10, 8, 13, 6, 10, 9, 11, 4, 12, 10]);
    expect(new Set(trees.map((row) => row[tree.species]))).toEqual(
      new Set(speciesList.map((row) => row[species.code])),
    );
  });

  // Plain arithmetic: the counts times the basal area factor, and t = 2.160369 with 13 degrees of freedom.
  it("holds 94.3 +/- 14.45 square feet of basal area an acre, 15.3 percent", () => {
    const counts = [9, 11, 7, 12, 10, 8, 13, 6, 10, 9, 11, 4, 12, 10].map((count) => 10 * count);
    const mean = counts.reduce((sum, one) => sum + one, 0) / 14;
    const spread = Math.sqrt(counts.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 13);
    const basalArea = summary(demo.dbhColumn, demo.volumeColumn)[2];
    expect(basalArea?.[1]).toBeCloseTo(mean, 9);
    expect(mean).toBeCloseTo(94.3, 1);
    expect(basalArea?.[2]).toBeCloseTo((2.160369 * spread) / Math.sqrt(14), 4);
    expect(basalArea?.[2]).toBeCloseTo(14.45, 2);
    expect(basalArea?.[3]).toBeCloseTo(15.3, 1);
  });

  it("raises no check but what its trees deserve", () => {
    const checks = checkTrees(
      demo.plotColumn,
      demo.speciesColumn,
      demo.dbhColumn,
      demo.logsColumn,
      demo.countedPlots,
      demo.columnOf(speciesList, species.code),
      settings.minDbh,
      settings.maxDbh,
      demo.volumeColumn,
    );
    expect(checks.flat().filter((text) => text !== "")).toEqual([]);
    const [plots, trees] = [demo.countedPlots, [demo.plotColumn, demo.speciesColumn, demo.dbhColumn, demo.logsColumn]];
    const visited = plots.map(() => ["Yes"]);
    const none = plots.map(() => [null]);
    const [of, kinds, thick, tall] = trees as [unknown[][], unknown[][], unknown[][], unknown[][]];
    expect(checkPlots(of, kinds, thick, tall, plots, visited, none).flat().join("")).toBe("");
  });
});

describe("the demo's computed columns", () => {
  it.each([
    ["volume", demo.volumeColumn],
    ["lumber", demo.lumberColumn],
    ["trees per acre", demo.perAcreColumn],
  ])("%s is a number above 0 for each of the 132 trees", (_, column) => {
    expect(numbers(column).filter((value) => value > 0)).toHaveLength(132);
  });

  it("leaves seed trees and young trees out of the harvest, and takes cull off", () => {
    expect(numbers(demo.harvestDbhColumn)).toHaveLength(132 - trees.filter((row) => row[tree.take] === "No").length);
    expect(numbers(demo.harvestColumn).length).toBe(numbers(demo.harvestDbhColumn).length);
    const total = (column: readonly (readonly unknown[])[]) =>
      numbers(column).reduce<number>((sum, one) => sum + Number(one), 0);
    expect(total(demo.harvestColumn)).toBeLessThan(total(demo.volumeColumn));
  });
});

describe("the demo's answers", () => {
  const all = summary(demo.dbhColumn, demo.volumeColumn);
  const harvest = summary(demo.harvestDbhColumn, demo.harvestColumn);
  const lumber = summary(demo.harvestDbhColumn, demo.lumberColumn);

  it("has no error in the summaries, in the place that other sheets read", () => {
    for (const answer of [all, harvest, lumber]) {
      expect(isClean(answer)).toBe(true);
      expect(answer).toHaveLength(5);
      expect(answer[0]).toHaveLength(6);
      expect(String(answer[4]?.[0])).toMatch(/^Volume/);
      expect(answer[4]?.[1]).toBeGreaterThan(1000);
    }
    expect(harvest[4]?.[1]).toBeLessThan(all[4]?.[1] as number);
  });

  it("has no error in the tables", () => {
    const shared = ["Point", settings.size as never] as const;
    const tables = [
      plotTable(
        demo.plotColumn,
        demo.dbhColumn,
        demo.volumeColumn,
        demo.countedPlots,
        "Point" as never,
        settings.size as never,
      ),
      standTable(
        demo.plotColumn,
        demo.speciesColumn,
        demo.dbhColumn,
        demo.countedPlots,
        shared[0] as never,
        shared[1],
        2,
      ),
      stockTable(
        demo.plotColumn,
        demo.speciesColumn,
        demo.dbhColumn,
        demo.volumeColumn,
        demo.countedPlots,
        shared[0] as never,
        shared[1],
        2,
      ),
      speciesTable(
        demo.plotColumn,
        demo.speciesColumn,
        demo.dbhColumn,
        demo.volumeColumn,
        demo.countedPlots,
        shared[0] as never,
        shared[1],
      ),
    ];
    for (const table of tables) expect(isClean(table)).toBe(true);
    const [perPlot] = tables;
    const volumes = (perPlot ?? []).slice(1).map((row): unknown[] => [row[4]]);
    expect(volumes).toHaveLength(14);
    expect(marginOfError(volumes, confidence)).toBeCloseTo(all[4]?.[2] as number, 6);
    expect(morePlots(volumes, settings.target, confidence)).toBeGreaterThanOrEqual(0);
  });

  it("scales and saws each of the ten logs by the conventions of the scale sheet", () => {
    const { scale } = settings;
    for (const row of logs) {
      const cell = (heading: string): unknown[][] => [[row[heading] ?? null]];
      const [small, large, deduction] = [cell(log.smallEnd), cell(log.largeEnd), cell(log.deduction)];
      const diameter = scalingDiameter(small, cell(log.second), scale.diameterRounding as never);
      const length = scalingLength(cell(log.length), scale.trim, scale.lengthStep);
      expect(Number(length[0]?.[0]) % scale.lengthStep).toBe(0);
      expect(logScale(diameter, length, scale.rule as never, deduction)[0]?.[0]).toBeGreaterThan(0);
      const answer = sawYield(small, large, length, demo.boardCells, settings.kerf, demo.pattern, demo.millCells);
      expect(answer[1]?.[1]).toBeGreaterThan(0);
      expect(isClean(sawPlan(small, large, length, demo.boardCells, settings.kerf, demo.pattern, demo.millCells))).toBe(
        true,
      );
      expect(isClean(logScaleRules(diameter, length, deduction))).toBe(true);
    }
  });

  it("tallies its boards, which came from logs that there are", () => {
    const [thickness, width, length, pieces] = [sawn.thickness, sawn.width, sawn.length, sawn.pieces].map((heading) =>
      demo.columnOf(boardsSawn, heading),
    ) as [unknown[][], unknown[][], unknown[][], unknown[][]];
    const tally = boardTally(thickness, width, length, pieces);
    expect(isClean(tally)).toBe(true);
    expect(tally.at(-1)?.[2]).toBeCloseTo(
      boardsSawn.reduce(
        (sum, row) =>
          sum +
          (Number(row[sawn.thickness]) *
            Number(row[sawn.width]) *
            Number(row[sawn.length]) *
            Number(row[sawn.pieces])) /
            12,
        0,
      ),
      9,
    );
    const numbers = logs.map((row) => row[log.log]);
    for (const row of boardsSawn) expect(numbers).toContain(row[sawn.log]);
  });

  it("sets the rules side by side at every diameter of the sheet Rules", () => {
    expect(
      isClean(
        logScaleRules(
          RULE_DIAMETERS.map((one) => [one]),
          [[RULE_LENGTH]],
        ),
      ),
    ).toBe(true);
  });

  it("compares the three ways in the places that the sheet Compare reads", () => {
    const mbf = (answer: readonly (readonly unknown[])[]) =>
      (tractTotal(answer[4]?.[1], answer[4]?.[2], settings.acres, settings.acresMargin)[0] ?? []).map(
        (one) => Number(one) / 1000,
      );
    const [volume = NaN, margin = NaN] = mbf(harvest);
    const [boards = NaN, boardMargin = NaN] = mbf(lumber);
    const standing = valueRange(volume, margin, 300, 250, 350);
    const sawn = valueRange(boards, boardMargin, 900, 700, 1000);
    expect(standing[0]?.[0]).toBeCloseTo(300 * volume, 6);
    const costs = 120 * volume + 120 * boards;
    const net = homeSawNet(sawn[0]?.[0], 20 * boards, 15, costs);
    expect(net[0]?.[0]).toBeCloseTo((sawn[0]?.[0] as number) - 300 * boards - costs, 6);
    expect(breakEvenPrice(270 * volume, costs + 300 * boards, boards)).toBeGreaterThan(0);
    const ranked = compareWays([["a"], ["b"], ["c"]], [[1], [2], [3]], [[0], [1], [2]], [[2], [3], [4]]);
    expect(ranked.map((row): unknown => row[4])).toEqual([
      "Rank",
      "Too close to call",
      "Too close to call",
      "Too close to call",
    ]);
  });
});
