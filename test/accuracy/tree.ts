import { acres, inches, squareFeetPerAcre } from "../../src/core/basis/units";
import { limitingDistance } from "../../src/core/cruise/limitingDistance";
import { plotRadius } from "../../src/core/cruise/plotRadius";
import { basalArea } from "../../src/core/tree/basalArea";
import { formClass } from "../../src/core/tree/formClass";
import { cellsOf, formClassTables, hasTapers, loaded, ourVolume } from "../core/tree/formClassTables";
import { numberIn, published, type PublishedRow } from "../support/published";
import type { Comparison } from "./comparison";

/** What is printed of single trees, of borderline trees and of round plots, held against our own figures. */
export function treeComparisons(): Comparison[] {
  return [...formClassComparisons(), ...gaugeComparisons(), plotRadiusComparison(), girardComparison()];
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

function gaugeComparisons(): Comparison[] {
  const { rows, source, standing } = published("cruise/baf10-tree-factors.csv");
  const column = (subject: string, heading: string, unit: string, printedTo: number, of: (dbh: number) => number) => ({
    subject,
    source,
    standing,
    unit,
    printedTo,
    pairs: rows.map((row) => ({ printed: numberIn(row, heading), ours: of(numberIn(row, "dbh")) })),
  });
  const limit = (dbh: number) => limitingDistance({ dbh: inches(dbh), baf: squareFeetPerAcre(10) });
  const ownAcres = (dbh: number) => (Math.PI * limit(dbh) ** 2) / 43_560;
  return [
    column("Limiting distance, BAF 10", "radius", "ft", 0.1, limit),
    column("Area of a tree's own circle, BAF 10", "area", "ac", 0.000001, ownAcres),
    column("Trees per acre of one tree, BAF 10", "trees per acre", "per ac", 0.01, (dbh) => 1 / ownAcres(dbh)),
    column("Basal area of a tree", "basal area", "ft2", 0.001, (dbh) => basalArea(inches(dbh))),
  ];
}

/** The level row only: the others hold for a band of slopes, and no single slope is printed. */
function plotRadiusComparison(): Comparison {
  const { rows, source, standing, printedTo } = published("cruise/slope-plot-radius.csv");
  const level: PublishedRow = rows[0] ?? {};
  const parts = [300, 100, 50, 20, 10, 5];
  return {
    subject: "Plot radius, level ground",
    source,
    standing,
    unit: "ft",
    printedTo,
    pairs: parts.map((part) => ({ printed: numberIn(level, `1/${part}`), ours: plotRadius(acres(1 / part)) })),
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
