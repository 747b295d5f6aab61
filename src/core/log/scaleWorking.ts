import { shown } from "../basis/require";
import { sum, type Step } from "../basis/step";
import { boardFeet, type BoardFeet, type Percent } from "../basis/units";
import type { Rounder } from "./diameterRounding";
import { NO_LIMIT } from "./grossScale";
import type { FelledLog, LogRule, ScaledLog } from "./logRule";
import { netScale } from "./netScale";
import { scaledPieces } from "./scaledPieces";
import { asTheRuleDoes, type ScaleRounding } from "./scaleRounding";

/**
 * The way to the net scale of a log: the rule's own steps for each piece scaled, the rounding, the sum over the
 * pieces, and the deduction for defect. The last step is what grossScale and netScale give.
 *
 * @throws InvalidInput and OutOfRange as they do
 */
export function scaleWorking(
  rule: LogRule,
  log: FelledLog,
  deduction: Percent,
  rounding = asTheRuleDoes,
  longest = NO_LIMIT,
  toWhole?: Rounder,
): readonly Step[] {
  const pieces = scaledPieces(rule, log, longest, toWhole);
  const asMeasured = pieces.length === 1 && !toWhole;
  const scaled = pieces.map((sections) => scaledPiece(rule, sections, rounding, asMeasured));
  const volumes = scaled.map((steps) => steps.at(-1)?.value ?? NaN);
  const gross = boardFeet(volumes.reduce((total, volume) => total + volume, 0));

  const single = scaled.length === 1;
  const steps = scaled.flatMap((part, i) =>
    single ? part : part.map((step) => ofPart("Piece", step, i, pieces.length)),
  );
  if (!single) {
    steps.push({ sum: volumes.map(shown).join(" + "), meaning: "All pieces together", value: gross, unit: "bf" });
  }
  return deduction === 0 ? steps : [...steps, ...deducted(rule, gross, deduction, rounding)];
}

/** One piece; where the rule measures it in sections, each of them by itself and then their sum. */
function scaledPiece(
  rule: LogRule,
  sections: readonly ScaledLog[],
  rounding: ScaleRounding,
  asMeasured: boolean,
): Step[] {
  const volumes = sections.map((section) => rule.scale(section));
  const volume = boardFeet(volumes.reduce((total, one) => total + one, 0));
  const steps = sections.flatMap((section, i) => {
    const byRule = rule.working?.(section) ?? [asRuleHasIt(rule, section)];
    const all = asMeasured && sections.length === 1 ? byRule : [taken(section), ...byRule];
    return sections.length === 1 ? all : all.map((step) => ofPart("Section", step, i, sections.length));
  });
  if (sections.length > 1) {
    steps.push({ sum: volumes.map(shown).join(" + "), meaning: "All sections together", value: volume, unit: "bf" });
  }
  return [...steps, ...rounded(rule, volume, rounding)];
}

/** What the rule is asked for, where that is not the log as it was measured: a part of it, or a rounded diameter. */
const taken = ({ diameter, length }: ScaledLog): Step => ({
  sum: `${shown(diameter)} in x ${shown(length)} ft`,
  meaning: "Diameter taken, and length",
  value: diameter,
  unit: "in",
});

const asRuleHasIt = (rule: LogRule, log: ScaledLog): Step => ({
  sum: `${shown(log.diameter)} in x ${shown(log.length)} ft`,
  meaning: `As the ${rule.title} rule has it`,
  value: rule.scale(log),
  unit: "bf",
});

function deducted(rule: LogRule, gross: BoardFeet, deduction: Percent, rounding: ScaleRounding): Step[] {
  const left = boardFeet((gross * (100 - deduction)) / 100);
  const less: Step = {
    sum: sum`${gross} * (100 - ${deduction}) / 100`,
    meaning: "Less the deduction for defect",
    value: left,
    unit: "bf",
  };
  const net = netScale(rule, gross, deduction, rounding);
  return rounding === asTheRuleDoes ? [less, roundedTo(left, net)] : [{ ...less, value: net }];
}

const rounded = (rule: LogRule, volume: BoardFeet, rounding: ScaleRounding): Step[] =>
  rounding === asTheRuleDoes ? [roundedTo(volume, rounding.apply(rule, volume))] : [];

const roundedTo = (volume: BoardFeet, value: BoardFeet): Step => ({
  sum: `round ${shown(volume)}`,
  meaning: "Rounded as the rule's printed tables are",
  value,
  unit: "bf",
});

const ofPart = (part: string, step: Step, i: number, parts: number): Step => ({
  ...step,
  meaning: `${part} ${i + 1} of ${parts}: ${step.meaning.charAt(0).toLowerCase()}${step.meaning.slice(1)}`,
});
