import { describe, expect, it } from "vitest";
import { InvalidInput, OutOfRange } from "../../../src/core/basis/problem";
import { feet, inches } from "../../../src/core/basis/units";
import { boardMeasure } from "../../../src/core/lumber/boardMeasure";
import { dry, green, hardwood, lumberKinds, softwood, softwoodTimber } from "../../../src/core/lumber/dressedSize";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

describe("softwood boards and dimension", () => {
  const { rows, printedTo, source } = published("lumber/softwoodSizes.csv");

  it.each(rows)(`$class $face of $nominal in: $dry dry, $green green, as in ${source}`, (row) => {
    const nominal = inches(numberIn(row, "nominal"));
    expectAsPrinted(softwood.dressed(nominal, dry), numberIn(row, "dry"), printedTo);
    expectAsPrinted(softwood.dressed(nominal, green), numberIn(row, "green"), printedTo);
  });

  it("gives a size that is printed more than once the same dressed size each time, so that a face needs no name", () => {
    const bySize = new Map<string, Set<string>>();
    for (const row of rows) {
      const dressed = bySize.get(row.nominal ?? "") ?? new Set();
      bySize.set(row.nominal ?? "", dressed.add(`${row.dry} ${row.green}`));
    }
    expect(rows.length).toBeGreaterThan(bySize.size);
    expect([...bySize.values()].filter(({ size }) => size > 1)).toEqual([]);
  });

  it("has no 13 in, and points a thick piece to the timbers", () => {
    expect(() => softwood.dressed(inches(13), dry)).toThrow(
      'Softwood as published has no value for 13 in. For a timber, 5 in or more each way, give the kind "Softwood timber".',
    );
    expect(() => softwood.dressed(inches(1.1), dry)).toThrow("Softwood as published has no value for 1.1 in.");
  });
});

describe("softwood timbers", () => {
  const { rows, source } = published("lumber/softwoodTimbers.csv");

  it.each(rows)(`from $from to $to in lose $less dry in dry, as in ${source}`, (row) => {
    for (let nominal = numberIn(row, "from"); nominal <= numberIn(row, "to"); nominal += 1) {
      expect(softwoodTimber.dressed(inches(nominal), dry)).toBe(nominal - numberIn(row, "less dry"));
      expect(softwoodTimber.dressed(inches(nominal), green)).toBe(nominal - numberIn(row, "less green"));
    }
  });

  it("lose another amount than a width of the same name", () => {
    expect([softwood, softwoodTimber].map((kind) => kind.dressed(inches(6), green))).toEqual([5.625, 5.5]);
    expect([softwood, softwoodTimber].map((kind) => kind.dressed(inches(7), dry))).toEqual([6.5, 6.25]);
  });

  it("come in whole inches from 5 up", () => {
    expect(() => softwoodTimber.dressed(inches(4), dry)).toThrow(OutOfRange);
    expect(() => softwoodTimber.dressed(inches(7.5), dry)).toThrow("It has whole inches from 5 up.");
  });
});

describe("a second printing", () => {
  const { rows, printedTo, source } = published("lumber/softwoodSizes.dealer.csv");

  it.each(rows)(`$nominal thickness x $nominal width is $thickness x $width in, as in ${source}`, (row) => {
    const kind = lumberKinds.find(({ title }) => title === row.kind) ?? hardwood;
    const [thick, wide] = [inches(numberIn(row, "nominal thickness")), inches(numberIn(row, "nominal width"))];
    expectAsPrinted(kind.dressed(thick, dry), numberIn(row, "thickness"), printedTo);
    expectAsPrinted(kind.dressed(wide, dry), numberIn(row, "width"), printedTo);
    expectAsPrinted(boardMeasure(thick, wide, feet(1)), numberIn(row, "per foot"), 0.001);
  });
});

describe.each(["lumber/hardwoodThicknesses.csv", "lumber/hardwoodThicknesses.recalled.csv"])("%s", (file) => {
  const { rows, printedTo, source, standing } = published(file);

  it.each(rows)(`$rough in rough is $surfaced in surfaced, ${standing} in ${source}`, (row) => {
    expectAsPrinted(hardwood.dressed(inches(numberIn(row, "rough")), dry), numberIn(row, "surfaced"), printedTo);
  });
});

describe("hardwood", () => {
  it("is dressed dry, and in thickness only", () => {
    expect(() => hardwood.dressed(inches(1), green)).toThrow("dressed sizes for dry lumber only");
    expect(() => hardwood.dressed(inches(6), dry)).toThrow("widths are not dressed to a size");
  });
});

it.each(lumberKinds)("$title refuses 0, less, and what is no number", (kind) => {
  for (const wrong of [0, -1, NaN, Infinity]) expect(() => kind.dressed(inches(wrong), dry)).toThrow(InvalidInput);
});
