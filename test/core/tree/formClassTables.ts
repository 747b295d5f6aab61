import { inches, percent } from "../../../src/core/basis/units";
import { logRule } from "../../../src/core/log/findLogRule";
import { treeVolume } from "../../../src/core/tree/treeVolume";
import { numberIn, published, type PublishedRow, type PublishedTable } from "../../support/published";

/** A cell of a printed form-class table. */
export interface TableCell {
  readonly dbh: number;
  readonly logs: number;
  readonly volume: number;
  /** "read" or "from memory". */
  readonly standing: string;
  readonly row: PublishedRow;
}

/** A printed form-class table, and how near our build has to come to it. */
export interface FormClassTable {
  readonly title: string;
  readonly file: string;
  readonly rule: string;
  readonly formClass: number;
  /** Cells of each standing, counted on the page. */
  readonly counts: Readonly<Record<string, number>>;
  /** Cells that an independent build outside this project brings within half a printed step. */
  readonly withinHalfAStep: number;
  /** Half the printed step holds for most cells; how much more the others are given, and why. */
  readonly slack: (volume: number) => number;
  readonly reason: string;
}

const TAPER_IN_TENTHS =
  "tapers are known to a tenth of an inch, so each upper diameter may be off by a twentieth: about 1 bf in the sum";

export const formClassTables: readonly FormClassTable[] = [
  {
    title: "Scribner, form class 78",
    file: "tree/form-class-78-scribner.csv",
    rule: "Scribner",
    formClass: 78,
    counts: { read: 255 },
    withinHalfAStep: 91,
    slack: (volume) => 0.013 * volume,
    reason: "the printed table was itself smoothed: 1.3 % of the cell",
  },
  {
    title: "International 1/4, form class 78",
    file: "tree/form-class-78-international.csv",
    rule: "International 1/4",
    formClass: 78,
    counts: { read: 112, "from memory": 25 },
    withinHalfAStep: 73,
    slack: () => 0.75,
    reason: TAPER_IN_TENTHS,
  },
  {
    title: "International 1/4, form class 80",
    file: "tree/form-class-80-international.csv",
    rule: "International 1/4",
    formClass: 80,
    counts: { read: 63 },
    withinHalfAStep: 50,
    slack: () => 0.75,
    reason: TAPER_IN_TENTHS,
  },
  {
    title: "Doyle, form class 78",
    file: "tree/form-class-78-doyle.csv",
    rule: "Doyle",
    formClass: 78,
    counts: { "from memory": 132 },
    withinHalfAStep: 74,
    slack: () => 0.75,
    reason: TAPER_IN_TENTHS,
  },
];

/** The cells of a table; a misprint is taken as mended, and both figures stay in the file. */
export function cellsOf(table: PublishedTable): TableCell[] {
  return table.rows.map((row) => ({
    dbh: numberIn(row, "dbh"),
    logs: numberIn(row, "logs"),
    volume: numberIn(row, row["mended"] === undefined ? "volume" : "mended"),
    standing: row["standing"] ?? table.standing,
    row,
  }));
}

/** Tapers of 4-log trees are known from 12 to 32 in, those of 5-log trees not at all. */
export const hasTapers = ({ dbh, logs }: TableCell) => logs <= 3 || (logs <= 4 && dbh >= 12 && dbh <= 32);

/** Cells of whole logs and even diameters are built; print made the others of these, once rounded already. */
export const isBuilt = ({ dbh, logs }: TableCell) => Number.isInteger(logs) && dbh % 2 === 0;

/** Half the printed step, the table's slack, and half a step more where print averaged rounded cells. */
export function toleranceOf(table: FormClassTable, printedTo: number, cell: TableCell): number {
  return printedTo / 2 + table.slack(cell.volume) + (isBuilt(cell) ? 0 : printedTo / 2);
}

export const ourVolume = ({ rule, formClass }: FormClassTable, { dbh, logs }: TableCell): number =>
  treeVolume({ dbh: inches(dbh), logs, formClass: percent(formClass) }, logRule(rule));

export const loaded = (table: FormClassTable) => published(table.file);
