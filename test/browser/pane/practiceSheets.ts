import { demoContent } from "../../../src/demo/demoWorkbook";
import { log, plot, tree } from "../../../src/workbook/tables";
import { workbookPlan } from "../../../src/workbook/workbookPlan";

/** The invented woodlot in the middle of its tally, with slips of the kind that the checks are there to catch. */
export const practiceSheets = () =>
  workbookPlan({
    ...demoContent,
    trees: [
      ...demoContent.trees
        .filter((row) => Number(row[tree.plot]) <= 8)
        .map((row, line) => ({
          ...row,
          ...(line === 3 && { [tree.dbh]: 143 }),
          ...(line === 20 && { [tree.species]: "rp" }),
          ...(line === 40 && { [tree.logs]: 6, [tree.accepted]: "measured twice" }),
        })),
      { [tree.plot]: 9, [tree.species]: "ro", [tree.dbh]: 16, [tree.logs]: 2, [tree.count]: 1 },
      { [tree.plot]: 9, [tree.species]: "ro", [tree.dbh]: 14.3, [tree.logs]: 2.5, [tree.count]: 1 },
      { [tree.plot]: 9, [tree.species]: "sm", [tree.dbh]: 11.8, [tree.logs]: null, [tree.count]: 1 },
    ],
    logs: demoContent.logs.map((row, place) => ({ ...row, ...(place === 3 && { [log.deduction]: 0.15 }) })),
    plots: demoContent.plots.map((row, place) => ({
      ...row,
      [plot.visited]: place < 8 ? "Yes" : place === 11 ? null : "No",
    })),
  });
