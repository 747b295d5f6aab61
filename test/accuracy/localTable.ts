import { localForms } from "../../src/core/tree/local";
import { fitLocalTable } from "../../src/core/tree/local/fitLocalTable";
import type { FelledTree } from "../../src/core/tree/local/localForm";
import { numberIn, published, type PublishedRow } from "../support/published";
import type { Comparison } from "./comparison";

const treeOf = (row: PublishedRow): FelledTree => ({
  dbh: numberIn(row, "dbh"),
  height: numberIn(row, "height"),
  volume: numberIn(row, "volume"),
});

/** Local volume tables fitted to the same trees by another program. */
export function localTableComparisons(): Comparison[] {
  const answers = published("tree/localTableFits.csv");
  const cherries = published("tree/blackCherry.csv").rows.map(treeOf);
  const invented = published("tree/localTableTrees.csv").rows;
  const treesOf = (set = "") => (set === "0" ? cherries : invented.filter((row) => row.set === set).map(treeOf));
  return localForms.map((form) => ({
    subject: `Local volume table, ${form.title}: standard error of 13 fits`,
    source: answers.source,
    standing: answers.standing,
    unit: "ft3",
    printedTo: 0.000001,
    pairs: answers.rows
      .filter((row) => row.form === form.title)
      .map((row) => ({ printed: numberIn(row, "error"), ours: fitLocalTable(form, treesOf(row.set)).standardError })),
  }));
}
