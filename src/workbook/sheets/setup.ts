import type { SheetPlan } from "../plan";
import { SPECIES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { settingsOf } from "./settingCells";
import { across, down, sheetPlan, title } from "./sheetParts";
import { speciesColumns } from "./speciesColumns";

export const SETUP = "Setup";
const FIRST = 5;
/** Rows of the list from which the species of a tree is picked. */
const SPECIES_ROOM = 60;

/** The assumptions of the whole workbook, one named cell each, and the list of species. */
export function setupSheet(content: WorkbookContent): SheetPlan {
  const settings = settingsOf(content);
  const cell = (i: number) => `B${FIRST + i}`;
  const speciesAt = FIRST + settings.length + 2;

  return sheetPlan({
    name: SETUP,
    sheetClass: "foundation",
    widths: [26, 28, 13, 80],
    frozenRows: 4,
    blocks: [
      title("Setup"),
      down("A2", "Note", [
        "Every formula of this workbook reads these cells by name. Change one and all sheets follow.",
      ]),
      across("A4", "Heading", ["Setting", "Value", "Unit", "What it does"]),
      down(
        `A${FIRST}`,
        "Computed",
        settings.map(({ label }) => label),
      ),
      ...settings.map(({ value, format }, i) => down(cell(i), "Input", [value], format)),
      down(
        `C${FIRST}`,
        "Unit",
        settings.map(({ unit }) => unit),
      ),
      down(
        `D${FIRST}`,
        "Note",
        settings.map(({ comment }) => comment),
      ),
    ],
    names: settings.map(({ name }, i) => ({ name, at: cell(i) })),
    entryRules: settings.flatMap(({ rule }, i) => (rule ? [{ at: cell(i), rule }] : [])),
    tables: [
      {
        name: SPECIES,
        at: `A${speciesAt}`,
        columns: speciesColumns,
        rows: content.species,
      },
    ],
  });
}

/** The cells that hold the codes of species, with room for more, as a rule for entry needs them. */
export function speciesCodes(content: Pick<WorkbookContent, "settings" | "invented">): string {
  const first = FIRST + settingsOf(content).length + 3;
  return `${SETUP}!$A$${first}:$A$${first + SPECIES_ROOM - 1}`;
}
