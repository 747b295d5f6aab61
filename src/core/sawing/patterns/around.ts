import { OutOfRange } from "../../basis/problem";
import { openFace, type Cut, type CutList } from "../cutList";
import { HAIR } from "../filling/hair";
import { asGood, bestBelow, type Way } from "../filling/way";
import type { Flitch } from "../flitches";
import { facesAround, type FaceAround } from "../heart/facesAround";
import { heartsOf, type Heart } from "../heart/hearts";
import { laid } from "../sawnFlitch";
import { goalOf, planOf, type SawingPattern, type SawJob } from "../sawingPattern";
import { toTheBark, type Sides } from "../sides";
import { stackedUnder, upsideDown } from "../stack";

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
    const { groups, scaleStep } = job;
    if (groups.length === 0) throw new OutOfRange("No board in your list fits this log.");
    let best: Around | undefined;
    for (const heart of heartsOf(job, facesAround(job.lying))) {
      const one = sawnAround(heart, job, Math.max(best?.worth ?? 0, job.toBeat ?? 0));
      if (one && !(best && asGood(best, one))) best = one;
    }
    if (!best) {
      throw new OutOfRange("No board in your list can be left as the heart of this log, the pith in its centre.");
    }
    const centre = scaleStep === undefined ? "in its centre" : "as near its centre as the scale allows";
    const guarantee = `No other heart of a listed size, the pith ${centre}, with boards from its four faces, gives ${goalOf(job)}.`;
    return planOf(job, "Around", cutsOf(best, job), guarantee);
  },
};

interface Around {
  readonly heart: Heart;
  /** From each face, the best stack outside the heart, seen with that face down. */
  readonly faces: readonly Way<Flitch>[];
  readonly worth: number;
  readonly pieces: number;
}

/**
 * No face is worth more than it would be from bark to bark, and the first one is just that. So one face after another
 * is planned as it is, until the heart cannot be worth what is needed; then undefined.
 */
function sawnAround(heart: Heart, { sideBoards }: SawJob, needed: number): Around | undefined {
  const least = needed - HAIR * Math.max(1, needed);
  const waysTo = ({ face, plane }: FaceAround, sides: Sides) =>
    bestBelow(sideBoards(face, sides), 0 - plane) as Way<Flitch>;
  const faces = heart.faces.map((one) => waysTo(one, toTheBark));
  const worthOf = () => faces.reduce((sum, { worth }) => sum + worth, heart.flitch.worth);
  for (const i of [3, 2, 1]) {
    if (worthOf() < least) return undefined;
    const one = heart.faces[i] as FaceAround;
    faces[i] = waysTo(one, one.sides);
  }
  return { heart, faces, worth: worthOf(), pieces: faces.reduce((sum, { pieces }) => sum + pieces, 1) };
}

function cutsOf({ heart, faces }: Around, job: SawJob): CutList {
  const { flitch, face, place } = heart;
  const cuts = heart.faces.flatMap((one, i): readonly Cut[] =>
    openFace(upsideDown(stackedUnder(faces[i], 0 - one.plane, job)), one.plane, one, job),
  );
  const [sides, low] =
    face === "top"
      ? [{ left: place.left, right: place.right }, place.lower]
      : [{ left: 0 - place.upper, right: 0 - place.lower }, place.left];
  return { cuts, lastOnBed: laid(flitch, face, sides.left, low, sides, job) };
}
