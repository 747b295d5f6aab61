import { OutOfRange } from "../basis/problem";
import { requireNotNegative, requirePositive } from "../basis/require";
import { told } from "../basis/telling";
import { feet, inches, type Feet, type Inches } from "../basis/units";
import { requireSawLog, type SawLog } from "./sawLog";

/**
 * Width of the face that a saw plane opens in a round log; 0 where the plane misses it.
 *
 *     w(y) = 2 sqrt(R^2 - y^2)
 *
 *     R  radius                                  [in]
 *     y  distance of the plane from the pith     [in]
 *
 * @throws InvalidInput when the diameter is not above 0
 */
export function faceWidth(diameter: Inches, fromPith: Inches): Inches {
  requirePositive("Diameter", diameter, "in");
  return inches(2 * Math.sqrt(Math.max(0, (diameter / 2) ** 2 - fromPith ** 2)));
}

/**
 * Farthest a face of a given width can lie from the pith.
 *
 *     h(w) = sqrt(R^2 - w^2 / 4)
 *
 * A board of width w and thickness t is free of wane wherever both its faces keep within h(w) of the pith.
 *
 * @throws OutOfRange when the log is narrower than the face
 */
export function reachOfFace(diameter: Inches, width: Inches): Inches {
  requirePositive("Diameter", diameter, "in");
  requireNotNegative("Width", width, "in");
  if (width > diameter) {
    throw new OutOfRange(
      (telling) => `A log ${told(telling, diameter, "in")} thick has no face ${told(telling, width, "in")} wide.`,
    );
  }
  return inches(Math.sqrt((diameter / 2) ** 2 - width ** 2 / 4));
}

/** Depth of the slab to take off before a face of a given width opens: R - h(w). [in] */
export function slabDepth(diameter: Inches, face: Inches): Inches {
  return inches(diameter / 2 - reachOfFace(diameter, face));
}

/**
 * How far up from the large end a plane parallel to the pith still shows a face of a given width.
 *
 *     x = (Db - 2 sqrt(y^2 + w^2 / 4)) L / (Db - Ds),  held between 0 and L
 *
 *     y  distance of the plane from the pith  [in]
 *     w  wanted width                         [in]
 *
 * The length of a board that a log's flare gives beyond the full-length ones.
 */
export function lengthOfFace(log: SawLog, fromPith: Inches, width: Inches): Feet {
  requireSawLog(log);
  const needed = 2 * Math.hypot(fromPith, width / 2);
  if (needed <= log.smallEnd) return log.length;
  if (needed >= log.largeEnd) return feet(0);
  return feet(((log.largeEnd - needed) * log.length) / (log.largeEnd - log.smallEnd));
}
