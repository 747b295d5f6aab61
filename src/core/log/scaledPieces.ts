import { inches, type Feet, type Inches } from "../basis/units";
import type { Rounder } from "./diameterRounding";
import type { FelledLog, LogRule, ScaledLog } from "./logRule";
import { logTaper } from "./logTaper";
import { measuredAtSmallEnd } from "./measuredAtSmallEnd";
import { sections } from "./sections";
import { segments } from "./segments";
import { A_HAIR } from "./wholeNumbers";

/**
 * What of a log is put before its rule: its segments from the small end to the butt, one where it is not longer than
 * the longest scaling length, each as the pieces that the rule measures it in, which is one unless the rule has
 * sections.
 *
 * A segment is as thick at its top as the log's own taper makes it where the large end is known, else as the taper
 * that the rule builds in. A rule that has long logs measured in sections gets them where the log's own taper is known;
 * without it they would all be alike, as its formula has them.
 *
 * A small end that came here rounded may stand a little above the butt; such a butt tells no taper.
 *
 * @param toWhole what is done with the fraction of a diameter before the rule is asked; left out, nothing
 * @throws InvalidInput when a measure is not a number above 0, the large end is the thinner one, or is given
 *   for a rule that wants the diameter of another place than the small end
 */
export function scaledPieces(
  rule: LogRule,
  log: FelledLog,
  longest: Feet,
  toWhole?: Rounder,
): readonly (readonly ScaledLog[])[] {
  const { diameter, length } = log;
  const largeEnd = toWhole ? buttBesideRounded(log) : log.largeEnd;
  const { sections: full, taper: built } = largeEnd === undefined ? rule : measuredAtSmallEnd(rule);
  const own = largeEnd === undefined ? undefined : logTaper(diameter, largeEnd, length);
  const whole = { diameter, length };
  const segmented = length <= longest ? [whole] : segments(whole, longest, own ?? built);
  return segmented.map((segment) => {
    const parts = full === undefined || own === undefined ? [segment] : sections(segment, full, own);
    return toWhole ? parts.map((part) => ({ ...part, diameter: inches(toWhole(part.diameter)) })) : parts;
  });
}

/** The nearest whole inch is at most half an inch off. */
const MOST_ROUNDED_UP = 0.5;

/** The large end; undefined where rounding may have made the small end the thicker one. */
const buttBesideRounded = ({ diameter, largeEnd }: FelledLog): Inches | undefined =>
  largeEnd !== undefined && largeEnd < diameter && diameter - largeEnd <= MOST_ROUNDED_UP + A_HAIR
    ? undefined
    : largeEnd;
