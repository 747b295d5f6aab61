import type { StyleName } from "./plan";

/** How a style looks. Colours carry meaning only beside words. */
export interface StyleLook {
  readonly color: string;
  /** Ground of a cell; that of Attention shows only while the cell says something. */
  readonly fill?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly size?: number;
  /** How far in the text begins, in levels. */
  readonly indent?: number;
  /** Colour of a thin bar at the left edge. */
  readonly leftBar?: string;
  /** What the legend says of it. */
  readonly meaning: string;
}

const INK = "#0F092C";
const ENTRY = "#1F4E9E";
const GREY = "#595959";

export const styleLooks: Readonly<Record<StyleName, StyleLook>> = {
  Title: { color: INK, bold: true, size: 16, meaning: "Title of a sheet" },
  Heading: { color: INK, bold: true, fill: "#E9EDE4", meaning: "Heading" },
  Input: { color: ENTRY, fill: "#FFF8E1", leftBar: ENTRY, meaning: "Type here: blue on pale yellow" },
  Computed: { color: "#000000", meaning: "Computed by the formula in the cell; leave it" },
  Linked: { color: "#000000", italic: true, meaning: "Taken from another place in the workbook" },
  Note: { color: GREY, meaning: "Explanation" },
  Attention: { color: "#6B4E00", fill: "#FFF4CE", meaning: "Needs a look; the words say why" },
  Unit: { color: GREY, indent: 1, meaning: "Unit" },
};

/** The name in the workbook's list of cell styles; spreadsheets have styles such as "Input" and "Title" of their own. */
export const cellStyle = (style: StyleName): string => `Woodlot ${style}`;
