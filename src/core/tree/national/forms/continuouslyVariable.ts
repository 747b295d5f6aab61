import type { VolumeForm } from "./volumeForm";

/**
 * Form whose power of the diameter itself grows with the diameter.
 *
 *     y = a D^(a1 (1 - exp(-b D))^c1) H^c                       [1] eq. 3
 *
 *     y  volume or weight                                       [ft3 or lb]
 *     D  diameter at breast height, over bark                   [in]
 *     H  total height                                           [ft]
 *
 * The power c1 belongs to the bracket alone: taken over a1 as well, volumes collapse.
 *
 * [1] core/reference/national/sources.ts
 */
export const continuouslyVariable: VolumeForm = {
  model: 3,
  title: "continuously variable Schumacher-Hall",
  equation:
    ({ a, a1, b, c, c1 }) =>
    (dbh, height) =>
      a * dbh ** (a1 * (1 - Math.exp(-b * dbh)) ** c1) * height ** c,
};
