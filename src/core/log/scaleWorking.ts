import { shown } from "../basis/require";
import { sum, type Step } from "../basis/step";
import { boardFeet, type BoardFeet, type Percent } from "../basis/units";
import { NO_LIMIT } from "./grossScale";
import type { LogRule, ScaledLog } from "./logRule";
import { netScale } from "./netScale";
import { asTheRuleDoes, type ScaleRounding } from "./scaleRounding";
import { segments } from "./segments";

/**
 * The way to the net scale of a log: the rule's own steps for each piece scaled, the rounding, the sum over the
 * pieces, and the deduction for defect. The last step is what grossScale and netScale give.
 *
 * @throws InvalidInput and OutOfRange as they do
 */
export function scaleWorking(
  rule: LogRule,
  log: ScaledLog,
  deduction: Percent,
  rounding = asTheRuleDoes,
  longest = NO_LIMIT,
): readonly Step[] {
  const pieces = log.length <= longest ? [log] : segments(log, longest, rule.taper);
  const scaled = pieces.map((piece) => scaledPiece(rule, piece, rounding));
  const volumes = scaled.map((steps) => steps.at(-1)?.value ?? NaN);
  const gross = boardFeet(volumes.reduce((total, volume) => total + volume, 0));

  const single = scaled.length === 1;
  const steps = scaled.flatMap((part, i) => (single ? part : part.map((step) => ofPiece(step, i, pieces.length))));
  if (!single) {
    steps.push({ sum: volumes.map(shown).join(" + "), meaning: "All pieces together", value: gross, unit: "bf" });
  }
  return deduction === 0 ? steps : [...steps, ...deducted(rule, gross, deduction, rounding)];
}

function scaledPiece(rule: LogRule, piece: ScaledLog, rounding: ScaleRounding): Step[] {
  const volume = rule.scale(piece);
  const byRule = rule.working?.(piece) ?? [
    {
      sum: `${shown(piece.diameter)} in x ${shown(piece.length)} ft`,
      meaning: `As the ${rule.title} rule has it`,
      value: volume,
      unit: "bf",
    },
  ];
  return [...byRule, ...rounded(rule, volume, rounding)];
}

function deducted(rule: LogRule, gross: BoardFeet, deduction: Percent, rounding: ScaleRounding): Step[] {
  const left = boardFeet(gross * (1 - deduction / 100));
  const taken: Step = {
    sum: sum`${gross} * (1 - ${deduction} / 100)`,
    meaning: "Less the deduction for defect",
    value: left,
    unit: "bf",
  };
  const net = netScale(rule, gross, deduction, rounding);
  return rounding === asTheRuleDoes ? [taken, roundedTo(left, net)] : [{ ...taken, value: net }];
}

const rounded = (rule: LogRule, volume: BoardFeet, rounding: ScaleRounding): Step[] =>
  rounding === asTheRuleDoes ? [roundedTo(volume, rounding.apply(rule, volume))] : [];

const roundedTo = (volume: BoardFeet, value: BoardFeet): Step => ({
  sum: `round ${shown(volume)}`,
  meaning: "Rounded as the rule's printed tables are",
  value,
  unit: "bf",
});

const ofPiece = (step: Step, i: number, pieces: number): Step => ({
  ...step,
  meaning: `Piece ${i + 1} of ${pieces}: ${step.meaning.charAt(0).toLowerCase()}${step.meaning.slice(1)}`,
});
