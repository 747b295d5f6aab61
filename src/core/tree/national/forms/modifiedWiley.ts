import type { VolumeForm } from "./volumeForm";

/**
 * Wiley's form, modified: growth with the diameter is damped.
 *
 *     y = a D^b H^c exp(-b1 D)                                  [1] eq. 4
 *
 *     y  volume or weight                                       [ft3 or lb]
 *     D  diameter at breast height, over bark                   [in]
 *     H  total height                                           [ft]
 *
 * Where b1 is above 0 the curve turns down at D = b / b1, which in a few rows lies within the size of large trees.
 *
 * [1] core/reference/national/sources.ts
 */
export const modifiedWiley: VolumeForm = {
  model: 4,
  title: "modified Wiley",
  equation:
    ({ a, b, b1, c }) =>
    (dbh, height) =>
      a * dbh ** b * height ** c * Math.exp(-b1 * dbh),
};
