import { formats } from "../formats";
import { named } from "../tables";
import type { StemContent } from "../workbookContent";
import type { Setting } from "./setting";
import { asked } from "./sheetParts";

/** What the sheet Bucking asks about the stem, one named cell each, in the order in which they stand. */
export const stemCells = (stem: StemContent): readonly Omit<Setting, "comment">[] => [
  {
    name: named.stemSpecies,
    label: "Species",
    value: stem.species,
    unit: "your code, a common name, or an inventory code",
  },
  {
    name: named.stemDbh,
    label: "DBH",
    value: stem.dbh,
    unit: "in",
    format: formats.tenth,
    rule: asked(1, 80, "Inches, from 1 to 80. Missing a decimal point?"),
  },
  {
    name: named.stemHeight,
    label: "Total height",
    value: stem.height,
    unit: "ft to the tip it has or had; or else",
    format: formats.tenth,
    rule: asked(5, 400, "Feet, from 5 to 400."),
  },
  {
    name: named.stemLogs,
    label: "Logs 16 ft",
    value: stem.logs,
    unit: "to the half; never both",
    format: formats.tenth,
    rule: asked(1, 4, "16-ft logs to the half, such as 2.5."),
  },
  {
    name: named.stemStump,
    label: "Stump height",
    value: stem.stump,
    unit: "ft",
    format: formats.tenth,
    rule: asked(0.1, 20, "Feet, from 0.1 to 20."),
  },
  {
    name: named.stemTrim,
    label: "Trim on each log",
    value: stem.trim,
    unit: "ft; 0 for none",
    format: formats.hundredth,
    rule: asked(0, 5, "Feet, from 0 to 5."),
  },
];
