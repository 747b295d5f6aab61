import { feet, inches } from "../../src/core/basis/units";
import { findSpecies } from "../../src/core/tree/national/findSpecies";
import { anyStand, stemEquations } from "../../src/core/tree/national/stemEquations";
import { stemParts, wholeWood } from "../../src/core/tree/national/stemParts";
import { stemVolume } from "../../src/core/tree/national/stemVolume";
import { examples, NOT_HERE, ourQuantities, restsOnShortBark } from "../core/tree/national/workedExamples";
import { numberIn, published, type PublishedRow } from "../support/published";
import type { Comparison } from "./comparison";

/** The national equations held against the report's own examples, and against trees that were felled and measured. */
export function stemComparisons(): Comparison[] {
  return [...exampleComparisons(), ...cherryComparisons()];
}

/** Quantities of the examples by their unit, with the step to which our tables can follow them. */
function exampleComparisons(): Comparison[] {
  const kinds = [
    { title: "volumes", of: /^V/, unit: "ft3", printedTo: 0.001 },
    { title: "heights of a top diameter", of: /^h_/, unit: "ft", printedTo: 0.0001 },
    { title: "shares of volume", of: /^R/, unit: "", printedTo: 0.000001 },
    { title: "dry weights", of: /_lb$/, unit: "lb", printedTo: 0.01 },
  ];
  const here = examples.rows.filter(({ quantity = "" }) => !NOT_HERE.test(quantity));
  const pairOf = (row: PublishedRow) => ({
    printed: numberIn(row, "value"),
    ours: ourQuantities(row)[row.quantity ?? ""] ?? NaN,
  });
  const comparison = (title: string, unit: string, printedTo: number, rows: readonly PublishedRow[]): Comparison => ({
    subject: `National equations, ${title}`,
    source: examples.source,
    standing: examples.standing,
    unit,
    printedTo,
    pairs: rows.map(pairOf),
  });
  return [
    ...kinds.map(({ title, of, unit, printedTo }) =>
      comparison(
        title,
        unit,
        printedTo,
        here.filter((row) => of.test(row.quantity ?? "") && !restsOnShortBark(row)),
      ),
    ),
    comparison("volumes that rest on a bark coefficient of three digits", "ft3", 0.01, here.filter(restsOnShortBark)),
  ];
}

/** What part of the stem was measured is not stated, so these differences are what they are and no pass mark. */
function cherryComparisons(): Comparison[] {
  const { rows, source, standing } = published("tree/blackCherry.csv");
  const merchantable = stemParts.find(({ title }) => title === "Merchantable wood") ?? wholeWood;
  return [
    { division: "", title: "the species at large", part: wholeWood },
    { division: "M220", title: "division M220", part: wholeWood },
    { division: "210", title: "division 210", part: wholeWood },
    { division: "210", title: "division 210, merchantable wood", part: merchantable },
  ].map(({ division, title, part }) => {
    const equations = stemEquations(findSpecies("black cherry"), { ...anyStand, division });
    return {
      subject: `31 felled black cherry trees, ${title}`,
      source,
      standing,
      unit: "ft3",
      printedTo: 0.1,
      pairs: rows.map((row) => ({
        printed: numberIn(row, "volume"),
        ours: stemVolume(equations, { dbh: inches(numberIn(row, "dbh")), height: feet(numberIn(row, "height")) }, part),
      })),
    };
  });
}
