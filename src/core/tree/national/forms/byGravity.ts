import { OutOfRange } from "../../../basis/problem";
import type { VolumeForm } from "./volumeForm";

/**
 * Schumacher and Hall's form for a whole group of species, made to fit each of them by the density of its wood.
 *
 *     y = a D^b H^c W                                           [1] eq. 5
 *
 *     y  weight                                                 [lb]
 *     D  diameter at breast height, over bark                   [in]
 *     H  total height                                           [ft]
 *     W  oven-dry weight over green volume, as a specific gravity
 *
 * @throws OutOfRange for a species whose W is not listed
 *
 * [1] core/reference/national/sources.ts
 */
export const byGravity: VolumeForm = {
  model: 5,
  title: "modified Schumacher-Hall",
  equation({ a, b, c }, { name, woodGravity }) {
    if (woodGravity === undefined) throw new OutOfRange(`The national species list has no wood density for ${name}.`);
    return (dbh, height) => a * dbh ** b * height ** c * woodGravity;
  },
};
