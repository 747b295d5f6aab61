import { describe, expect, it } from "vitest";
import { inches, percent } from "../../../src/core/basis/units";
import { logRule } from "../../../src/core/log/findLogRule";
import { treeVolume } from "../../../src/core/tree/treeVolume";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published, type PublishedRow } from "../../support/published";

/** Wiant's curves through the printed tables: another hand's fit, that shares nothing with our build. */
function wiant(row: PublishedRow, dbh: number, logs: number, formClass = 78): number {
  const curve = (letter: string) =>
    numberIn(row, `${letter}0`) + numberIn(row, `${letter}1`) * logs + numberIn(row, `${letter}2`) * logs ** 2;
  return (curve("a") + curve("b") * dbh + curve("c") * dbh ** 2) * (1 + 0.03 * (formClass - 78));
}

const { rows, printedTo, source } = published("tree/wiant-1986-equations.csv");

describe.each(rows)("Wiant's equation for $rule", (row) => {
  it(`gives the worked example of ${source}`, () => {
    expectAsPrinted(wiant(row, 24, 2.5), numberIn(row, "example form class 78"), printedTo);
    expectAsPrinted(wiant(row, 24, 2.5, 82), numberIn(row, "example form class 82"), printedTo);
  });

  it("stays within 4 % of the log-by-log build from 12 in up, and within 3 % in 19 of 20 trees", () => {
    const rule = logRule(row["rule"]);
    const differences: number[] = [];
    for (let dbh = 12; dbh <= 40; dbh += 1) {
      for (let logs = 1; logs <= (dbh <= 32 ? 4 : 3); logs += 0.5) {
        const ours = treeVolume({ dbh: inches(dbh), logs, formClass: percent(78) }, rule);
        differences.push(Math.abs(wiant(row, dbh, logs) / ours - 1));
      }
    }
    expect(differences).toHaveLength(187);
    expect(Math.max(...differences)).toBeLessThan(0.04);
    expect(differences.filter((one) => one > 0.03).length).toBeLessThanOrEqual(187 / 20);
  });
});
