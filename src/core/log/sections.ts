import { feet, inches, type Feet, type InchesPerFoot } from "../basis/units";
import type { ScaledLog } from "./logRule";

/**
 * The sections in which a rule itself has a log measured: of full length from the small end on, the rest at the butt,
 * each as thick at its top as the taper makes it.
 *
 * @param full length of a full section    [ft]
 * @param taper growth towards the butt    [in/ft]
 */
export function sections(log: ScaledLog, full: Feet, taper: InchesPerFoot): readonly ScaledLog[] {
  const laidOff: ScaledLog[] = [];
  for (let above = 0; above < log.length; above += full) {
    laidOff.push({
      diameter: inches(log.diameter + taper * above),
      length: feet(Math.min(full, log.length - above)),
    });
  }
  return laidOff;
}
