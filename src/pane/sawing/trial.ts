import { products } from "../../core/sawing/resawn";
import { widthsNamed } from "../../core/sawing/widthsNamed";
import { Problem } from "../../core/basis/problem";
import type { CellValue, TableRow } from "../../workbook/plan";
import { board } from "../../workbook/tables";

/** One product more that is to be tried, as it is being typed. */
export interface TrialForm {
  readonly thickness: string;
  /** Which thickness that is. */
  readonly way: "sawn" | "finished";
  readonly width: string;
  readonly product: string;
  readonly price: string;
  /** Problems are told once it was to be tried. */
  readonly tried: boolean;
}

export type TrialProblems = Readonly<Partial<Record<"thickness" | "width" | "price", string>>>;

export const firstTrial: TrialForm = {
  thickness: "",
  way: "sawn",
  width: "",
  product: products[0]?.title ?? "",
  price: "",
  tried: false,
};

/** A line of the table of products to try; the problems stand beside their boxes. */
export function readTrial(
  { thickness, way, width, product, price }: TrialForm,
  priced: boolean,
): { readonly row?: TableRow; readonly problems: TrialProblems } {
  const thick = numberIn(thickness);
  const cost = numberIn(price);
  const wide = widthIn(width);
  const problems: TrialProblems = {
    ...(!(thick >= 0.25 && thick <= 24) && { thickness: "Type a thickness from 0.25 to 24 in; 1.25, not 5/4." }),
    ...(wide === undefined && { width: "Type a width from 1 to 60 in, such as 6, or 4 to 12 by 2." }),
    ...(priced &&
      !(cost >= 0 && cost <= 1_000_000) && { price: "Your boards have prices, so this one needs one: $ per MBF." }),
  };
  if (wide === undefined || Object.keys(problems).length > 0) return { problems };
  const other = way === "sawn" ? board.finished : board.sawn;
  return {
    problems,
    row: {
      [board[way]]: thick,
      [other]: null,
      [board.width]: wide,
      [board.length]: null,
      [board.product]: product === firstTrial.product ? null : product,
      [board.each]: null,
      [board.price]: priced ? cost : null,
    },
  };
}

const numberIn = (typed: string) => (typed.trim() === "" ? NaN : Number(typed));

function widthIn(typed: string): CellValue | undefined {
  const width = numberIn(typed);
  if (!Number.isNaN(width)) return width >= 1 && width <= 60 ? width : undefined;
  try {
    return widthsNamed(typed.trim()) ? typed.trim() : undefined;
  } catch (problem) {
    if (problem instanceof Problem) return undefined;
    throw problem;
  }
}
