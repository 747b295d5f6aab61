import { inches, type Feet } from "../basis/units";
import type { Rounder } from "./diameterRounding";
import type { FelledLog, LogRule, ScaledLog } from "./logRule";
import { logTaper } from "./logTaper";
import { measuredAtSmallEnd } from "./measuredAtSmallEnd";
import { sections } from "./sections";
import { segments } from "./segments";

/**
 * What of a log is put before its rule: its segments from the small end to the butt, one where it is not longer than
 * the longest scaling length, each as the pieces that the rule measures it in, which is one unless the rule has
 * sections.
 *
 * A segment is as thick at its top as the log's own taper makes it where the large end is known, else as the taper
 * that the rule builds in. A rule that has long logs measured in sections gets them where the log's own taper is known;
 * without it they would all be alike, as its formula has them.
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
  const { diameter, largeEnd, length } = log;
  const { sections: full, taper: built } = largeEnd === undefined ? rule : measuredAtSmallEnd(rule);
  const own = largeEnd === undefined ? undefined : logTaper(diameter, largeEnd, length);
  const whole = { diameter, length };
  const segmented = length <= longest ? [whole] : segments(whole, longest, own ?? built);
  return segmented.map((segment) => {
    const parts = full === undefined || own === undefined ? [segment] : sections(segment, full, own);
    return toWhole ? parts.map((part) => ({ ...part, diameter: inches(toWhole(part.diameter)) })) : parts;
  });
}
