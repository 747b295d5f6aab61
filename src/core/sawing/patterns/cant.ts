import { OutOfRange } from "../../basis/problem";
import { bestCant, sidesOfCant } from "../cants/bestCant";
import type { Cant, CantOrder } from "../cants/cantOrder";
import { toTheBark, type Sides } from "../sides";
import { cantBetweenFaces } from "../cants/cantBetweenFaces";
import { openFace, sawThrough, type CutList } from "../cutList";
import { onBark, onSawnFace } from "../setting";
import { goalOf, planOf, type SawingPattern, type SawJob } from "../sawingPattern";
import { diameterAt } from "../sawLog";
import { centred, moved, playOf, stacked, stackedUnder, upperFace, upsideDown, type Stacked } from "../stack";
import { tooWideBetween } from "../widestCut";

/**
 * Cant sawing: two opposite faces are opened, side boards sawn from both, and the cant between them is turned on edge
 * and sawn through. Its boards come off at their width where the cant reaches its full width, so the edger is needed
 * for side boards and for boards near the bark only. A beam is a listed size like any other: it stays in the cant, with
 * boards sawn off its two other sides. The cant holds the pith and may have any thickness; where it is thicker than a
 * board is wide, several lie side by side in it and are edged apart.
 *
 * @throws OutOfRange when no listed board fits the log, or the mill's limits leave no cant
 */
export const cant: SawingPattern = {
  id: "cant",
  title: "Cant",
  aliases: ["Cant sawing"],
  sources: [
    {
      author: "Woodlot Reckoner",
      year: "2026",
      title: "Best cant with its side boards in a truncated cone, by dynamic programming over exact positions",
      where: "core/sawing/cants/bestCant; held against independent enumerations in test/core/sawing",
      standing: "computed",
    },
    {
      author: "The trade",
      year: "",
      title: "Cant sawing",
      where: "two opposite faces first, then the cant is turned and sawn into boards or left as a beam",
      standing: "common practice",
    },
  ],

  plan(job) {
    const { lying, sizes, throat, bladeAboveBed, widestCut, groups, scaleStep, toBeat, roomFor, sideBoards } = job;
    if (groups.length === 0) throw new OutOfRange("No board in your list fits this log.");
    const order = {
      boardWidths: [...new Set(sizes.map(({ width }) => width))].sort((a, b) => b - a),
      widestCut,
      inside: groups,
      roomFor,
      sideBoards,
      bladeAboveBed,
      throat,
      facesBeyond: tooWideBetween(lying, "top", widestCut),
      ...(toBeat !== undefined && { toBeat }),
    };
    const setAnywhere = lying.isPlain && scaleStep === undefined;
    const best = lying.isSymmetrical ? bestCant(order, job) : cantBetweenFaces(order, job);
    if (!best) throw new OutOfRange("No cant that holds the pith can be sawn from this log with this mill.");
    const guarantee =
      `No other cant that holds the pith, whatever its thickness, gives ${goalOf(job)} from these boards, side boards ` +
      "counted.";
    return planOf(job, "Cant", cutsOf(best, setAnywhere ? order : undefined, job), guarantee);
  },
};

/** @param movable what limits the cant where it may be set anywhere; else it stays where it was tried */
function cutsOf(best: Cant, movable: CantOrder | undefined, job: SawJob): CutList {
  const { lying } = job;
  const { thickness } = best;
  const inside = centred(stacked(best.inside, job), job);
  const under = stackedUnder(best.under, best.offset - thickness / 2, job);
  const over = stackedUnder(best.over, 0 - best.offset - thickness / 2, job);
  const by = movable ? halfThePlay(best, under, over, inside, movable.facesBeyond.high, job) : 0;
  const offset = best.offset + by;
  const lowerFace = offset - thickness / 2;
  const upperFaceOfCant = offset + thickness / 2;

  const bark: Sides = toTheBark;
  const top = openFace(
    upsideDown(moved(over, 0 - by)),
    upperFaceOfCant,
    { turn: "none", face: "top", sides: bark, ...onBark(lying, "top") },
    job,
  );
  const bottom = openFace(
    upsideDown(moved(under, by)),
    0 - lowerFace,
    {
      turn: "half turn",
      face: "bottom",
      sides: bark,
      ...onSawnFace(upperFaceOfCant),
    },
    job,
  );
  const onEdge = {
    turn: "quarter turn",
    face: "right",
    sides: sidesOfCant(thickness, offset),
    ...onBark(lying, "right"),
  } as const;
  const through = sawThrough(inside, onEdge, job, job);
  return { ...through, cuts: [...top, ...bottom, ...through.cuts] };
}

/** How far the cant and its side boards are moved together, so that they have equal play up and down. */
function halfThePlay(
  { thickness, offset }: Cant,
  under: readonly Stacked[],
  over: readonly Stacked[],
  inside: readonly Stacked[],
  facesFrom: number,
  { log, wane }: SawJob,
): number {
  const offsets = inside.map((one) => {
    const { width, length, thickness: board } = one.flitch;
    const outer = Math.max(0, Math.max(0 - one.lower, upperFace(one)) - wane * board);
    const chord = Math.sqrt(Math.max(0, (diameterAt(log, length) / 2) ** 2 - outer ** 2));
    return chord - width + thickness / 2;
  });
  const farthest = Math.min(thickness / 2 - facesFrom, ...offsets);
  const down = Math.max(0 - farthest - offset, playOf(under).down);
  const up = Math.min(farthest - offset, 0 - playOf(over).down);
  return (down + up) / 2;
}
