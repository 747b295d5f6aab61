/** The order that is taken when the text has no headings. */
const usualOrder = ["plot", "species", "dbh", "logs", "count", "take", "cull", "note", "height"] as const;

/** What a pasted column can hold; the last ones are found by their headings only. */
export const pastedFields = [...usualOrder, "distance", "accepted"] as const;

export type PastedField = (typeof pastedFields)[number];

/** Which column of the pasted text, counted from 0, holds what. */
export type PastedColumns = Readonly<Partial<Record<PastedField, number>>>;

export interface ColumnMatch {
  readonly by: "headings" | "order";
  readonly columns: PastedColumns;
  /** Headings as they were pasted; empty when there were none. */
  readonly headings: readonly string[];
  /** Rows at the top that hold no tally. */
  readonly headingRows: 0 | 1;
}

/** Words that a heading may have for each field, without its unit. */
const words: Readonly<Record<PastedField, readonly string[]>> = {
  plot: ["plot", "plotno", "plotnumber", "plotid", "point", "pointno", "pt", "plt"],
  species: ["species", "speciescode", "sp", "spp", "spec", "code"],
  dbh: ["dbh", "diameter", "diam", "dia", "d"],
  logs: ["logs", "log", "log16", "logs16", "sawlogs", "merchlogs", "numberoflogs"],
  count: ["count", "trees", "tally", "number", "n"],
  take: ["take", "cut", "harvest"],
  cull: ["cull", "defect"],
  height: ["height", "totalheight", "totheight", "ht", "totht", "totalht", "treeheight"],
  distance: ["distance", "dist", "taped", "distanceft"],
  accepted: ["acceptedbecause", "accepted", "keptbecause"],
  note: ["note", "notes", "remark", "remarks", "comment"],
};

/** Finds the columns by the words in the first row; when it has none that fit, by their usual order. */
export function matchColumns(rows: readonly (readonly string[])[]): ColumnMatch {
  const first = rows[0] ?? [];
  const said = first.map(bare);
  const columns: Partial<Record<PastedField, number>> = {};
  for (const field of pastedFields) {
    const place = said.findIndex((heading) => words[field].includes(heading));
    if (place >= 0) columns[field] = place;
  }
  if (columns.plot !== undefined && columns.dbh !== undefined) {
    return { by: "headings", columns, headings: first, headingRows: 1 };
  }
  const wide = Math.max(0, ...rows.map((row) => row.length));
  const inOrder = Object.fromEntries(usualOrder.slice(0, wide).map((field, place) => [field, place]));
  const isHeading = first.some((cell) => cell.trim() !== "") && !first.some((cell) => /\d/.test(cell));
  return {
    by: "order",
    columns: inOrder,
    headings: isHeading ? first : [],
    headingRows: isHeading && rows.length > 1 ? 1 : 0,
  };
}

/** A heading without case, marks and its unit: "DBH (in)" and "dbh_in" are both "dbh". */
const bare = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[([].*?[)\]]/g, "")
    .replace(/[^a-z0-9]+/g, " ")
    .trim()
    .replace(/ (in|inch|inches|cm|ft|pct|percent|16ft|16 ft)$/, "")
    .replace(/ /g, "");
