import { feet, inches } from "../../src/core/basis/units";
import { cubicFormulas } from "../../src/core/log/cubic";
import { defectPercent } from "../../src/core/log/defectPercent";
import { defectKinds } from "../../src/core/log/defects";
import { internationalEighth } from "../../src/core/log/rules/internationalEighth";
import { logRules } from "../../src/core/log/rules";
import { defectOf } from "../core/log/defectOf";
import { printedLog } from "../core/log/printedLog";
import { printingsOf } from "../core/log/printingsOf";
import { numberIn, published } from "../support/published";
import type { Comparison } from "./comparison";

/** Every log rule against each of its printed tables, unrounded; cubic formulas and defects against worked examples. */
export function logComparisons(): Comparison[] {
  return [...ruleComparisons(), eighthInchComparison(), ...cubicComparisons(), ...defectComparisons()];
}

const ruleComparisons = () =>
  logRules.flatMap((rule) =>
    printingsOf(rule).map(({ source, standing, printedTo, rows }) => ({
      subject: `${rule.title} log rule`,
      source,
      standing,
      unit: "bf",
      printedTo,
      pairs: rows.map((row) => ({ printed: numberIn(row, "volume"), ours: rule.scale(printedLog(row)) })),
    })),
  );

/** A line of the printed formula for each length, at every diameter from 4 to 40 in. */
function eighthInchComparison(): Comparison {
  const { source, standing, printedTo, rows } = published("log/eighthInchFormulas.csv");
  const diameters = Array.from({ length: 37 }, (_, i) => 4 + i);
  return {
    subject: "International 1/8 log rule, by a printed formula for each length",
    source,
    standing,
    unit: "bf",
    printedTo,
    pairs: rows.flatMap((row) => {
      const [squared, linear, constant] = ["squared", "linear", "constant"].map((of) => numberIn(row, of));
      return diameters.map((diameter) => ({
        printed: squared! * diameter ** 2 + linear! * diameter + constant!,
        ours: internationalEighth.scale({ diameter: inches(diameter), length: feet(numberIn(row, "length")) }),
      }));
    }),
  };
}

function cubicComparisons(): Comparison[] {
  const { source, standing, printedTo, rows } = published("log/cubic.csv");
  return cubicFormulas.map((formula) => ({
    subject: `${formula.title} cubic formula`,
    source,
    standing,
    unit: "ft3",
    printedTo,
    pairs: rows.map((row) => ({
      printed: numberIn(row, formula.id),
      ours: formula.volume({
        smallEnd: inches(numberIn(row, "smallEnd")),
        largeEnd: inches(numberIn(row, "largeEnd")),
        middle: inches(numberIn(row, "middle")),
        length: feet(numberIn(row, "length")),
      }),
    })),
  }));
}

function defectComparisons(): Comparison[] {
  const { source, standing, printedTo, rows } = published("log/defects.csv");
  return defectKinds.map((kind) => ({
    subject: `${kind.title}, deduction for defect`,
    source,
    standing,
    unit: "%",
    printedTo,
    pairs: rows
      .filter((row) => row["kind"] === kind.title)
      .map((row) => ({
        printed: numberIn(row, "percent"),
        ours: defectPercent(kind, printedLog(row), defectOf(row)),
      })),
  }));
}
