import { textOf } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { dollars, dollarsPerMbf, feet, inches, type Inches } from "../../core/basis/units";
import type { BoardSize } from "../../core/sawing/boardSize";
import { COMMON_SHINGLE, productOf, type Resawing } from "../../core/sawing/resawn";
import { blank, isWord, rowsSaying } from "./listCells";
import { boundsIn } from "./measuredIn";
import { asCells, boundedNumber } from "./readings";
import type { UnitSystem } from "./unitSystem";
import { widthsOf } from "./widthsOf";

/** Columns of a list without headings that has them all. */
const ALL_COLUMNS = ["Thickness", "Width", "Length", "Product", "Price per piece", "Price per MBF"];

/**
 * Thickness and width in the first two columns; when there are more, the price per MBF in the last. A heading row may
 * name further columns: the only length wanted, the product, and the price of a piece. Six columns without headings
 * are those of ALL_COLUMNS. A row of several widths gives a size for each.
 */
export function boardSizes(given: unknown, kerf: number, units: UnitSystem): readonly BoardSize[] {
  const { diameter, distance } = units;
  const cells = asCells(given);
  const isHeading = ([thickness, width]: readonly unknown[]) => isWord(thickness) && (isWord(width) || blank(width));
  const named = cells[0] && isHeading(cells[0]) ? cells[0].map(textOf) : [];
  const heading = named.length === 0 && cells[0]?.length === ALL_COLUMNS.length ? ALL_COLUMNS : named;
  const at = (pattern: RegExp) => heading.findIndex((text) => pattern.test(text));
  const lengthAt = at(/^length/i);
  const eachAt = at(/^(price|\$) (per piece|each|a piece)/i);
  const productAt = at(/^product/i);

  return rowsSaying(cells, isHeading).flatMap((row, i) => {
    if (blank(row[0])) throw new InvalidInput(`Board thickness of board ${i + 1} in your list is missing.`);
    if (blank(row[1])) throw new InvalidInput(`Board width of board ${i + 1} in your list is missing.`);
    const last = row.length - 1;
    const length = row[lengthAt];
    const each = row[eachAt];
    const price = last > 1 && ![lengthAt, eachAt, productAt].includes(last) ? row[last] : undefined;
    const wanted = blank(length)
      ? undefined
      : boundedNumber(length, "Board length", boundsIn(distance, 0.1, 120)) / distance.perOurs;
    const resawing = resawingOf(row[productAt], wanted, kerf);
    const size = {
      thickness: inches(boundedNumber(row[0], "Board thickness", boundsIn(diameter, 0.1, 60)) / diameter.perOurs),
      ...(wanted !== undefined && resawing?.product !== "shingles" && { length: feet(wanted) }),
      ...(!blank(price) && {
        price: dollarsPerMbf(boundedNumber(price, "Board price", { unit: "$ per MBF", low: 0, high: 1e6 })),
      }),
      ...(!blank(each) && {
        pricePerPiece: dollars(boundedNumber(each, "Price of a piece", { unit: "$", low: 0, high: 1e6 })),
      }),
      ...(resawing && { resawing }),
    };
    return widthsOf(row[1], diameter).map((width: Inches) => ({ ...size, width }));
  });
}

/** The mill's own saw is used to resaw; blocks are cut to length with the same kerf. */
function resawingOf(cell: unknown, length: number | undefined, kerf: number): Resawing | undefined {
  if (blank(cell)) return undefined;
  const { id } = productOf(cell);
  if (id === "board") return undefined;
  return { product: id, kerf, crossKerf: kerf, length: length ?? COMMON_SHINGLE };
}
