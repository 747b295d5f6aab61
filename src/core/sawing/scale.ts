import { HAIR } from "./filling/hair";

/**
 * The marks of the scale that a head is set by: every setting is one of them. A board that is freed with the next cut
 * is as thick as the settings lie apart, less the kerf; the one left on the bed is as thick as the last setting is high.
 *
 *     freed:   t' = ceil((t + k) / s) s - k        on the bed:   t' = ceil(t / s) s
 *
 *     t  wanted thickness, k  kerf, s  step of the scale [in]
 *
 * So a board comes out as thick as wanted or thicker by less than a step, never thinner. Where a log is split, and under
 * each face of a quarter, both ends are raised by less than a step so that its planes lie on marks.
 */
export const freedThickness = (thickness: number, kerf: number, step: number | undefined): number =>
  step === undefined ? thickness : markFrom(thickness + kerf, step) - kerf;

/** The least mark from a height up. */
export const markFrom = (height: number, step: number | undefined): number =>
  step === undefined ? height : Math.ceil(height / step - HAIR) * step;

/** The highest mark up to a height. */
export const markUpTo = (height: number, step: number | undefined): number =>
  step === undefined ? height : Math.floor(height / step + HAIR) * step;

/** The lowest place from a height up where a lower face can come to lie, when those on marks lie at `onMark`. */
export const placesOnScale =
  (step: number, onMark: number, kerf: number) =>
  (height: number, aboveBed: boolean): number => {
    const first = aboveBed ? onMark + kerf : onMark;
    return first + markFrom(height - first, step);
  };

/** A setting as the scale shows it: "12 7/16" where the step is a fraction of one, else the number of its marks. */
export function onTheScale(setting: number, step: number): string {
  const marks = Math.round(setting / step);
  const parts = Math.round(1 / step);
  if (parts < 1 || Math.abs(parts * step - 1) > HAIR) return `${marks} marks`;
  const [whole, rest] = [Math.floor(marks / parts), marks % parts];
  const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
  const by = common(rest, parts);
  const fraction = rest === 0 ? "" : `${rest / by}/${parts / by}`;
  return [whole === 0 && fraction !== "" ? "" : String(whole), fraction].filter((part) => part !== "").join(" ");
}
