import { requireBetween } from "../../basis/require";
import { cubicFeet, feet, inches, percent, type CubicFeet, type Feet, type Percent } from "../../basis/units";
import type { Species } from "./species";
import { requireHeightTree, STUMP, type HeightTree, type StemEquations } from "./stemEquations";
import { cumulativeShare, heightToDiameter } from "./taper";

/** From which DBH on a stem has a part, and to which diameter outside bark the part goes up. [in] [1] */
interface Limits {
  readonly dbh: number;
  readonly top: number;
}

const MERCHANTABLE: Limits = { dbh: 5, top: 4 };
const SOFTWOOD_SAWLOG: Limits = { dbh: 9, top: 7 };
const HARDWOOD_SAWLOG: Limits = { dbh: 11, top: 9 };

const sawlogLimits = ({ softwood }: Species) => (softwood ? SOFTWOOD_SAWLOG : HARDWOOD_SAWLOG);

/** What may be wrong with a tree. */
export interface Condition {
  /** Rotten or missing wood. [%] */
  readonly cull?: Percent;
  /** Height at which the top is broken off; the height of the tree is then what it was, or would be, whole. [ft] */
  readonly brokenAt?: Feet;
}

/** Wood alone, and with bark. [ft3] */
export interface Section {
  readonly wood: CubicFeet;
  readonly woodAndBark: CubicFeet;
}

/** A stem taken apart from the ground up. A part that the tree is too thin or too short for has no volume. */
export interface StemSections {
  readonly total: Section;
  /** Of the stem that stands, up to its break. */
  readonly standing: Section;
  /** Wood of the stem that stands, less the cull. */
  readonly soundWood: CubicFeet;
  /** Share of wood that the cull leaves. */
  readonly soundShare: number;
  /** Heights at which the parts end, 0 where there is none. [ft] */
  readonly merchantableHeight: Feet;
  readonly sawlogHeight: Feet;
  readonly stump: Section;
  readonly merchantable: Section;
  readonly sawlog: Section;
  /** From the merchantable height to the tip, or to where it is broken. */
  readonly top: Section;
  /** What was above the break. */
  readonly missing: Section;
}

/**
 * Volumes of the parts of a stem.
 *
 *     part = (R(h2) - R(h1)) V
 *
 *     R       share of the stem below a height, inside bark, for wood and for wood with bark alike
 *     V       wood, or wood and bark, of the whole stem                             [ft3]
 *     h1, h2  1 ft for the stump; the height at which the stem is 4 in thick outside bark for the merchantable part;
 *             7 in for softwood sawlogs and 9 in for hardwood ones                  [ft]
 *
 * Trees under 5 in have no merchantable part, softwoods under 9 in and hardwoods under 11 in no sawlog part. Where the
 * top is broken off, no part goes higher.
 *
 * @throws InvalidInput when a measure is out of bounds
 *
 * [1] core/reference/national/sources.ts, worked examples
 */
export function stemSections(equations: StemEquations, tree: HeightTree, condition: Condition = {}): StemSections {
  requireHeightTree(tree);
  const { cull = percent(0), brokenAt = tree.height } = condition;
  requireBetween("Cull", cull, 0, 100, "%");
  requireBetween("Broken at", brokenAt, 0, tree.height, "ft");

  const wood = equations.wood(tree);
  const woodAndBark = cubicFeet(wood + equations.bark(tree));
  const shareBelow = (h: Feet) => cumulativeShare(h, tree.height, equations.shapeInside);
  const section = (from: Feet, to: Feet): Section => {
    const share = to > from ? shareBelow(to) - shareBelow(from) : 0;
    return { wood: cubicFeet(share * wood), woodAndBark: cubicFeet(share * woodAndBark) };
  };

  const soundShare = 1 - cull / 100;
  const stump = lower(STUMP, brokenAt);
  const merchantableHeight = lower(heightOfPart(equations, tree, MERCHANTABLE), brokenAt);
  const sawlogHeight = lower(heightOfPart(equations, tree, sawlogLimits(equations.species)), brokenAt);
  return {
    total: { wood, woodAndBark },
    standing: section(feet(0), brokenAt),
    soundWood: cubicFeet(shareBelow(brokenAt) * wood * soundShare),
    soundShare,
    merchantableHeight,
    sawlogHeight,
    stump: section(feet(0), stump),
    merchantable: section(stump, merchantableHeight),
    sawlog: section(stump, sawlogHeight),
    top: section(higher(stump, merchantableHeight), brokenAt),
    missing: section(brokenAt, tree.height),
  };
}

/** Wood from the stump to the top of the merchantable part, of a sound and whole tree. [ft3] */
export const merchantableWood = (equations: StemEquations, tree: HeightTree) => woodTo(equations, tree, MERCHANTABLE);

/** Wood from the stump to the top of the sawlog part, of a sound and whole tree. [ft3] */
export const sawlogWood = (equations: StemEquations, tree: HeightTree) =>
  woodTo(equations, tree, sawlogLimits(equations.species));

function woodTo(equations: StemEquations, tree: HeightTree, limits: Limits): CubicFeet {
  const top = heightOfPart(equations, tree, limits);
  if (top <= STUMP) return cubicFeet(0);
  const { shapeInside } = equations;
  const share = cumulativeShare(top, tree.height, shapeInside) - cumulativeShare(STUMP, tree.height, shapeInside);
  return cubicFeet(share * equations.wood(tree));
}

function heightOfPart(equations: StemEquations, tree: HeightTree, { dbh, top }: Limits): Feet {
  if (tree.dbh < dbh) return feet(0);
  return heightToDiameter(inches(top), tree.height, equations.outside(tree), equations.shapeOutside);
}

const lower = (one: Feet, other: Feet): Feet => (one < other ? one : other);
const higher = (one: Feet, other: Feet): Feet => (one > other ? one : other);
