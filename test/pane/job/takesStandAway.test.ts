import { expect, it } from "vitest";
import { demoContent } from "../../../src/demo/demoWorkbook";
import { takesStandAway } from "../../../src/pane/job/takesStandAway";
import { TREES, tree } from "../../../src/workbook/tables";
import { workbookPlan } from "../../../src/workbook/workbookPlan";

/** The sentences that the column Check itself brings along. */
const sentences = workbookPlan(demoContent)
  .flatMap(({ tables }) => tables)
  .filter(({ name }) => name === TREES)
  .flatMap(({ columns }) => columns.filter(({ heading }) => heading === tree.check))
  .flatMap(({ formula = "" }) => formula.split('"').filter((part) => /^ ?[A-Z][a-z]+ .*\.$/.test(part)));

it("knows by their sentences the trees that leave the stand without a volume, and no others", () => {
  expect(sentences.filter((check) => takesStandAway({ check }))).toHaveLength(2);
  expect(sentences.filter((check) => !takesStandAway({ check })).join("\n")).toMatch(/have wood for it/);
});

it("lets a tree be kept whose logs were not measured: it adds none, and takes none away", () => {
  expect(takesStandAway({ check: "Logs are missing for a tree of 14 in, so it adds no volume." })).toBe(false);
});
