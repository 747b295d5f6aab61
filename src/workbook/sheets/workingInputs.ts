import { cubicFormulas } from "../../core/log/cubic";
import type { FunctionName } from "../../functions/names";
import { call } from "../formula";
import type { EntryRule, PlannedCell } from "../plan";
import { log, named } from "../tables";
import { cardRange } from "./card";
import { byCardOrRule, ofPickedLog } from "./logCells";
import { asked, quoted } from "./sheetParts";
import { stemOrder, stemSpeciesMeant } from "./stemOrder";

/** One thing that goes into a working: its words, and the cell that holds it. */
interface Ingredient {
  readonly label: string;
  readonly value: PlannedCell;
  readonly unit: string;
  readonly rule?: EntryRule;
}

/** A function that can be seen worked. */
interface Worked {
  readonly name: FunctionName;
  /** What it works out, in words. */
  readonly what: string;
  readonly ingredients: readonly Ingredient[];
  /** The formula's call, from the addresses of the ingredients. */
  working(at: readonly string[]): string;
}

const ofLog = (label: string, heading: string, unit: string): Ingredient => ({
  label,
  value: { formula: `=${ofPickedLog(heading)}` },
  unit,
});
const ofStem = (label: string, name: string, unit: string): Ingredient => ({
  label,
  value: { formula: `=IF(${name}="","",${name})` },
  unit,
});
const typed = (label: string, value: PlannedCell, unit: string, rule?: EntryRule): Ingredient => ({
  label,
  value,
  unit,
  ...(rule && { rule }),
});

const worked = (name: string, ...args: readonly string[]) => call("WORKING", quoted(name), ...args);
const whereLogged = (working: string) => `IF(${named.pickedLog}="","",${working})`;

/** What the sheet Working can show, in the order of its menu. Figures that are typed are examples, to be changed. */
export const workedFunctions: readonly Worked[] = [
  {
    name: "LOGSCALE",
    what: "Net scale of the log that is picked on the sheet Sawing, by the rule and the conventions on the sheet Logs",
    ingredients: [
      ofLog("Small end", log.smallEnd, "in"),
      ofLog("Second reading", log.second, "in"),
      ofLog("Scaling diameter", log.scalingDiameter, "in"),
      ofLog("Length", log.length, "ft"),
      ofLog("Scaling length", log.scalingLength, "ft"),
      ofLog("Deduction", log.deduction, "pct"),
      ofLog("Large end", log.largeEnd, "in"),
    ],
    working([, , diameter = "", , length = "", deduction = "", largeEnd = ""]) {
      const practice = [
        deduction,
        named.scaleRounding,
        named.longestLength,
        largeEnd,
        named.diameterRounding,
        named.units,
      ];
      return whereLogged(
        byCardOrRule(
          worked("CARDSCALE", diameter, length, cardRange, ...practice),
          worked("LOGSCALE", diameter, length, named.scaleRule, ...practice),
        ),
      );
    },
  },
  {
    name: "LOGCUBIC",
    what: "Cubic feet in the same log, by the formula named here",
    ingredients: [
      ofLog("Small end", log.smallEnd, "in"),
      ofLog("Large end", log.largeEnd, "in"),
      ofLog("Length", log.length, "ft"),
      typed("Formula", cubicFormulas[0]?.title ?? "", "", {
        kind: "list",
        choices: cubicFormulas.map(({ title }) => title),
        strict: true,
        message: "A cubic formula. Huber and Newton need the middle too.",
      }),
      typed("Middle", null, "in", asked(1, 120, "Inches half way between the ends, for Huber and Newton.")),
    ],
    working: (at) => whereLogged(worked("LOGCUBIC", ...at, named.units)),
  },
  {
    name: "BOARDFEET",
    what: "Board feet in the boards described here",
    ingredients: [
      typed("Thickness", 1, "in", asked(0.25, 12, "Inches: 1.25, not 5/4.")),
      typed("Width", 8, "in", asked(1, 40, "Inches.")),
      typed("Length", 12, "ft", asked(1, 40, "Feet.")),
      typed("Pieces", 1, "boards", asked(1, 10_000, "How many.")),
    ],
    working: (at) => worked("BOARDFEET", ...at, named.units),
  },
  {
    name: "TARGETTHICKNESS",
    what: "Thickness to saw at, so that boards come out at the finished one",
    ingredients: [
      typed("Finished thickness", 0.75, "in", asked(0.1, 12, "Inches.")),
      typed("Shrinkage", 4.5, "pct", asked(0, 20, "Percent, 4.5 for 4.5 percent.")),
      typed("Planing, both faces", 0.125, "in", asked(0, 2, "Inches.")),
      typed("Saw variation", 0.03, "in", asked(0, 2, "Inches.")),
    ],
    working: (at) => worked("TARGETTHICKNESS", ...at, named.units),
  },
  {
    name: "LUMBERWEIGHT",
    what: "Weight of the lumber described here",
    ingredients: [
      typed("Board feet", 1000, "bf", asked(1, 1_000_000, "Board feet.")),
      typed("Species", "northern red oak", ""),
      typed("Moisture content", 12, "pct"),
    ],
    working: (at) => worked("LUMBERWEIGHT", ...at, named.units),
  },
  {
    name: "BUCKPLAN",
    what: "The best-paying way to cut the stem on the sheet Bucking into what stands on the sheet Products",
    ingredients: [
      { label: "Species", value: { formula: `=${stemSpeciesMeant}` }, unit: "" },
      ofStem("DBH", named.stemDbh, "in"),
      ofStem("Total height", named.stemHeight, "ft"),
      ofStem("Logs 16 ft", named.stemLogs, ""),
      ofStem("Stump height", named.stemStump, "ft"),
      ofStem("Trim on each log", named.stemTrim, "ft"),
    ],
    working: ([speciesAt = ""]) => `IF(N(${named.stemDbh})=0,"",${worked("BUCKPLAN", ...stemOrder(speciesAt))})`,
  },
];
