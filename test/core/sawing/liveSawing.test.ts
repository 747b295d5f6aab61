import { describe, expect, it } from "vitest";
import { boardFeet as bf } from "../../../src/core/basis/units";
import type { LogRule } from "../../../src/core/log/logRule";
import { overrun } from "../../../src/core/log/overrun";
import { doyle } from "../../../src/core/log/rules/doyle";
import { internationalQuarter } from "../../../src/core/log/rules/internationalQuarter";
import { scribner } from "../../../src/core/log/rules/scribner";
import { solidVolume } from "../../../src/core/sawing/sawLog";
import type { SawPlan } from "../../../src/core/sawing/sawingPattern";
import { sawYield } from "../../../src/core/sawing/sawYield";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";
import { boardsOf, inchBoards, livePlan, planned, sawLog } from "../../support/sawing";

const widthsOf = (plan: SawPlan) => boardsOf(plan).reduce((sum, { piece }) => sum + piece.width, 0);

const cylinders = published("sawing/liveSawing.csv");
const cones = published("sawing/taperedLog.csv");

describe("live sawing of inch boards from a cylinder", () => {
  it.each(cylinders.rows)("$diameter in, kerf $kerf, from $least width in: $rigid volume bf", (row) => {
    const diameter = numberIn(row, "diameter");
    const log = sawLog(diameter, diameter, numberIn(row, "length"));
    const plan = livePlan(log, inchBoards(numberIn(row, "least width"), diameter), numberIn(row, "kerf"));
    const widths = widthsOf(plan);

    expect(widths).toBe(numberIn(row, "rigid widths"));
    expect(widths).toBe(numberIn(row, "free-gap widths"));
    expect(boardsOf(plan).length).toBeLessThanOrEqual(numberIn(row, "boards"));
    expectAsPrinted(sawYield(plan).boardFeet, numberIn(row, "rigid volume"), cylinders.printedTo);
  });

  it.each(cylinders.rows)("$diameter in, kerf $kerf, from $least width in: $widths on 1/16 in on a scale", (row) => {
    const diameter = numberIn(row, "diameter");
    const log = sawLog(diameter, diameter, numberIn(row, "length"));
    const sizes = inchBoards(numberIn(row, "least width"), diameter);
    const options = { mill: { scaleStep: 1 / 16 }, shortBoards: false };
    const plan = planned(log, sizes, numberIn(row, "kerf"), options);
    expect(widthsOf(plan)).toBe(numberIn(row, "widths on 1/16 in"));
  });

  it.each(cylinders.rows)(
    "$diameter in, kerf $kerf, from $least width in: $volume with taper and short boards bf",
    (row) => {
      const [diameter, length] = [numberIn(row, "diameter"), numberIn(row, "length")];
      const sizes = inchBoards(numberIn(row, "least width"), diameter);
      const kerf = numberIn(row, "kerf");
      const tapered = sawYield(livePlan(sawLog(diameter, diameter + length / 8, length), sizes, kerf)).boardFeet;
      expectAsPrinted(tapered, numberIn(row, "volume with taper and short boards"), cylinders.printedTo);
      const straight = sawYield(livePlan(sawLog(diameter, diameter, length), sizes, kerf)).lumber;
      expectAsPrinted(straight, numberIn(row, "recovery"), 0.01);
    },
  );

  it("holds every row of the enumeration, of which some openings are worse than the best", () => {
    expect(cylinders.rows).toHaveLength(76);
    const worse = cylinders.rows.filter((row) => numberIn(row, "worst-opening widths") < numberIn(row, "rigid widths"));
    expect(worse).toHaveLength(76);
  });
});

describe("live sawing of inch boards from a tapered log", () => {
  it.each(cones.rows)("$small end to $large end in, kerf $kerf: $volume with short boards bf", (row) => {
    const log = sawLog(numberIn(row, "small end"), numberIn(row, "large end"), numberIn(row, "length"));
    const sizes = inchBoards(numberIn(row, "least width"), log.largeEnd);
    const kerf = numberIn(row, "kerf");
    const withShort = sawYield(livePlan(log, sizes, kerf));

    expectAsPrinted(sawYield(livePlan(log, sizes, kerf, false)).boardFeet, numberIn(row, "full-length volume"), 0.001);
    expectAsPrinted(withShort.boardFeet, numberIn(row, "volume with short boards"), cones.printedTo);
    expectAsPrinted(withShort.lumber, numberIn(row, "cubic recovery"), 0.1);
    expectAsPrinted(withShort.boardFeet / solidVolume(log), numberIn(row, "volume per cubic foot"), 0.01);
  });

  it.each(cones.rows)("$small end to $large end in, kerf $kerf: overrun over three rules", (row) => {
    const log = sawLog(numberIn(row, "small end"), numberIn(row, "large end"), numberIn(row, "length"));
    const { boardFeet } = sawYield(
      livePlan(log, inchBoards(numberIn(row, "least width"), log.largeEnd), numberIn(row, "kerf")),
    );
    const overrunOver = (rule: LogRule, share = 1) =>
      overrun(boardFeet, bf(rule.scale({ diameter: log.smallEnd, length: log.length }) * share));
    expectAsPrinted(overrunOver(doyle), numberIn(row, "Doyle overrun"), 0.1);
    expectAsPrinted(overrunOver(scribner), numberIn(row, "Scribner overrun"), 0.1);
    // The table takes 0.905 of the 1/8-in rule, the statutes that ours follows 0.904762.
    const international = overrunOver(internationalQuarter, 0.905 / 0.904762);
    expectAsPrinted(international, numberIn(row, "International overrun"), 0.1);
  });
});
