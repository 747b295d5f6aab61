import { HAIR } from "./fill";

/**
 * The marks of the scale that a head is set by: every setting is one of them. A board that is freed with the next cut
 * is as thick as the settings lie apart, less the kerf; the one left on the bed is as thick as the last setting is high.
 *
 *     freed:   t' = ceil((t + k) / s) s - k        on the bed:   t' = ceil(t / s) s
 *
 *     t  wanted thickness, k  kerf, s  step of the scale [in]
 *
 * So a board comes out as thick as wanted or thicker by less than a step, never thinner.
 */
export const freedThickness = (thickness: number, kerf: number, step: number | undefined): number =>
  step === undefined ? thickness : markFrom(thickness + kerf, step) - kerf;

/** The least mark from a height up. */
export const markFrom = (height: number, step: number | undefined): number =>
  step === undefined ? height : Math.ceil(height / step - HAIR) * step;

/** The lowest place from a height up where a lower face can come to lie, when those on marks lie at `onMark`. */
export const placesOnScale =
  (step: number, onMark: number, kerf: number) =>
  (height: number, aboveBed: boolean): number => {
    const first = aboveBed ? onMark + kerf : onMark;
    return first + markFrom(height - first, step);
  };
