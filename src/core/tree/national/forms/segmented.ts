import type { VolumeForm } from "./volumeForm";

const SOFTWOOD_JOIN = 9; // in [1] eq. 2
const HARDWOOD_JOIN = 11; // in [1] eq. 2

/**
 * Schumacher and Hall's form in two pieces, with another power of the diameter from sawlog size on.
 *
 *     D < k    y = a D^b H^c                                    [1] eq. 2
 *     D >= k   y = a k^(b - b1) D^b1 H^c
 *
 *     y  volume or weight                                       [ft3 or lb]
 *     D  diameter at breast height, over bark                   [in]
 *     H  total height                                           [ft]
 *     k  where the pieces meet: 9 in softwoods, 11 in hardwoods [in]
 *
 * [1] core/reference/national/sources.ts
 */
export const segmented: VolumeForm = {
  model: 2,
  title: "segmented Schumacher-Hall",
  equation({ a, b, b1, c }, { softwood }) {
    const join = softwood ? SOFTWOOD_JOIN : HARDWOOD_JOIN;
    const above = a * join ** (b - b1);
    return (dbh, height) => (dbh < join ? a * dbh ** b : above * dbh ** b1) * height ** c;
  },
};
