import { call, column } from "../formula";
import { formats } from "../formats";
import type { Formula, SheetPlan, StyleName } from "../plan";
import { styleLooks } from "../styles";
import { BOARDS, LOGS, log, named, out, plot, PLOTS, price, PRICES, sawn, tree, TREES } from "../tables";
import { cautionLine, across, down, INVENTED, quoted, sheetPlan } from "./sheetParts";

export const START = "Start";

const legend: readonly StyleName[] = ["Input", "Computed", "Linked", "Note", "Attention"];

/** The way in: what each sheet is for, how many checks are open, what the styles mean, what built this. */
export function startSheet(sheets: readonly (readonly [name: string, purpose: string])[]): SheetPlan {
  const checksAt = 6 + sheets.length + 1;
  const legendAt = checksAt + checks.length + 3;
  const buildAt = legendAt + legend.length + 2;

  return sheetPlan({
    name: START,
    sheetClass: "control",
    frozenRows: 4,
    widths: [26, 14, 70],
    blocks: [
      { at: "A1", cells: [[{ formula: `=${named.stand}` }]], style: "Title" },
      down("A2", "Attention", [
        { formula: `=IF(${named.invented}="Yes",${quoted(`${INVENTED}. No tree, price or place here is real.`)},"")` },
      ]),
      down("A3", "Note", [cautionLine("Estimate")]),

      across("A5", "Heading", ["Sheet", null, "What it is for"]),
      down(
        "A6",
        "Computed",
        sheets.map(([name]) => name),
      ),
      down(
        "C6",
        "Note",
        sheets.map(([, purpose]) => purpose),
      ),

      across(`A${checksAt}`, "Heading", ["Checks", "Open", "Where"]),
      down(`A${checksAt + 1}`, "Computed", [...checks.map(({ what }) => what), "All"]),
      down(`B${checksAt + 1}`, "Computed", [...checks.map(({ open }) => open), sumAbove(checksAt)], formats.whole),
      down(
        `C${checksAt + 1}`,
        "Note",
        checks.map(({ where }) => where),
      ),

      across(`A${legendAt}`, "Heading", ["Styles", null, null]),
      ...legend.map((style, i) => down(`A${legendAt + 1 + i}`, style, [style])),
      down(
        `C${legendAt + 1}`,
        "Note",
        legend.map((style) => styleLooks[style].meaning),
      ),

      across(`A${buildAt}`, "Heading", ["Built with"]),
    ],
    names: [{ name: named.checksOpen, at: `B${checksAt + 1 + checks.length}` }],
    spills: [{ name: out.build, at: `A${buildAt + 1}`, formula: `=${call("BUILDINFO")}`, rows: 30, columns: 4 }],
  });
}

const filled = (table: string, heading: string) => `(LEN(${column(table, heading)})>0)`;
const count = (table: string, heading: string): Formula => ({ formula: `=SUMPRODUCT(${filled(table, heading)}*1)` });

/** What was accepted with a reason is not open. */
const open = (table: string, check: string, accepted: string): Formula => ({
  formula: `=SUMPRODUCT(${filled(table, check)}*(1-${filled(table, accepted)}))`,
});

/** Open checks by table. */
const checks: readonly { readonly what: string; readonly open: Formula; readonly where: string }[] = [
  {
    what: "Trees",
    open: open(TREES, tree.check, tree.accepted),
    where: "Column Check of the sheet Trees, without those accepted",
  },
  {
    what: "Points",
    open: open(PLOTS, plot.check, plot.accepted),
    where: "Column Check of the sheet Points, without those accepted",
  },
  { what: "Logs", open: count(LOGS, log.check), where: "Column Check of the sheet Logs" },
  { what: "Boards", open: count(BOARDS, sawn.check), where: "Column Check of the sheet Boards" },
  { what: "Prices", open: count(PRICES, price.check), where: "Column Check of the sheet Prices" },
];

const sumAbove = (headingRow: number): Formula => ({
  formula: `=SUM(B${headingRow + 1}:B${headingRow + checks.length})`,
});
