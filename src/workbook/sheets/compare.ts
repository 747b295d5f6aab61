import { call, lookedUp } from "../formula";
import { formats } from "../formats";
import type { SheetPlan } from "../plan";
import { cost, costItems, COSTS, named, out, price, products } from "../tables";
import {
  costOf,
  homeNet,
  ifNumbers,
  levels,
  lowestAndHighest,
  priceOf,
  range,
  verdict,
  volumes,
} from "./compareFormulas";
import { across, cautionLine, down, heading, quoted, sheetPlan } from "./sheetParts";
import { tractCells } from "./stand";

export const COMPARE = "Compare";

const rising = ["Likely", "Low", "High"] as const;

/** The harvest used three ways: sold standing, sold as logs, sawn at home. Each with its range, all in plain formulas. */
export function compareSheet(): SheetPlan {
  return sheetPlan({
    name: COMPARE,
    sheetClass: "presentation",
    frozenRows: 2,
    widths: [38, 16, 16, 20, 22, 14],
    blocks: [
      {
        at: "A1",
        cells: [
          [
            {
              formula: `=IF(${named.priceNotice}="","Compare three ways","Compare three ways - "&${named.priceNotice})`,
            },
          ],
        ],
        style: "Title",
      },
      down("A2", "Computed", [{ formula: verdict() }]),
      down("A3", "Note", ["Estimate", "Forester", "Tax", "Ungraded lumber"].map(cautionLine)),

      across("A8", "Heading", ["Volume of the harvest, MBF", ...rising, "Margin +/-"]),
      down("A9", "Computed", ["By the log rule", "Lumber, sawn on your mill"]),
      {
        at: "B9",
        cells: [volumes(tractCells.harvest), volumes(tractCells.lumber)],
        style: "Linked",
        format: formats.mbf,
      },

      across("A12", "Heading", ["Price, $ per MBF", ...rising, "Of"]),
      down("A13", "Computed", Object.values(products)),
      {
        at: "B13",
        cells: Object.values(products).map((product) =>
          [price.likely, price.low, price.high].map((level) => priceOf(product, level)),
        ),
        style: "Linked",
        format: formats.dollars,
      },
      down(
        "E13",
        "Unit",
        Object.values(products).map((product) => priceOf(product, price.unit)),
      ),

      across("A17", "Heading", ["Costs and hours", "Amount", "Unit"]),
      down("A18", "Computed", Object.values(costItems)),
      down(
        "B18",
        "Linked",
        Object.values(costItems).map((item) => costOf(item)),
        formats.volume,
      ),
      down(
        "C18",
        "Unit",
        Object.values(costItems).map((item) => ({
          formula: `=${lookedUp(COSTS, cost.unit, cost.item, quoted(item))}`,
        })),
      ),

      across("A25", "Heading", ["1 Sell standing, $", ...rising]),
      down("A26", "Computed", ["What the buyer pays"]),

      across("A28", "Heading", ["2 Sell as logs, $", ...rising]),
      down("A29", "Computed", ["What the buyer pays", "Felling, skidding and hauling", "Left over"]),
      {
        at: "B30",
        cells: [
          levels((level) => ifNumbers([`${level}9`], `($B$18+$B$19)*${level}9`)),
          levels((level) => ifNumbers([`${level}29`, `${level}30`], `${level}29-${level}30`)),
        ],
        style: "Computed",
        format: formats.dollars,
      },

      across("A33", "Heading", ["3 Saw at home, $", ...rising]),
      down("A34", "Computed", [
        "What the lumber brings",
        "Felling, skidding, mill and selling",
        "Own hours, h",
        "Left over when those hours are paid",
        "The same for one own hour, pay on top",
      ]),
      {
        at: "B35",
        cells: [levels((level) => ifNumbers([`${level}9`, `${level}10`], `$B$18*${level}9+($B$20+$B$23)*${level}10`))],
        style: "Computed",
        format: formats.dollars,
      },
      {
        at: "B36",
        cells: [levels((level) => ifNumbers([`${level}10`], `$B$21*${level}10`))],
        style: "Computed",
        format: formats.volume,
      },
      {
        at: "B37",
        cells: [levels((level) => homeNet(level, 1)), levels((level) => homeNet(level, 2))],
        style: "Computed",
        format: formats.dollars,
      },

      across("A40", "Heading", ["Side by side, $", ...rising]),
      down("A41", "Computed", ["Sell standing", "Sell as logs", "Saw at home"]),
      { at: "B41", cells: [26, 31, 37].map(lowestAndHighest), style: "Computed", format: formats.dollars },

      heading("A45", "Which way comes out ahead", 5),
      heading("A52", "Lumber price at which sawing at home leaves what selling logs does, $ per MBF", 5),
    ],
    names: [{ name: named.verdict, at: "A2" }],
    spills: [
      range(out.standing, "B26", ["B9", "E9", "B13", "C13", "D13"]),
      range(out.asLogs, "B29", ["B9", "E9", "B14", "C14", "D14"]),
      range(out.sawn, "B34", ["B10", "E10", "B15", "C15", "D15"]),
      {
        name: out.compare,
        at: "A46",
        formula: `=IF(COUNT(B41:D43)=9,${call("COMPAREWAYS", "A41:A43", "B41:B43", "C41:C43", "D41:D43")},"")`,
        rows: 5,
        columns: 5,
        formats: [formats.general, formats.dollars, formats.dollars, formats.dollars, formats.general],
      },
      {
        name: out.breakEven,
        at: "A53",
        formula: ifNumbers(["B31", "B35", "B36", "B10"], call("BREAKEVENPRICE", "B31", "B35+B36*B22", "B10")),
        rows: 1,
        columns: 1,
        formats: [formats.dollars],
      },
    ],
  });
}
