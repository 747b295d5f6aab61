import { cantSearch, piecesIn, worthIn, type Cant, type CantOrder } from "./bestCant";
import type { Sides } from "./sides";
import { onBark } from "./setting";
import { asGood, bestBelow } from "./filling/way";
import { HAIR } from "./filling/hair";
import { markFrom } from "./scale";
import type { Sawing } from "./sawnFlitch";

/** Where no scale is given, the cant is tried every so far. [in] */
const COMMON_STEP = 1 / 32;

/**
 * The best cant of a log that is oval, swept or sawn parallel to the bark, or of any log on a mill with a scale: its
 * upper face on a mark, or every 1/32 in where there is no scale. What is inside is the best for that place.
 *
 * Exact on those places. A run of them is left out when not even this can beat the best so far: what could be sawn from
 * a cant as wide as all of them together, with the side boards of the two outermost.
 */
export function cantOnMarks(order: CantOrder, sawing: Sawing): Cant | undefined {
  const { inside, under, over } = cantSearch(order, sawing);
  let best: Cant | undefined;

  const search = (thickness: Cant["thickness"], uppers: readonly number[]): void => {
    const [first, last] = [uppers[0], uppers.at(-1)];
    if (first === undefined || last === undefined) return;
    const sides: Sides = { left: 0 - last, right: thickness - first };
    const way = inside(thickness, sides);
    if (!way) return;
    const below = bestBelow(under, last - thickness);
    const above = bestBelow(over, 0 - first);
    const worth = way.worth + worthIn(below) + worthIn(above);
    const pieces = uppers.length > 1 ? 0 : way.pieces + piecesIn(below) + piecesIn(above);
    if (worth < (order.toBeat ?? 0) || (best && asGood(best, { worth, pieces }))) return;
    if (uppers.length === 1) {
      const offset = first - thickness / 2;
      best = {
        thickness,
        offset,
        worth,
        pieces,
        inside: way,
        under: below,
        over: above,
      };
      return;
    }
    const middle = uppers.length >> 1;
    search(thickness, uppers.slice(middle));
    search(thickness, uppers.slice(0, middle));
  };

  for (const thickness of order.thicknesses) search(thickness, uppersOf(thickness, order, sawing));
  return best;
}

/** Where the upper face may lie: the pith in the cant, no cut too wide. */
function uppersOf(thickness: number, { facesBeyond }: CantOrder, { lying, scaleStep }: Sawing): readonly number[] {
  const step = scaleStep ?? COMMON_STEP;
  const onMark = scaleStep === undefined ? 0 : 0 - onBark(lying, "top").pithHeight;
  const highest = thickness + facesBeyond.low;
  const first = onMark + markFrom(facesBeyond.high - onMark, step);
  const count = Math.max(0, Math.floor((highest - first) / step + HAIR) + 1);
  return Array.from({ length: count }, (_, i) => first + i * step);
}
