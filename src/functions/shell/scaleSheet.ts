import { InvalidInput } from "../../core/basis/problem";
import { feet, inches, percent } from "../../core/basis/units";
import { NameList } from "../../core/cruise/nameList";
import { logRule } from "../../core/log/findLogRule";
import type { LogRule } from "../../core/log/logRule";
import { ScaleSheet, type SheetLine, type SheetLog } from "../../core/log/scaleSheet";
import { spilled } from "./answers";
import { BadRows } from "./badRows";
import { column, filledRows, isNothing, numbersOf, sharedRows, type Column } from "./columns";
import { DEDUCTION, LONGEST_LOG, WIDEST_LOG } from "./logArguments";
import { boundsIn } from "./measuredIn";
import type { Cells } from "./readings";
import { saidIn } from "./saidIn";
import { cardOf, isCard } from "./scaleCard";
import { conventionsOf } from "./scaleConventions";
import { speciesByName } from "./speciesByName";
import { NO_SPECIES } from "./tally";
import { unitSystem } from "./unitSystem";

/** The arguments of a scale sheet, as the cell gave them. */
export interface SheetArguments {
  readonly species: unknown;
  readonly diameter: unknown;
  readonly length: unknown;
  readonly rule: unknown;
  readonly deduction: unknown;
  readonly largeEnd: unknown;
  readonly round: unknown;
  readonly longest: unknown;
  readonly diameterRounding: unknown;
  readonly units: unknown;
}

const HEADER = ["Species", "Logs", "Gross bf", "Net bf", "Defect %"];

/**
 * Reads the logs of a sheet and adds them up by species. A line without a diameter is passed over; a line that cannot
 * be used is an error for the whole sheet, since a sum without it would be wrong in silence.
 *
 * @throws InvalidInput naming the first bad row and how many more there are, or two rules
 */
export function sheetBySpecies(given: SheetArguments): Cells {
  const units = unitSystem(given.units);
  const card = isCard(given.rule);
  const species = column(given.species, "Species");
  const diameter = column(given.diameter, "Diameter");
  const length = column(given.length, "Length");
  const rule = column(card ? null : given.rule, "Rule");
  const deduction = column(given.deduction, "Deduction");
  const largeEnd = column(given.largeEnd, "Large end");
  const { rounding, longest, rounderOf } = conventionsOf(given, units);
  const lists = [species, diameter, length, rule, deduction, largeEnd];
  const rows = Math.min(sharedRows(lists), diameter.single ? Infinity : filledRows(diameter));

  const bad = new BadRows();
  const { diameter: across, distance: along } = units;
  const diameters = numbersOf(diameter, rows, boundsIn(across, 1, WIDEST_LOG), 0, bad);
  const lengths = numbersOf(length, rows, boundsIn(along, 1, LONGEST_LOG), 0, bad, diameters);
  const deductions = numbersOf(deduction, rows, DEDUCTION, 0, bad, diameters);
  const butts = numbersOf(largeEnd, rows, boundsIn(across, 0, WIDEST_LOG), 0, bad, diameters);
  diameters.forEach((one, row) => {
    if (one !== 0 && lengths[row] === 0) bad.add(row, "the length is missing.");
  });
  const by = card ? cardOf(given.rule, units) : oneRule(rule, diameters, bad);
  bad.settle();
  if (!by) return spilled(HEADER, [["No logs yet"]]);

  const kinds = new NameList();
  const sheet = new ScaleSheet(by, rounding, longest, rounderOf(rows));
  const add = saidIn(units, (log: SheetLog) => {
    sheet.add(log);
  });
  diameters.forEach((one, row) => {
    if (one === 0) return;
    const cell = species.at(row);
    const butt = butts[row] as number;
    const log = {
      species: kinds.add(isNothing(cell) ? NO_SPECIES : String(cell)),
      diameter: inches(one / across.perOurs),
      length: feet((lengths[row] as number) / along.perOurs),
      deduction: percent(deductions[row] as number),
    };
    try {
      add(butt === 0 ? log : { ...log, largeEnd: inches(butt / across.perOurs) });
    } catch (problem) {
      bad.keep(row, problem);
    }
  });
  bad.settle();
  if (sheet.total.logs === 0) return spilled(HEADER, [["No logs yet"]]);
  return spilled(HEADER, [
    ...speciesByName(kinds.names).map((kind) => line(kinds.names[kind] as string, sheet.of(kind))),
    line("All species", sheet.total),
  ]);
}

const line = (name: string, { logs, gross, net, defect }: SheetLine) => [name, logs, gross, net, defect];

/** The one rule of every log; undefined when there is no log. A row whose rule cannot be read is a bad one. */
function oneRule(rule: Column, diameters: Float64Array, bad: BadRows): LogRule | undefined {
  const used: LogRule[] = [];
  const read = new Set<unknown>();
  diameters.forEach((one, row) => {
    const cell = rule.at(row);
    if (one === 0 || read.has(cell)) return;
    bad.guard(row, () => {
      const found = logRule(cell);
      read.add(cell);
      if (!used.includes(found)) used.push(found);
    });
  });
  if (used.length < 2) return used[0];
  const titles = used.map(({ title }) => title);
  throw new InvalidInput(
    `One rule per sheet; you have ${titles.slice(0, -1).join(", ")} and ${titles[titles.length - 1] ?? ""}.`,
  );
}
