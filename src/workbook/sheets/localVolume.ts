import { localForms } from "../../core/tree/local";
import { beside } from "../address";
import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan, SheetPlan } from "../plan";
import { felled, FELLED_TREES, named, out } from "../tables";
import type { WorkbookContent } from "../workbookContent";
import { FIT_AT, localFitRange, LOCAL_VOLUME } from "./localVolumeCells";
import { speciesCodes } from "./setup";
import { asked, cautionLine, down, heading, sheetPlan, title, yesOrNo } from "./sheetParts";

const TABLE_AT = "A9";
const SETTINGS_AT = "J5";
const VOLUMES_AT = "N5";
const VOLUMES_ROWS = 62;
const VOLUMES_COLUMNS = 30;

/** A volume table of the owner's own: felled trees, the equation fitted to them with its error, and the table itself. */
export function localVolumeSheet(content: WorkbookContent): SheetPlan {
  const { form, use, species } = content.localVolume;
  const setting = (i: number) => beside(SETTINGS_AT, i, 1);
  return sheetPlan({
    name: LOCAL_VOLUME,
    sheetClass: "foundation",
    landscape: true,
    frozenRows: 9,
    widths: [...felledColumns(content).map(({ width }) => width), 3, 32, 22, 40, 3, 10],
    blocks: [
      title(LOCAL_VOLUME),
      down("A2", "Note", [
        cautionLine("Estimate"),
        "Fell trees of one species over all sizes you have: a dozen is a start, thirty are better.",
        "Measure height and volume the same way on every tree. The error is that of one tree.",
        "Trees a tenth beyond the felled sizes get no volume. The smaller Furnival index is the better form.",
        "Yes at Use it on Trees takes wood by total height from here, on Products too: then give wood of the whole stem, without bark.",
      ]),
      heading(beside(SETTINGS_AT, -1, 0), "The table", 3),
      down(SETTINGS_AT, "Computed", ["Form", "Use it on Trees", "For the species"]),
      ...[form, use, species].map((value, i) => down(setting(i), "Input", [value])),
      down(beside(SETTINGS_AT, 0, 2), "Note", [
        localForms.map(({ equation }) => equation.replace("V = ", "")).join(", or "),
        "Yes, or blank",
        "a code of yours; blank for every species",
      ]),
      heading(beside(FIT_AT, -1, 0), "Fitted by least squares", 2),
      heading(beside(VOLUMES_AT, -1, 0), "Volume by DBH and height", 8),
    ],
    names: [named.localForm, named.localUse, named.localSpecies].map((name, i) => ({ name, at: setting(i) })),
    entryRules: [
      {
        at: setting(0),
        rule: {
          kind: "list",
          choices: localForms.map((one) => one.title),
          strict: true,
          message: "One of the two forms.",
        },
      },
      { at: setting(1), rule: yesOrNo },
    ],
    tables: [{ name: FELLED_TREES, at: TABLE_AT, columns: felledColumns(content), rows: content.localVolume.felled }],
    spills: [
      {
        name: out.localFit,
        at: FIT_AT,
        formula: `=${call("LOCALFIT", ...[felled.dbh, felled.height, felled.volume].map((one) => column(FELLED_TREES, one)), named.localForm, named.units)}`,
        rows: 17,
        columns: 2,
        formats: [formats.general, formats.fitted],
        rowFormats: {
          6: formats.whole,
          ...Object.fromEntries([7, 8, 9, 10, 11].map((row) => [row, formats.thickness])),
          ...Object.fromEntries([13, 14, 15, 16].map((row) => [row, formats.tenth])),
        },
      },
      {
        name: out.localTable,
        at: VOLUMES_AT,
        formula: `=IFERROR(${call("LOCALTABLE", localFitRange, '""', '""', named.units)},"")`,
        rows: VOLUMES_ROWS,
        columns: VOLUMES_COLUMNS,
        formats: [formats.whole, ...new Array<string>(VOLUMES_COLUMNS - 1).fill(formats.tenth)],
      },
    ],
  });
}

const here = (heading: string) => thisRow(FELLED_TREES, heading);
const measured = [felled.dbh, felled.height, felled.volume].map((one) => `${here(one)}=""`).join(",");

const felledColumns = (content: WorkbookContent): readonly ColumnPlan[] => [
  { heading: felled.tree, width: 8 },
  {
    heading: felled.species,
    width: 10,
    rule: {
      kind: "listOf",
      range: speciesCodes(content),
      strict: false,
      message: "A code from the species list on Setup.",
    },
  },
  { heading: felled.dbh, width: 10, format: formats.tenth, rule: asked(1, 80, "Inches, from 1 to 80.") },
  { heading: felled.height, width: 10, format: formats.tenth, rule: asked(1, 400, "Feet, from 1 to 400.") },
  {
    heading: felled.volume,
    width: 11,
    format: formats.tenth,
    rule: asked(0.1, 10_000, "Cubic feet, of the same part of every tree."),
  },
  { heading: felled.note, width: 24 },
  {
    heading: felled.byTable,
    width: 13,
    format: formats.tenth,
    formula: `=IF(OR(${measured}),"",IFERROR(${call("LOCALVOLUME", here(felled.dbh), here(felled.height), localFitRange, named.units)},""))`,
  },
  {
    heading: felled.off,
    width: 10,
    format: formats.tenth,
    formula: `=IF(${here(felled.byTable)}="","",(${here(felled.byTable)}/${here(felled.volume)}-1)*100)`,
  },
];
