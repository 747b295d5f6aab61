import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IBorderData,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import { invalid, notImplemented } from "./apiError";

/** How Excel's formatting words are written in the grid's styles. */

export const bold = (on: boolean): IStyleData => ({ bl: on ? BooleanNumber.TRUE : BooleanNumber.FALSE });
export const italic = (on: boolean): IStyleData => ({ it: on ? BooleanNumber.TRUE : BooleanNumber.FALSE });
export const fontColor = (color: string): IStyleData => ({ cl: { rgb: colorGiven(color) } });
export const fillColor = (color: string): IStyleData =>
  color === "" ? { bg: null } : { bg: { rgb: colorGiven(color) } };
export const wrapped = (on: boolean): IStyleData => ({ tb: on ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW });

/** Pixels of one level of indent, which Excel makes as wide as three spaces. */
const INDENT = 9;
const USUAL_EDGE = 2;

export function indented(level: number): IStyleData {
  if (!Number.isInteger(level) || level < 0 || level > 250)
    throw invalid(`An indent is 0 to 250 levels, not ${level}.`);
  return { ht: HorizontalAlign.LEFT, pd: { l: USUAL_EDGE + level * INDENT } };
}

const HORIZONTAL: Readonly<Record<string, HorizontalAlign>> = {
  General: HorizontalAlign.UNSPECIFIED,
  Left: HorizontalAlign.LEFT,
  Center: HorizontalAlign.CENTER,
  Right: HorizontalAlign.RIGHT,
};
const VERTICAL: Readonly<Record<string, VerticalAlign>> = {
  Top: VerticalAlign.TOP,
  Center: VerticalAlign.MIDDLE,
  Bottom: VerticalAlign.BOTTOM,
};
const EDGES: Readonly<Record<string, keyof IBorderData>> = {
  EdgeTop: "t",
  EdgeBottom: "b",
  EdgeLeft: "l",
  EdgeRight: "r",
};
const WEIGHTS: Readonly<Record<string, BorderStyleTypes>> = {
  Hairline: BorderStyleTypes.HAIR,
  Thin: BorderStyleTypes.THIN,
  Medium: BorderStyleTypes.MEDIUM,
  Thick: BorderStyleTypes.THICK,
};

export const horizontal = (word: string): IStyleData => ({ ht: known("Excel.HorizontalAlignment", HORIZONTAL, word) });
export const vertical = (word: string): IStyleData => ({ vt: known("Excel.VerticalAlignment", VERTICAL, word) });

/** One edge of a cell, as its line style, colour and weight come together. */
export interface EdgeLook {
  style?: string;
  color?: string;
  weight?: string;
}

export function border(edge: string, { style, color = "#000000", weight = "Thin" }: EdgeLook): IStyleData {
  const side = known("Excel.BorderIndex", EDGES, edge);
  if (style === "None") return { bd: { [side]: null } };
  if (style !== undefined && style !== "Continuous") throw notImplemented(`Excel.BorderLineStyle.${style}`);
  return { bd: { [side]: { s: known("Excel.BorderWeight", WEIGHTS, weight), cl: { rgb: colorGiven(color) } } } };
}

function known<T>(kind: string, words: Readonly<Record<string, T>>, word: string): T {
  const found = words[word];
  if (found === undefined) throw notImplemented(`${kind}.${word}`);
  return found;
}

export function colorGiven(color: string): string {
  if (!/^#[0-9a-f]{6}$/i.test(color)) throw invalid(`A colour is written as #RRGGBB, not ${color}.`);
  return color;
}
