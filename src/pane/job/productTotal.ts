import { acres } from "../../core/basis/units";
import { tractTotal } from "../../core/cruise/tractTotal";
import type { ProductLine } from "./readProducts";
import type { Estimated } from "./readStand";

/**
 * A product on the whole tract, in its own unit; the margin holds that of the plots and that of the size itself.
 * Undefined for a line without a volume.
 *
 * @param size of the tract, and its margin: in acres or in hectares, like the line
 */
export function productTotal({ name, volume }: ProductLine, size: number, margin: number): Estimated | undefined {
  if (!volume) return undefined;
  if (volume.margin === null) return { ...volume, value: volume.value * size };
  // The arithmetic is the same for hectares, which only the tag does not name.
  const total = tractTotal(volume.value, volume.margin, acres(size), acres(margin));
  return { what: name, ...total, percent: total.value > 0 ? (100 * total.margin) / total.value : null };
}
