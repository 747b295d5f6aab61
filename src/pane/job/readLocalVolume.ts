import { choiceNamed } from "../../core/basis/choices";
import { localForms } from "../../core/tree/local";
import { fitLabels } from "../../core/tree/local/fitLabels";
import type { LocalTable } from "../../core/tree/local/fitLocalTable";
import type { WorkbookHost } from "../../workbook/host";
import type { CellValue, TableRow } from "../../workbook/plan";
import { felled, FELLED_TREES, named, out } from "../../workbook/tables";
import { number, positive, text, yes } from "./cells";
import { readAnswer } from "./spill";

/** A felled tree with all three of its measures. */
export interface MeasuredTree {
  readonly name: string;
  readonly dbh: number;
  readonly height: number;
  readonly volume: number;
}

/** The equation that the sheet has fitted, and how well it does. */
export interface LocalFit {
  readonly table: LocalTable;
  readonly trees: number;
  /** Standard error of one tree, in the unit of volume and in percent of the mean volume. */
  readonly error: number;
  readonly errorPercent: number;
  readonly rSquared: number;
  /** The form with the smaller one fits better. */
  readonly furnivalIndex: number;
}

export interface LocalUnits {
  readonly diameter: "in" | "cm";
  readonly distance: "ft" | "m";
  readonly volume: "ft³" | "m³";
}

/** What the sheet Local volume asks and says. */
export interface LocalVolumeAnswers {
  readonly form: string;
  /** Whether Trees and Products take wood from it. */
  readonly used: boolean;
  /** The owner's code of the species that it is for; "" for every species. */
  readonly species: string;
  readonly felled: readonly MeasuredTree[];
  readonly fit: LocalFit | undefined;
  /** Why there is no fit; "" when there is one. */
  readonly lacking: string;
  readonly units: LocalUnits;
}

const words = {
  "#N/A":
    "No equation yet: it takes at least 3 felled trees of different sizes, 4 for powers of D and H. The flag of the cell on the sheet Local volume says what is missing.",
  "#VALUE!":
    "The sheet Local volume shows #VALUE!: a measure of a felled tree cannot be used. Select the cell there and open its flag to read which.",
};

/** Reads the sheet Local volume; "none" when the workbook has no such sheet. */
export async function readLocalVolume(host: WorkbookHost): Promise<LocalVolumeAnswers | "none"> {
  if (!(await host.hasTable(FELLED_TREES))) return "none";
  const [settings, trees, answer] = await Promise.all([
    host.readNames([named.localForm, named.localUse, named.localSpecies, named.units]),
    host.readTable(FELLED_TREES),
    readAnswer(host, out.localFit, words),
  ]);
  const units = text(settings[named.units]).toLowerCase() === "metric" ? metric : imperial;
  const fit = answer.kind === "rows" ? fitOf(answer.rows, units) : undefined;
  return {
    form: text(settings[named.localForm]),
    used: yes(settings[named.localUse]),
    species: text(settings[named.localSpecies]),
    felled: trees.rows.flatMap(treeOf),
    fit,
    lacking: fit ? "" : answer.kind === "none" ? answer.because : "No felled trees yet.",
    units,
  };
}

const imperial: LocalUnits = { diameter: "in", distance: "ft", volume: "ft³" };
const metric: LocalUnits = { diameter: "cm", distance: "m", volume: "m³" };

function treeOf(row: TableRow): readonly MeasuredTree[] {
  const [dbh, height, volume] = [felled.dbh, felled.height, felled.volume].map((heading) => positive(row[heading]));
  return dbh && height && volume ? [{ name: text(row[felled.tree]), dbh, height, volume }] : [];
}

function fitOf(rows: readonly (readonly CellValue[])[], { diameter, distance }: LocalUnits): LocalFit | undefined {
  const cells = new Map(rows.map(([label, value]) => [text(label), value]));
  const at = (label: string) => number(cells.get(label)) ?? NaN;
  const form = choiceNamed(cells.get(fitLabels.form), localForms);
  const [a, b, c] = [at(fitLabels.a), at(fitLabels.b), number(cells.get(fitLabels.c))];
  const fit = {
    trees: at(fitLabels.trees),
    error: at(fitLabels.error),
    errorPercent: at(fitLabels.errorPercent),
    rSquared: at(fitLabels.rSquared),
    furnivalIndex: at(fitLabels.furnivalIndex),
  };
  const dbh = { least: at(`${fitLabels.leastDbh} ${diameter}`), most: at(`${fitLabels.mostDbh} ${diameter}`) };
  const height = {
    least: at(`${fitLabels.leastHeight} ${distance}`),
    most: at(`${fitLabels.mostHeight} ${distance}`),
  };
  const all = [a, b, ...Object.values(fit), ...Object.values(dbh), ...Object.values(height)];
  if (!form || all.some(Number.isNaN)) return undefined;
  return { ...fit, table: { form, coefficients: { a, b, ...(c !== null && { c }) }, dbh, height } };
}
