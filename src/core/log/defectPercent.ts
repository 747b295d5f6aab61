import { InvalidInput } from "../basis/problem";
import { requireBetween, shown } from "../basis/require";
import { feet, percent, type Percent } from "../basis/units";
import { LEAST_DEDUCTION } from "./deduction";
import type { DefectExtent, DefectKind, DefectMeasure } from "./defects/defectKind";
import type { ScaledLog } from "./logRule";
import { requireLog } from "./requireLog";
import { A_HAIR } from "./wholeNumbers";

const NOTHING: Required<DefectExtent> = { affectedLength: feet(0), size: 0, width: 0 };

/** The units that a sentence speaks in: their names, and how many of them make one of ours. */
export type DefectUnits = Readonly<Record<DefectMeasure["unit"], { readonly name: string; readonly perOurs: number }>>;

const IMPERIAL: DefectUnits = {
  diameter: { name: "in", perOurs: 1 },
  length: { name: "ft", perOurs: 1 },
  degrees: { name: "degrees", perOurs: 1 },
};

/**
 * What one defect takes off a log, in percent of its gross scale, under whichever rule: 0, or from 1 to 100.
 * A defect of less than 1 % counts as none, and no defect takes more than the log.
 *
 * @throws InvalidInput when a measure that the kind asks for is missing or no number above 0, or one is given that it
 *   does not ask for
 */
export function defectPercent(kind: DefectKind, log: ScaledLog, extent: DefectExtent, units = IMPERIAL): Percent {
  requireLog(log);
  for (const measure of kind.asks) requireMeasure(kind, measure, extent[measure.of], log, units);
  for (const of of Object.keys(NOTHING) as (keyof DefectExtent)[]) {
    if (extent[of] === undefined || kind.asks.some((measure) => measure.of === of)) continue;
    throw new InvalidInput(`${kind.title} asks for ${listed(kind)} only. Leave the ${NAMES[of]} blank.`);
  }
  const lost = 100 * kind.share(log, { ...NOTHING, ...extent });
  return percent(lost < LEAST_DEDUCTION ? 0 : Math.min(100, lost));
}

const NAMES: Readonly<Record<keyof DefectExtent, string>> = {
  affectedLength: "affected length",
  size: "size",
  width: "width",
};

/** "affected length and angle": what a kind asks for, in words. */
const listed = ({ asks }: DefectKind) => {
  const names = asks.map(({ what }) => what.toLowerCase());
  return names.length === 1 ? names.join() : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
};

function requireMeasure(
  kind: DefectKind,
  { of, what, unit, most }: DefectMeasure,
  given: number | undefined,
  log: ScaledLog,
  units: DefectUnits,
): void {
  const { name, perOurs } = units[unit];
  if (given === undefined) {
    throw new InvalidInput(`${kind.title} needs a number for ${what.toLowerCase()} (${name}), but the cell is blank.`);
  }
  requireBetween(what, given * perOurs, 0, most * perOurs, name);
  if (of === "affectedLength" && given > log.length + A_HAIR) {
    const [longest, came] = [log.length, given].map((value) => shown(value * perOurs));
    throw new InvalidInput(`${what} should be at most the length of the log, ${longest} ${name}. You have ${came}.`);
  }
}
