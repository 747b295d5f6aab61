import type { IRangeThemeStyleJSON } from "@univerjs/sheets";

export const BANDED = "woodlot-banded";
export const PLAIN = "woodlot-plain";

const heading = { bg: { rgb: "#DDE5D3" }, cl: { rgb: "#0F092C" }, bl: 1 } as const;
const paper = { bg: { rgb: "#FFFFFF" } } as const;
const band = { bg: { rgb: "#F5F7F1" } } as const;

type Theme = { readonly name: string; readonly style: Omit<IRangeThemeStyleJSON, "name"> };

/** The two looks of a table on this page. Excel has its own table styles; what they are called there is kept apart. */
export const tableThemes: readonly Theme[] = [
  { name: BANDED, style: { headerRowStyle: heading, firstRowStyle: paper, secondRowStyle: band } },
  { name: PLAIN, style: { headerRowStyle: heading, firstRowStyle: paper, secondRowStyle: paper } },
];
