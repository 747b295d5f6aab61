import { HAIR } from "../filling/hair";
import type { Stair, Stairs } from "./offSawnFace";
import type { PeelChoices, PeelThickness } from "./peelChoices";

/** V and what it comes from, by the numbers of the places p and a. */
export interface PeelTable {
  readonly at: (p: number, a: number) => number;
  /** 0 where nothing is sawn any more, else 1 + twice the number of the flitch, and 1 more off the flat face; or a skip. */
  readonly chosen: Int32Array;
  /** V is its own mirror image, so that only p <= a is told. */
  readonly isMirrored: boolean;
}

/** Wood is sawn away off a face up to the next place. */
export const SKIPS = { upright: -1, flat: -2 };

/** From the bark towards the pith; beyond the last place nothing is left. */
export function peelTable(
  { places, thicknesses, reach }: PeelChoices,
  isMirrored: boolean,
  maySkip: boolean,
): PeelTable {
  const count = places.length;
  const row = count + 1;
  const { worths, pieces, chosen } = blank(row * row);
  const at = (p: number, a: number) => (isMirrored && p > a ? p * row + a : a * row + p);
  // Along each row the best flitch gets better towards the pith: each walks its own stairs.
  const onUpright = thicknesses.map(({ upright }) => upright.map((stairs) => stairs.length));
  const onFlat = thicknesses.map(({ flat }) => flat.map((stairs) => stairs.length));

  for (let a = count - 1; a >= 0; a -= 1) {
    for (let p = isMirrored ? a : count - 1; p >= 0; p -= 1) {
      const [up, across] = [places[a] as number, places[p] as number];
      const isBare = across > (reach.flat[a] as number) && up > (reach.upright[p] as number);
      if (isBare && !maySkip) continue;
      let most = 0;
      let fewest = 0;
      let choice = 0;
      for (let g = isBare ? thicknesses.length : 0; g < thicknesses.length; g += 1) {
        const { flat, upright, next } = thicknesses[g] as PeelThickness;
        for (let isFlat = 0; isFlat <= 1; isFlat += 1) {
          const stair =
            isFlat === 1
              ? stairAt(flat, a, onFlat[g] as number[], across)
              : stairAt(upright, p, onUpright[g] as number[], up);
          if (!stair) continue;
          const then = isFlat === 1 ? at(p, next[a] as number) : at(next[p] as number, a);
          const total = stair.worth + (worths[then] as number);
          const boards = stair.boards + (pieces[then] as number);
          const rounding = HAIR * Math.max(1, total);
          if (total < most - rounding || (total <= most + rounding && boards >= fewest)) continue;
          most = total;
          fewest = boards;
          choice = 1 + 2 * stair.flitch + isFlat;
        }
      }
      if (maySkip) {
        for (const [skip, then] of [
          [SKIPS.upright, at(p + 1, a)],
          [SKIPS.flat, at(p, a + 1)],
        ] as const) {
          const total = worths[then] as number;
          if (total <= most + HAIR * Math.max(1, total)) continue;
          most = total;
          fewest = pieces[then] as number;
          choice = skip;
        }
      }
      const here = at(p, a);
      worths[here] = most;
      pieces[here] = fewest;
      chosen[here] = choice;
    }
  }
  return { at, chosen, isMirrored };
}

/** Tables of zeros. They are large: one set serves one quarter after another. */
function blank(size: number): typeof tables {
  if (tables.worths.length < size) {
    tables = { worths: new Float64Array(size), pieces: new Int32Array(size), chosen: new Int32Array(size) };
  } else {
    for (const table of Object.values(tables)) table.fill(0, 0, size);
  }
  return tables;
}
let tables = { worths: new Float64Array(0), pieces: new Int32Array(0), chosen: new Int32Array(0) };

/** The best flitch off a face with the other one at a place, no farther out than when it was last asked. */
function stairAt(stairs: readonly Stairs[], face: number, standing: number[], other: number): Stair | undefined {
  const own = stairs[face] as Stairs;
  let stair = standing[face] as number;
  while (stair > 0 && (own[stair - 1] as Stair).last >= other) stair -= 1;
  standing[face] = stair;
  return own[stair];
}
