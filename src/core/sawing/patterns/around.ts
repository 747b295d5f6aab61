import { OutOfRange } from "../../basis/problem";
import { inches } from "../../basis/units";
import { fitThroat, waysUnder } from "../bestStack";
import { toTheBark, type Sides } from "../sides";
import { onBark, onSawnFace, openFace, type Cut, type CutList, type Setting } from "../cutList";
import { asGood, bestBelow, HAIR, type Way } from "../fill";
import { flitches, type Flitch } from "../flitches";
import { sectionsTo, type LyingLog } from "../lyingLog";
import { outline, type Face, type Outline } from "../outline";
import { roomIn, type RoomFor } from "../room";
import { laid } from "../sawnFlitch";
import { goalOf, planOf, type SawingPattern, type SawJob } from "../sawingPattern";
import { markFrom } from "../scale";
import { stackedUnder, upsideDown } from "../stack";
import { faceBetween } from "../widestCut";

/**
 * Sawing around: the log is turned by a quarter from face to face, boards are sawn off each, and a heart piece of a
 * listed size is left in the middle, the pith in its centre. Each face is sawn down to the heart before the next turn;
 * so the first face runs from bark to bark, the next two from a sawn face to the bark, the last between sawn faces.
 *
 * The plan is the best over all listed sizes as the heart, either way up, and over everything the four faces can be
 * sawn into; exactly, since the four stacks do not touch each other once the heart is chosen. It weighs size and price
 * only: where a board turns out clearer than the next one, the sawyer's eye decides when to turn.
 *
 * @throws OutOfRange when no listed board fits the log with the pith in its centre, or the mill's limits leave none
 */
export const around: SawingPattern = {
  id: "around",
  title: "Around",
  aliases: ["Sawing around", "For grade"],
  sources: [
    {
      author: "Woodlot Reckoner",
      year: "2026",
      title: "Best boards from four faces around a heart piece, each face by dynamic programming over exact positions",
      where: "core/sawing/patterns/around",
      standing: "computed",
    },
    {
      author: "The trade",
      year: "",
      title: "Sawing around for grade",
      where: "turned to a fresh face as the present one gets poorer; a heart cant is left",
      standing: "common practice",
    },
  ],

  plan(job) {
    const { lying, throat, groups, wane, scaleStep } = job;
    if (groups.length === 0) throw new OutOfRange("No board in your list fits this log.");
    const jackets = fitThroat(groups, throat);
    const waysOf = waysOfFaces(jackets, roomIn(lying, wane), job);
    let best: Around | undefined;
    for (const heart of heartsOf(job)) {
      const one = sawnAround(heart, waysOf, job, Math.max(best?.worth ?? 0, job.toBeat ?? 0));
      if (one && !(best && asGood(best, one))) best = one;
    }
    if (!best) {
      throw new OutOfRange("No board in your list can be left as the heart of this log, the pith in its centre.");
    }
    const centre = scaleStep === undefined ? "in its centre" : "as near its centre as the scale allows";
    const guarantee =
      `No other heart of a listed size, the pith ${centre}, and no other boards sawn from the four faces around it ` +
      `give ${goalOf(job)}.`;
    return planOf(job, "Around", cutsOf(best, job), guarantee);
  },
};

interface Heart {
  readonly flitch: Flitch;
  /** Which face of the log its wide face looks to. */
  readonly face: "top" | "right";
  /** As the log first lies. [in] */
  readonly place: Outline;
}

interface Around {
  readonly heart: Heart;
  /** From each face, the best stack outside the heart, seen with that face down. */
  readonly faces: readonly Way<Flitch>[];
  readonly worth: number;
  readonly pieces: number;
}

/** Every listed size, flat and upright, at the length at which it is worth most with the pith in its centre. */
function heartsOf(job: SawJob): readonly Heart[] {
  const { log, lying, scaleStep } = job;
  const hearts = new Map<string, Heart>();
  for (const one of flitches(log, { ...job, sideBySide: false }).flat()) {
    const [thickness, width] = [markFrom(one.listed, scaleStep), markFrom(one.width, scaleStep)];
    const flitch = { ...one, thickness: inches(thickness) };
    for (const face of ["top", "right"] as const) {
      const place = face === "top" ? placed(width, thickness, job) : placed(thickness, width, job);
      const key = `${place.right - place.left} ${place.upper - place.lower}`;
      const known = hearts.get(key);
      if (known && known.flitch.worth >= flitch.worth) continue;
      const heart = { flitch, face, place };
      if (holds(lying, place, flitch.length) && canBeLeft(heart, job)) hearts.set(key, heart);
    }
  }
  return [...hearts.values()];
}

/** Around the pith, half-way between the places that it runs through; on a scale, on the nearest marks. */
function placed(across: number, up: number, { lying, scaleStep }: SawJob): Outline {
  const middleOf = (face: Face) => {
    const heights = sectionsTo(lying, lying.log.length, face).map(({ v }) => v);
    return (Math.min(...heights) + Math.max(...heights)) / 2;
  };
  const onMark = (height: number, face: Face) => {
    if (scaleStep === undefined) return height;
    const bed = 0 - onBark(lying, face).pithHeight;
    return bed + Math.round((height - bed) / scaleStep) * scaleStep;
  };
  const upper = onMark(middleOf("top") + up / 2, "top");
  const right = onMark(middleOf("right") + across / 2, "right");
  return outline(right - across, right, upper - up, upper);
}

/** Whether a rectangle lies in the wood all along a board. */
function holds(lying: LyingLog, { left, right, lower, upper }: Outline, length: number): boolean {
  return sectionsTo(lying, length, "top").every(({ u, v, a, b }) => {
    const across = Math.max(right - u, u - left);
    const up = Math.max(upper - v, v - lower);
    return Math.hypot(across / a, up / b) <= 1 + HAIR;
  });
}

/** The first face is as wide as the log is there, the second runs from the first one to the bark; no later one is wider. */
function canBeLeft({ place }: Heart, job: SawJob): boolean {
  const { left, right, lower, upper } = place;
  const [first, second] = facesOf(place, job);
  const widths = [first, second].map((one) => one && faceBetween(job.lying, one.face, one.plane, one.sides));
  const widest = Math.max(...widths.map((width) => width ?? 0));
  return Math.min(right - left, upper - lower) + HAIR >= job.bladeAboveBed && widest <= job.widestCut + HAIR;
}

/** The four faces in the order of work, and what is sawn already to the left and right of each when it looks up. */
function facesOf(
  { left, right, lower, upper }: Outline,
  { lying }: SawJob,
): readonly (Setting & { readonly plane: number })[] {
  const sides = (from: number, to: number): Sides => ({
    left: from,
    right: to,
  });
  const minus = (plane: number) => 0 - plane;
  return [
    {
      turn: "none",
      face: "top",
      plane: upper,
      sides: toTheBark,
      ...onBark(lying, "top"),
    },
    {
      turn: "quarter turn",
      face: "right",
      plane: right,
      sides: sides(minus(upper), Infinity),
      ...onBark(lying, "right"),
    },
    {
      turn: "quarter turn",
      face: "bottom",
      plane: minus(lower),
      sides: sides(minus(right), Infinity),
      ...onSawnFace(upper),
    },
    {
      turn: "quarter turn",
      face: "left",
      plane: minus(left),
      sides: sides(lower, upper),
      ...onSawnFace(right),
    },
  ];
}

type WaysOf = (face: Face, sides: Sides, plane: number) => readonly Way<Flitch>[];

/** All ways to saw a face between given sides; hearts of like measures share them, and in a plain log all faces do. */
function waysOfFaces(jackets: readonly (readonly Flitch[])[], roomFor: RoomFor, job: SawJob): WaysOf {
  const known = new Map<string, readonly Way<Flitch>[]>();
  const { lying, scaleStep } = job;
  return (face, sides, plane) => {
    const marks = scaleStep === undefined ? "" : plane;
    const key = `${lying.isPlain ? "" : face} ${sides.left} ${sides.right} ${marks}`;
    const ways = known.get(key) ?? waysUnder(jackets, face, sides, roomFor, job, plane);
    known.set(key, ways);
    return ways;
  };
}

/**
 * No face is worth more than it would be from bark to bark, and the first one is just that. So one face after another
 * is planned as it is, until the heart cannot be worth what is needed; then undefined.
 */
function sawnAround(heart: Heart, waysOf: WaysOf, job: SawJob, needed: number): Around | undefined {
  const least = needed - HAIR * Math.max(1, needed);
  const settings = facesOf(heart.place, job);
  const waysTo = (face: Face, plane: number, sides: Sides) =>
    bestBelow(waysOf(face, sides, plane), 0 - plane) as Way<Flitch>;
  const faces = settings.map(({ face, plane }) => waysTo(face, plane, toTheBark));
  const worthOf = () => faces.reduce((sum, { worth }) => sum + worth, heart.flitch.worth);
  for (const i of [3, 2, 1]) {
    if (worthOf() < least) return undefined;
    const { face, plane, sides } = settings[i] as (typeof settings)[number];
    faces[i] = waysTo(face, plane, sides);
  }
  return { heart, faces, worth: worthOf(), pieces: faces.reduce((sum, { pieces }) => sum + pieces, 1) };
}

function cutsOf({ heart, faces }: Around, job: SawJob): CutList {
  const { flitch, face, place } = heart;
  const cuts = facesOf(place, job).flatMap((setting, i): readonly Cut[] => {
    const { plane } = setting;
    return openFace(upsideDown(stackedUnder(faces[i], 0 - plane, job)), plane, setting, job);
  });
  const [sides, low] =
    face === "top"
      ? [{ left: place.left, right: place.right }, place.lower]
      : [{ left: 0 - place.upper, right: 0 - place.lower }, place.left];
  return { cuts, lastOnBed: laid(flitch, face, sides.left, low, sides, job) };
}
