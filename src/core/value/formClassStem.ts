import { SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER as CIRCLE } from "../basis/circle";
import { feet, inches, type Feet, type Inches } from "../basis/units";
import { TREE_LOG_LENGTH, type FormClassTree } from "../tree/formClassTree";
import { treeLogs } from "../tree/treeLogs";
import type { Stem } from "./buckOrder";

/** Where the tables cut: a stump, then logs of 16 ft with their trim, so that form class is measured at 17.3 ft. [ft] */
const STUMP = 1;
const LOG_WITH_TRIM = 16.3;

interface Joint {
  readonly h: number;
  readonly d: number;
}

/**
 * The merchantable stem of a standing tree as the form-class tables draw it, ready to be cut: the diameters at the tops
 * of its 16-foot logs, and straight lines between them. It ends at the merchantable height, above which the tables
 * know nothing; the bottom is DBH at a 1-foot stump, as in `treeLogs`.
 *
 * @throws InvalidInput when a measure is not a number above 0
 * @throws OutOfRange outside the tables
 */
export function formClassStem(tree: FormClassTree): Stem {
  const joints: Joint[] = [{ h: STUMP, d: tree.dbh }];
  for (const { smallEnd, length } of treeLogs(tree)) {
    const below = joints.at(-1)?.h ?? STUMP;
    joints.push({ h: below + (length / TREE_LOG_LENGTH) * LOG_WITH_TRIM, d: smallEnd });
  }
  return {
    height: feet(joints.at(-1)?.h ?? STUMP),
    diameterAt: (h) => diameterAt(joints, h),
    woodBetween: (from, to) => woodBetween(joints, from, to),
  };
}

function diameterAt(joints: readonly Joint[], h: Feet): Inches {
  const upper = Math.max(
    1,
    joints.findIndex((joint) => joint.h >= h),
  );
  const [below, above] = [joints[upper - 1], joints[upper]];
  if (!below || !above) throw new RangeError("a stem without joints");
  if (h <= below.h) return inches(below.d);
  return inches(below.d + ((above.d - below.d) * (Math.min(h, above.h) - below.h)) / (above.h - below.h));
}

/** Frustums of cones, one upon the other. [ft3] */
function woodBetween(joints: readonly Joint[], from: Feet, to: Feet): number {
  const cuts = [from, ...joints.map(({ h }) => h).filter((h) => h > from && h < to), to];
  let wood = 0;
  for (let i = 1; i < cuts.length; i += 1) {
    const [low, high] = [cuts[i - 1] as number, cuts[i] as number];
    const [large, small] = [diameterAt(joints, feet(low)), diameterAt(joints, feet(high))];
    wood += (CIRCLE / 3) * (large * large + large * small + small * small) * (high - low);
  }
  return wood;
}
