import { describe, expect, it } from "vitest";
import { CubicFormulaName, logCubic, CubicUnits } from "../../src/functions/logCubic";
import { expectAsPrinted } from "../support/expectAsPrinted";
import { numberIn, published } from "../support/published";

const one = (cells: unknown[][]) => cells[0]?.[0] as number;

describe("LOGCUBIC", () => {
  const table = published("log/cubic.csv");

  it.each(Object.entries(CubicFormulaName))("answers the worked examples by %s in one call", (id, formula) => {
    const column = (of: string) => table.rows.map((row) => [numberIn(row, of)]);
    const answers = logCubic(column("smallEnd"), column("largeEnd"), column("length"), formula, column("middle"));
    for (const [i, row] of table.rows.entries())
      expectAsPrinted(answers[i]?.[0] as number, numberIn(row, id), table.printedTo);
  });

  it("takes Smalian when no formula is named", () => {
    const smalian = logCubic([[12]], [[14]], [[16]], CubicFormulaName.smalian);
    expect(logCubic([[12]], [[14]], [[16]])).toEqual(smalian);
    expect(logCubic([[12]], [[14]], [[16]], null as never)).toEqual(smalian);
    expectAsPrinted(one(smalian), 14.8, 0.1); // worked by hand
  });

  it("answers in cubic metres for centimetres and metres", () => {
    const metric = (formula: CubicFormulaName) =>
      one(logCubic([[25]], [[29]], [[5]], formula, [[27]], CubicUnits.metric));
    expectAsPrinted(metric(CubicFormulaName.smalian), 0.287848, 1e-6); // worked by hand
    expectAsPrinted(metric(CubicFormulaName.huber), 0.286278, 1e-6);
    expectAsPrinted(metric(CubicFormulaName.newton), 0.286801, 1e-6);
    expectAsPrinted(metric(CubicFormulaName.cone), 0.286801, 1e-6);
    expectAsPrinted(metric(CubicFormulaName.neiloid), 0.286452, 1e-6);
  });

  it.each([CubicFormulaName.huber, CubicFormulaName.newton])(
    "says that %s needs the middle, in the cells that lack it",
    (formula) => {
      const message = `${formula} needs the diameter at the middle of the log too.`;
      expect(logCubic([[10]], [[12]], [[16]], formula)).toEqual([
        [expect.objectContaining({ code: "#VALUE!", message })],
      ]);
      const [without, with11] = logCubic([[10], [10]], [[12], [12]], [[16]], formula, [[""], [11]]);
      expect(without?.[0]).toMatchObject({ message });
      expect(typeof with11?.[0]).toBe("number");
    },
  );

  it("leaves a blank log blank, and names the formulas when the text is none of them", () => {
    expect(logCubic([[""]], [[12]], [[16]])).toEqual([[""]]);
    expect(() => logCubic([[10]], [[12]], [[16]], "Disc" as CubicFormulaName)).toThrow(
      'Formula should be one of: Smalian, Huber, Newton, Cone, Neiloid. You have "Disc".',
    );
  });
});
