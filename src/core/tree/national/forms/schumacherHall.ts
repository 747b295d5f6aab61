import type { VolumeForm } from "./volumeForm";

/**
 * Schumacher and Hall's form.
 *
 *     y = a D^b H^c                                             [1] eq. 1
 *
 *     y  volume or weight                                       [ft3 or lb]
 *     D  diameter at breast height, over bark                   [in]
 *     H  total height                                           [ft]
 *
 * [1] core/reference/national/sources.ts
 */
export const schumacherHall: VolumeForm = {
  model: 1,
  title: "Schumacher-Hall",
  equation:
    ({ a, b, c }) =>
    (dbh, height) =>
      a * dbh ** b * height ** c,
};
