import { inches, type Inches } from "../basis/units";

/** A rectangle in the end view of a log: the pith at 0, 0, the log as it lay before any turn. */
export interface Outline {
  readonly left: Inches;
  readonly right: Inches;
  readonly lower: Inches;
  readonly upper: Inches;
}

export const outline = (left: number, right: number, lower: number, upper: number): Outline => ({
  left: inches(left),
  right: inches(right),
  lower: inches(lower),
  upper: inches(upper),
});

/** Which side of the log looks up: its top as it first lay, or its right, bottom or left after quarter turns. */
export type Face = "top" | "right" | "bottom" | "left";

/** Where a rectangle lies in the end view, when it was measured with a given face of the log looking up. */
export function asFirstLaid({ left, right, lower, upper }: Outline, face: Face): Outline {
  switch (face) {
    case "top":
      return outline(left, right, lower, upper);
    case "right":
      return outline(lower, upper, 0 - right, 0 - left);
    case "bottom":
      return outline(0 - right, 0 - left, 0 - upper, 0 - lower);
    case "left":
      return outline(0 - upper, 0 - lower, left, right);
  }
}
