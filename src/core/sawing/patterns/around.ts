import { OutOfRange } from "../../basis/problem";
import { candidates, type Sides } from "../candidates";
import { onBark, onSawnFace, openFace, type Cut, type CutList, type Setting } from "../cutList";
import { asGood, bestBelow, HAIR, waysToFill, type Way } from "../fill";
import { flitches, type Flitch } from "../flitches";
import { goalOf, planOf, type SawingPattern, type SawJob } from "../sawingPattern";
import { diameterAt } from "../sawLog";
import { laid } from "../sawnFlitch";
import { stackedUnder, upsideDown } from "../stack";
import { firstFaceFrom } from "../widestCut";

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
    const { log, throat } = job;
    const groups = flitches(log, job);
    if (groups.length === 0) throw new OutOfRange("No board in your list fits this log.");
    const jackets = groups.filter(([first]) => first && first.thickness <= throat);
    const waysOf = waysBetween(jackets, job);
    const best = heartsOf(job).reduce<Around | undefined>((bestOfAll, heart) => {
      const one = sawnAround(heart, waysOf, job);
      return bestOfAll && asGood(bestOfAll, one) ? bestOfAll : one;
    }, undefined);
    if (!best) {
      throw new OutOfRange("No board in your list can be left as the heart of this log, the pith in its centre.");
    }
    const guarantee =
      "No other heart of a listed size, the pith in its centre, and no other boards sawn from the four faces around it " +
      `give ${goalOf(job)}.`;
    return planOf(job, "Around", cutsOf(best, job), guarantee);
  },
};

interface Heart {
  readonly flitch: Flitch;
  /** Which face of the log its wide face looks to. */
  readonly face: "top" | "right";
  /** Across and up, as the log first lies. [in] */
  readonly across: number;
  readonly up: number;
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
  const hearts = new Map<string, Heart>();
  for (const flitch of flitches(job.log, { ...job, sideBySide: false }).flat()) {
    const { thickness, width, length, worth } = flitch;
    if (Math.hypot(thickness, width) > diameterAt(job.log, length) + HAIR) continue;
    for (const heart of [
      { flitch, face: "top", across: width, up: thickness },
      { flitch, face: "right", across: thickness, up: width },
    ] as const) {
      const key = `${heart.across} ${heart.up}`;
      const known = hearts.get(key);
      if (canBeLeft(heart, job) && !(known && known.flitch.worth >= worth)) hearts.set(key, heart);
    }
  }
  return [...hearts.values()];
}

/** The first face is as wide as the log is there, the second runs from the first one to the bark; no later one is wider. */
function canBeLeft({ across, up }: Heart, { log, bladeAboveBed, widestCut }: SawJob): boolean {
  const first = up / 2 + HAIR >= firstFaceFrom(log, widestCut);
  const second = Math.hypot(widestCut - up / 2, across / 2) + HAIR >= log.largeEnd / 2;
  return Math.min(across, up) + HAIR >= bladeAboveBed && first && second;
}

/** The four faces in the order of work, and what is sawn already to the left and right of each when it looks up. */
function facesOf({ across, up }: Heart, { log }: SawJob): readonly (Setting & { readonly plane: number })[] {
  const bark = onBark(log);
  const sides = (left: number, right: number): Sides => ({ left, right });
  return [
    { turn: "none", face: "top", plane: up / 2, sides: sides(-Infinity, Infinity), ...bark },
    { turn: "quarter turn", face: "right", plane: across / 2, sides: sides(up / -2, Infinity), ...bark },
    { turn: "quarter turn", face: "bottom", plane: up / 2, sides: sides(across / -2, Infinity), ...onSawnFace(up / 2) },
    { turn: "quarter turn", face: "left", plane: across / 2, sides: sides(up / -2, up / 2), ...onSawnFace(across / 2) },
  ];
}

type WaysBetween = (sides: Sides) => readonly Way<Flitch>[];

/** All ways to saw a face between given sides; hearts of like measures share them. */
function waysBetween(jackets: readonly (readonly Flitch[])[], { log, kerf, wane }: SawJob): WaysBetween {
  const known = new Map<string, readonly Way<Flitch>[]>();
  return (sides) => {
    const key = `${sides.left} ${sides.right}`;
    const ways = known.get(key) ?? waysToFill(candidates(log, jackets, wane, sides), kerf);
    known.set(key, ways);
    return ways;
  };
}

function sawnAround(heart: Heart, waysOf: WaysBetween, job: SawJob): Around {
  const faces = facesOf(heart, job).map(({ plane, sides }) => bestBelow(waysOf(sides), 0 - plane) as Way<Flitch>);
  return {
    heart,
    faces,
    worth: heart.flitch.worth + faces.reduce((sum, { worth }) => sum + worth, 0),
    pieces: 1 + faces.reduce((sum, { pieces }) => sum + pieces, 0),
  };
}

function cutsOf({ heart, faces }: Around, job: SawJob): CutList {
  const cuts = facesOf(heart, job).flatMap((setting, i): readonly Cut[] => {
    const { plane } = setting;
    return openFace(upsideDown(stackedUnder(faces[i], 0 - plane, job.kerf)), plane, setting, job);
  });
  const { flitch, face } = heart;
  const [half, low] = [flitch.width / 2, flitch.thickness / -2];
  const lastOnBed = laid(flitch, face, 0 - half, low, { left: 0 - half, right: half }, job.edgerKerf);
  return { cuts, lastOnBed };
}
