import { columnLetters } from "../address";
import { formats } from "../formats";
import { column } from "../formula";
import type { BlockPlan, EntryRule, EntryRulePlan, Formula, NamePlan, PlannedCell, SheetPlan } from "../plan";
import { named, plot, PLOTS, species, SPECIES } from "../tables";
import { across, asked, down, heading, sheetPlan, title } from "./sheetParts";
import { gaugeInWords } from "./fieldTallyGauge";
import { limitBlocks, LIMIT_ROWS } from "./fieldTallyLimits";

export const FIELD_TALLY = "Field tally";

/** What differs between the sheet inside the workbook and the same sheet as a workbook of its own. */
export interface FieldTallyContent {
  /** Plots to have room for, two to a page. */
  readonly points: number;
  readonly species: readonly { readonly code: string; readonly name: string }[];
  /** The cells that hold the species codes, as a rule for entry takes them; left out, the codes themselves are the menu. */
  readonly speciesCells?: string;
  /** Left out, stand, method and gauge are read from Setup by name, and the points from the sheet Points. */
  readonly alone?: {
    readonly stand: string;
    readonly method: string;
    readonly size: number;
    readonly points: readonly (string | number)[];
  };
}

const LIMITS_AT = 7;
const KEY_AT = LIMITS_AT + LIMIT_ROWS + 1;
/** Species told on one line of the key. */
const KEY_COLUMNS = ["A", "D", "H", "K"] as const;
/** Trees that a point has room for. A choice of ours: gauges are chosen to take 4 to 12. */
const TREES = 18;
/** Leaves room at the side where the letters of another font are wider. [%] */
const SCALE = 85;
/** A row is this many lines high, for cold hands: 0.28 in on paper. */
const TREE_LINES = 1.5;
const BLOCK = TREES + 3;
const WIDTHS = [9, 6, 6, 6, 6, 8] as const;
const GAP = 6;

const METHOD_AT = "K2";
const SIZE_AT = "K3";

/**
 * The tally as it is taken along, on paper or on a tablet: two points to a page under the limiting distances of the
 * gauge, the slope and the species. Native formulas only, so it works wherever the add-in does not.
 */
export function fieldTallySheet(content: FieldTallyContent): SheetPlan {
  const keyRows = Math.max(1, Math.ceil(content.species.length / KEY_COLUMNS.length));
  const firstPage = KEY_AT + keyRows + 1;
  const pages = Math.max(1, Math.ceil(content.points / 2));
  const starts = Array.from({ length: pages }, (_, page) => firstPage + page * BLOCK);
  const { alone } = content;

  return sheetPlan({
    // A name of one word, because what writes the file puts no quotes around the name in its print titles.
    name: alone ? "Tally" : FIELD_TALLY,
    sheetClass: "control",
    frozenRows: firstPage - 1,
    widths: [...WIDTHS, GAP, ...WIDTHS],
    blocks: [
      alone ? down("A1", "Title", [FIELD_TALLY]) : title(FIELD_TALLY),
      down("A2", alone ? "Input" : "Linked", [alone ? alone.stand : { formula: `=${named.stand}` }]),
      across("A3", "Note", ["Date"]),
      across("B3", "Input", [null, null]),
      across("D3", "Note", ["Crew"]),
      across("E3", "Input", [null, null]),
      across("H2", "Note", ["Method"]),
      down(METHOD_AT, alone ? "Input" : "Linked", [alone ? alone.method : { formula: `=${named.method}` }]),
      across("H3", "Note", ["BAF, or plot ac"]),
      down(SIZE_AT, alone ? "Input" : "Linked", [alone ? alone.size : { formula: `=${named.size}` }], formats.general),
      down("A4", "Note", [
        "DBH in inches at 4.5 ft, uphill side; 16-ft logs to the half; a blank count is 1.",
        ...gaugeInWords(alone),
      ]),
      ...limitBlocks(LIMITS_AT, alone),
      heading(`A${KEY_AT}`, "Species", 13),
      ...keyBlocks(content, keyRows),
      ...starts.flatMap((row, page) => [
        ...pointBlocks(content, row, 0, 2 * page),
        ...pointBlocks(content, row, 7, 2 * page + 1),
      ]),
    ],
    names: alone ? namesAlone : [],
    entryRules: starts.flatMap((row) => [0, 7].flatMap((from) => rulesOf(content, row, from))),
    print: {
      area: `A1:M${firstPage + pages * BLOCK - 1}`,
      titleRows: [1, firstPage - 1],
      breaks: starts.slice(1),
      gridlines: true,
      margin: 0.5,
      scale: SCALE,
    },
  });
}

const namesAlone: readonly NamePlan[] = [
  { name: named.stand, at: "A2" },
  { name: named.method, at: METHOD_AT },
  { name: named.size, at: SIZE_AT },
];

/** Codes and names, four to a line; read from Setup where there is one, so that a new code shows. */
function keyBlocks({ species: list, alone }: FieldTallyContent, rows: number): readonly BlockPlan[] {
  return KEY_COLUMNS.map((letter, at) =>
    down(
      `${letter}${KEY_AT + 1}`,
      "Computed",
      Array.from({ length: rows }, (_, row): PlannedCell => {
        const place = row * KEY_COLUMNS.length + at;
        const one = list[place];
        if (alone) return one ? `${one.code} ${one.name}` : null;
        const cell = (name: string) => `INDEX(${column(SPECIES, name)},${place + 1})`;
        const code = cell(species.code);
        return {
          formula: `=IF(ROWS(${column(SPECIES, species.code)})<${place + 1},"",IF(${code}="","",${code}&" "&${cell(species.name)}))`,
        };
      }),
    ),
  );
}

/** One point: its number and running sums, the headings, the rows to fill. */
function pointBlocks(
  { points, alone }: FieldTallyContent,
  row: number,
  from: number,
  at: number,
): readonly BlockPlan[] {
  const letter = (place: number) => columnLetters(from + place);
  const range = (place: number) => `${letter(place)}${row + 2}:${letter(place)}${row + 1 + TREES}`;
  const [diameters, counts] = [range(1), range(4)];
  const trees: Formula = {
    formula: `=SUMPRODUCT((LEN(${diameters})>0)*(LEN(${counts})=0))+SUM(${counts})`,
    result: 0,
  };
  const basalArea: Formula = {
    formula: `=IF(${named.method}="Point",${letter(3)}${row}*${named.size},"")`,
    result: !alone || alone.method === "Point" ? 0 : "",
  };
  const inPlots = `INDEX(${column(PLOTS, plot.plot)},${at + 1})`;
  const number: PlannedCell =
    at >= points
      ? null
      : alone
        ? (alone.points[at] ?? null)
        : { formula: `=IF(ROWS(${column(PLOTS, plot.plot)})<${at + 1},"",IF(${inPlots}="","",${inPlots}))` };
  return [
    across(`${letter(0)}${row}`, "Heading", ["Point", number, "Trees", trees, "BA ft2", basalArea]),
    {
      ...across(`${letter(0)}${row + 1}`, "Note", ["Species", "DBH in", "Logs 16 ft", "Cull pct", "Count", "Note"]),
      lines: [2],
    },
    {
      at: `${letter(0)}${row + 2}`,
      cells: Array.from({ length: TREES }, () => new Array<null>(WIDTHS.length).fill(null)),
      style: "Input",
      lines: new Array<number>(TREES).fill(TREE_LINES),
    },
  ];
}

function rulesOf({ species: list, speciesCells }: FieldTallyContent, row: number, from: number): EntryRulePlan[] {
  const on = (place: number, rule: EntryRule): EntryRulePlan => ({
    at: `${columnLetters(from + place)}${row + 2}:${columnLetters(from + place)}${row + 1 + TREES}`,
    rule,
  });
  const message = "A code from the species list.";
  const codes: EntryRule | undefined = speciesCells
    ? { kind: "listOf", range: speciesCells, strict: false, message }
    : list.length > 0
      ? { kind: "list", choices: list.map(({ code }) => code), strict: false, message }
      : undefined;
  return [
    ...(codes ? [on(0, codes)] : []),
    on(1, asked(1, 80, "Inches, from 1 to 80. Missing a decimal point?")),
    on(2, asked(0, 6, "16-ft logs to the half, such as 2.5.")),
    on(3, asked(0, 100, "Percent, 15 for 15 percent.")),
    on(4, asked(0.5, 1000, "How many such trees; blank is one.")),
  ];
}
