import { menuRules } from "../../core/log/rules";
import { formats } from "../formats";
import type { CellValue, EntryRule, SheetPlan } from "../plan";
import { named, species, SPECIES } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { across, asked, down, sheetPlan, title, yesOrNo } from "./sheetParts";

export const SETUP = "Setup";
const FIRST = 5;
/** Rows of the list from which the species of a tree is picked. */
const SPECIES_ROOM = 60;

interface Setting {
  readonly name: string;
  readonly label: string;
  readonly value: CellValue;
  readonly unit: string;
  readonly comment: string;
  readonly rule?: EntryRule;
  readonly format?: string;
}

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
        columns: [
          { heading: species.code, width: 26, format: formats.text },
          { heading: species.name, width: 28, format: formats.text },
        ],
        rows: content.species,
      },
    ],
  });
}

/** The cells that hold the codes of species, with room for more, as a rule for entry needs them. */
export function speciesCodes(content: WorkbookContent): string {
  const first = FIRST + settingsOf(content).length + 3;
  return `${SETUP}!$A$${first}:$A$${first + SPECIES_ROOM - 1}`;
}

function settingsOf({ settings, invented }: WorkbookContent): readonly Setting[] {
  const list = (choices: readonly string[], message: string): EntryRule => ({
    kind: "list",
    choices,
    strict: true,
    message,
  });
  const rules = menuRules.map((rule) => rule.title);

  return [
    { name: named.stand, label: "Stand", value: settings.stand, unit: "", comment: "Its name on sheets and copies." },
    {
      name: named.acres,
      label: "Acres",
      value: settings.acres,
      unit: "ac",
      comment: "Area that the plots stand for.",
      rule: asked(0.1, 100_000, "Acres, above 0."),
    },
    {
      name: named.acresMargin,
      label: "Acres may be off by",
      value: settings.acresMargin,
      unit: "ac",
      comment: "Either way; 0 when the lines were surveyed. It widens the range of the tract.",
    },
    {
      name: named.method,
      label: "Method",
      value: settings.method,
      unit: "",
      comment: "Point: an angle gauge picks the trees. Fixed: every tree on a plot of known size.",
      rule: list(["Point", "Fixed"], "Point or Fixed."),
    },
    {
      name: named.size,
      label: "Gauge or plot size",
      value: settings.size,
      unit: "ft2/ac or ac",
      comment: "Basal area factor for points, acres of one plot for fixed plots.",
    },
    {
      name: named.confidence,
      label: "Confidence",
      value: settings.confidence,
      unit: "pct",
      comment: "95: of 100 cruises like this about 95 ranges would hold the true figure.",
      rule: asked(50, 99.9, "A percent from 50 to 99.9."),
    },
    {
      name: named.target,
      label: "Margin you can live with",
      value: settings.target,
      unit: "pct",
      comment: "Of the volume per acre; tells how many further plots to take.",
      rule: asked(1, 100, "A percent from 1 to 100."),
    },
    {
      name: named.rule,
      label: "Log rule",
      value: settings.rule,
      unit: "",
      comment: "For trees and logs alike. Prices per MBF belong to one rule.",
      rule: { kind: "list", choices: rules, strict: false, message: `Usually one of: ${rules.join(", ")}.` },
    },
    {
      name: named.formClass,
      label: "Form class",
      value: settings.formClass,
      unit: "pct",
      comment: "Diameter inside bark at the top of the first log, in percent of DBH; 78 is usual.",
      rule: asked(65, 90, "A percent from 65 to 90."),
    },
    {
      name: named.classWidth,
      label: "Class width",
      value: settings.classWidth,
      unit: "in",
      comment: "Of the diameter classes in the stand and stock tables.",
      rule: asked(0.5, 10, "Inches, from 0.5 to 10."),
    },
    {
      name: named.units,
      label: "Units",
      value: "imperial",
      unit: "",
      comment: "The headings of this workbook are in inches, feet and acres.",
      rule: list(["imperial"], "This workbook is in inches, feet and acres."),
    },
    {
      name: named.minDbh,
      label: "Smallest DBH",
      value: settings.minDbh,
      unit: "in",
      comment: "The checks ask about a tree below it.",
      rule: asked(1, 80, "Inches, from 1 to 80."),
    },
    {
      name: named.maxDbh,
      label: "Largest DBH",
      value: settings.maxDbh,
      unit: "in",
      comment: "The checks ask about a tree above it.",
      rule: asked(1, 80, "Inches, from 1 to 80."),
    },
    {
      name: named.kerf,
      label: "Kerf",
      value: settings.kerf,
      unit: "in",
      comment: "Width of wood that your saw turns to sawdust.",
      rule: asked(0, 1, "Inches, from 0 to 1."),
      format: formats.thickness,
    },
    {
      name: named.realized,
      label: "Realized lumber",
      value: settings.realized,
      unit: "pct",
      comment: "Share of the best plan that comes off your mill: a guess until you tally some logs.",
      rule: asked(1, 100, "A percent from 1 to 100."),
    },
    {
      name: named.invented,
      label: "Invented figures",
      value: invented ? "Yes" : null,
      unit: "",
      comment: "Yes puts a warning into every title. Clear it when all figures are your own.",
      rule: yesOrNo,
    },
  ];
}
