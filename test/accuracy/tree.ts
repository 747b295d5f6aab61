import { inches, squareFeetPerAcre } from "../../src/core/basis/units";
import { limitingDistance } from "../../src/core/cruise/limitingDistance";
import { formClass } from "../../src/core/tree/formClass";
import { cellsOf, formClassTables, hasTapers, loaded, ourVolume } from "../core/tree/formClassTables";
import { numberIn, published } from "../support/published";
import type { Comparison } from "./comparison";

/** What is printed of single trees, held against our own figures. */
export function treeComparisons(): Comparison[] {
  return [...formClassComparisons(), ownCircleComparison(), girardComparison()];
}

/** One for each table and standing; cells whose tapers are not known have no figure of ours and are left out. */
function formClassComparisons(): Comparison[] {
  return formClassTables.flatMap((table) => {
    const { source, printedTo } = loaded(table);
    const cells = cellsOf(loaded(table)).filter(hasTapers);
    return Object.keys(table.counts).map((standing) => ({
      subject: `Tree volume, ${table.title}`,
      source,
      standing,
      unit: "bf",
      printedTo,
      pairs: cells
        .filter((cell) => cell.standing === standing)
        .map((cell) => ({ printed: cell.volume, ours: ourVolume(table, cell) })),
    }));
  });
}

function ownCircleComparison(): Comparison {
  const { rows, source, standing } = published("cruise/baf10-tree-factors.csv");
  const ownAcres = (dbh: number) =>
    (Math.PI * limitingDistance({ dbh: inches(dbh), baf: squareFeetPerAcre(10) }) ** 2) / 43_560;
  return {
    subject: "Area of a tree's own circle, BAF 10",
    source,
    standing,
    unit: "ac",
    printedTo: 0.000001,
    pairs: rows.map((row) => ({ printed: numberIn(row, "area"), ours: ownAcres(numberIn(row, "dbh")) })),
  };
}

function girardComparison(): Comparison {
  const { rows, source, standing, printedTo } = published("tree/form-class.csv");
  return {
    subject: "Girard form class",
    source,
    standing,
    unit: "%",
    printedTo,
    pairs: rows.map((row) => ({
      printed: numberIn(row, "form class"),
      ours: formClass(inches(numberIn(row, "top of first log")), inches(numberIn(row, "dbh"))),
    })),
  };
}
