import { chosen, type Choice } from "../basis/choices";
import type { Source } from "../basis/source";

export const sources: readonly Source[] = [
  {
    author: "The trade",
    year: "",
    title: "Bevel siding and shingles",
    where:
      "siding: two pieces from a board on a diagonal, T = b + p + k; shingles: butts and tips by turns from a block",
    standing: "common practice",
  },
  {
    author: "A lumber dealer",
    year: "n.d.",
    title: "Field guide to shingles",
    where: "16-in shingles, five butts in 2 in (0.40 in each); tip about 1/16 in by another printed list",
    standing: "read",
  },
];

/** What a listed size is sawn further into. */
export interface Product extends Choice {
  readonly id: "board" | "siding" | "shingles";
}

export const products: readonly Product[] = [
  { id: "board", title: "Board", aliases: ["Boards", "Plank", "Timber", "Lumber"] },
  { id: "siding", title: "Bevel siding", aliases: ["Siding", "Clapboard", "Clapboards"] },
  { id: "shingles", title: "Shingles", aliases: ["Shingle"] },
];

export const productOf = (text: unknown): Product => chosen("Product", text, products);

/** How a blank of a listed size is sawn further. */
export interface Resawing {
  readonly product: "siding" | "shingles";
  /** Between pieces of one blank, and where it is cut to the length of shingles. [in] */
  readonly kerf: number;
  readonly crossKerf: number;
  /** Length of a shingle; not used for siding. [ft] */
  readonly length: number;
}

/** A shingle of 16 in, 0.40 in at the butt and 1/16 in at the tip: so thick on the average. [in] */
const SHINGLE = (0.4 + 1 / 16) / 2;
export const COMMON_SHINGLE = 16 / 12; // ft

/**
 * Pieces that a blank is sawn into, and how thick they are on the average.
 *
 *     siding:    2 pieces of b + p = T - k
 *     shingles:  floor((T + k) / (s + k)) from each block, floor((L + c) / (l + c)) blocks
 *
 *     T, L     thickness [in] and length of the blank    k, c  kerf along and across [in]
 *     b, p     butt and tip of the siding [in]            s, l  average thickness [in] and length of a shingle
 */
export function resawnFrom(
  blank: { readonly thickness: number; readonly length: number },
  { product, kerf, crossKerf, length }: Resawing,
): { readonly pieces: number; readonly thickness: number; readonly length: number } {
  if (product === "siding") {
    return { pieces: 2, thickness: Math.max(0, blank.thickness - kerf) / 2, length: blank.length };
  }
  const across = crossKerf / 12;
  const blocks = Math.floor((blank.length + across) / (length + across) + 1e-9);
  return {
    pieces: blocks * Math.floor((blank.thickness + kerf) / (SHINGLE + kerf) + 1e-9),
    thickness: SHINGLE,
    length,
  };
}
