import { requireNotNegative, requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { percent, type Inches, type Percent } from "../basis/units";

export const kerfRecoverySources: readonly Source[] = [
  {
    author: "E. M. Wengert",
    year: "2000",
    title: "Kerf thickness' effect on yield",
    where: "every board costs its own thickness and one kerf",
    url: "http://www.woodweb.com/knowledge_base/Kerf_thickness_effect_on_yield.html",
    standing: "read",
  },
];

/**
 * Share of the wood under the saw that becomes board, the rest being sawdust.
 *
 *     R = 100 T / (T + K)
 *
 *     R  recovery                                     [%]
 *     T  rough green thickness of a board             [in]
 *     K  kerf: width of wood the saw turns to sawdust [in], 0 for a blade that splits
 *
 * In the middle of a log every board costs its own thickness and one kerf; slabs and edgings are not counted.
 *
 * @throws InvalidInput when T is not above 0, or K is below 0
 */
export function kerfRecovery(thickness: Inches, kerf: Inches): Percent {
  return percent((100 * thickness) / woodPerBoard(thickness, kerf));
}

/**
 * Boards that a thinner kerf adds, out of the same wood.
 *
 *     G = 100 ((T + C) / (T + K) - 1)
 *
 *     G  more boards than with the other saw [%], below 0 where the other kerf is the thinner one
 *     T  rough green thickness of a board    [in]
 *     K  kerf                                [in]
 *     C  kerf of the saw compared with       [in]
 *
 * @throws InvalidInput when T is not above 0, or a kerf is below 0
 */
export function gainFromThinnerKerf(thickness: Inches, kerf: Inches, compareKerf: Inches): Percent {
  return percent(100 * (woodPerBoard(thickness, compareKerf) / woodPerBoard(thickness, kerf) - 1));
}

function woodPerBoard(thickness: Inches, kerf: Inches): number {
  requirePositive("Thickness", thickness, "in");
  requireNotNegative("Kerf", kerf, "in");
  return thickness + kerf;
}
