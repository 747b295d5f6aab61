import { feet, inches, type Feet, type Inches } from "../../basis/units";

/** Square feet in a circle one inch across, to the digits that the report works with. [1] eq. 7 */
const SQUARE_FEET_PER_SQUARE_INCH = 0.005454154;
/** Newton's steps settle in a handful; where they start when the first guess lies below ground; when they are done. */
const MOST_STEPS = 60;
const NEAR_THE_GROUND = -1e-3;
const CLOSE_ENOUGH = 1e-12;

/** The two coefficients that shape a stem. */
export interface Shape {
  readonly alpha: number;
  readonly beta: number;
}

/**
 * Share of the whole stem's volume that lies below a height.
 *
 *     R(h) = [1 - (1 - h/H)^alpha]^beta                                      [1] eq. 6
 *
 *     h  height above ground, H total height                                 [ft]
 *
 * [1] core/reference/national/sources.ts
 */
export function cumulativeShare(h: Feet, height: Feet, { alpha, beta }: Shape): number {
  return (1 - (1 - h / height) ** alpha) ** beta;
}

/**
 * Diameter of the stem at a height: the slope of R, times the volume, is the area of the section there.
 *
 *     d(h) = sqrt{ V / (0.005454154 H) alpha beta (1 - h/H)^(alpha - 1) [1 - (1 - h/H)^alpha]^(beta - 1) }   [1] eq. 7
 *
 *     d  diameter                                                            [in]
 *     V  volume of the whole stem                                            [ft3]
 *     h  height above ground, H total height                                 [ft]
 *
 * The report prints it with the volume and shape outside bark; the same algebra holds with those inside bark. The curve
 * is not tied to the measured DBH: at 4.5 ft it runs some percent above it in most trees and below it in others; scaling
 * it to DBH made it worse on felled trees, so it is left as it is. Near the ground it shoots up.
 *
 * [1] core/reference/national/sources.ts
 */
export function stemDiameterAt(h: Feet, height: Feet, volume: number, { alpha, beta }: Shape): Inches {
  const above = 1 - h / height;
  const scale = (volume / (SQUARE_FEET_PER_SQUARE_INCH * height)) * alpha * beta;
  return inches(Math.sqrt(scale * above ** (alpha - 1) * (1 - above ** alpha) ** (beta - 1)));
}

/**
 * Height at which the stem has tapered to a diameter: equation 7 solved for h, which has no closed form; 0 when the stem
 * is nowhere so thick.
 *
 * With t = ln(1 - h/H) the equation reads (alpha - 1) t + (beta - 1) ln(1 - e^(alpha t)) = ln(d^2 / scale): a curve that
 * bends one way only, on which Newton's steps run to the root from one side. The start leaves the second term out.
 */
export function heightToDiameter(diameter: Inches, height: Feet, volume: number, { alpha, beta }: Shape): Feet {
  const scale = (volume / (SQUARE_FEET_PER_SQUARE_INCH * height)) * alpha * beta;
  const wanted = Math.log((diameter * diameter) / scale);
  const miss = (t: number, power: number) => (alpha - 1) * t + (beta - 1) * Math.log(1 - power) - wanted;
  let t = wanted / (alpha - 1);
  if (beta > 1) {
    const powerAtThickest = (alpha - 1) / (alpha - 1 + (beta - 1) * alpha);
    if (miss(Math.log(powerAtThickest) / alpha, powerAtThickest) <= 0) return feet(0);
  } else if (t >= 0) {
    t = NEAR_THE_GROUND;
  }
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const power = Math.exp(alpha * t);
    const newton = t - miss(t, power) / (alpha - 1 + ((1 - beta) * alpha * power) / (1 - power));
    const next = newton < 0 ? newton : t / 2;
    const moved = Math.abs(next - t);
    t = next;
    if (moved < CLOSE_ENOUGH) break;
  }
  return feet(height * (1 - Math.exp(t)));
}
