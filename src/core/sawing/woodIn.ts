import { cubicFeet, type CubicFeet } from "../basis/units";
import type { Outline } from "./outline";
import type { LyingLog } from "./lyingLog";
import { cutFrom } from "./quarters/fannedLog";

/** Slices along the log for Simpson's rule; 64 leave an error under 0.001 % of the log (a choice of ours). */
const SLICES = 64;

/**
 * Wood of a log inside a rectangle of its end view that runs along the pith from the large end, such as the wood that one
 * kerf turns into sawdust. A side of the rectangle may be infinite, where the cut runs through the bark. The rectangle is
 * that of the end view as the log was first laid.
 *
 *     V = integral from 0 to l of A(x) dx
 *     A = Q(right, upper) - Q(left, upper) - Q(right, lower) + Q(left, lower)
 *
 *     Q(u, v)  area of the circle left of u and below v                     [in2]
 *     l        how far it runs from the large end; left out: the whole log  [ft]
 */
export function woodIn(lying: LyingLog, piece: Outline, length: number = lying.log.length): CubicFeet {
  const area = (slice: number) => {
    const { section, within } = cutFrom(lying, piece, (length * slice) / SLICES);
    const { u: middle, v: height, a, b } = section;
    const { left, right, lower, upper } = within;
    // An ellipse is a circle of radius b drawn out by a / b.
    const corner = (u: number, v: number) => (a / b) * cornerArea(b, ((u - middle) * b) / a, v - height);
    return corner(right, upper) - corner(left, upper) - corner(right, lower) + corner(left, lower);
  };
  let sum = area(0) + area(SLICES);
  for (let slice = 1; slice < SLICES; slice += 1) sum += area(slice) * (slice % 2 === 1 ? 4 : 2);
  return cubicFeet((sum * length) / (3 * SLICES) / 144);
}

/**
 * Area of a circle left of u and below v.
 *
 *     S(u) = (u sqrt(R^2 - u^2) + R^2 asin(u / R)) / 2,   c = sqrt(R^2 - v^2),   m = u held between -c and c
 *     v < 0:   Q = S(m) + S(c) + v (m + c)
 *     v >= 0:  Q = 2 (S(u) + S(R)) - (S(m) + S(c) - v (m + c))
 */
function cornerArea(radius: number, right: number, upper: number): number {
  const within = (value: number, most: number) => Math.max(0 - most, Math.min(most, value));
  const half = (u: number) =>
    (u * Math.sqrt(Math.max(0, radius ** 2 - u ** 2)) + radius ** 2 * Math.asin(u / radius)) / 2;
  const u = within(right, radius);
  const v = within(upper, radius);
  const chord = Math.sqrt(radius ** 2 - v ** 2);
  const m = within(u, chord);
  const cut = half(m) + half(chord);
  return v < 0 ? cut + v * (m + chord) : 2 * (half(u) + half(radius)) - cut + v * (m + chord);
}
