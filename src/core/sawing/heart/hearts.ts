import { inches } from "../../basis/units";
import { worthOf, type BoardPiece } from "../boardSize";
import { onBark } from "../setting";
import { HAIR } from "../filling/hair";
import { boardPieces, type PiecesOfThickness } from "../boardPieces";
import { flitchOf, type Flitch } from "../flitches";
import { sectionsTo, type LyingLog } from "../lyingLog";
import { outline, type Face, type Outline } from "../outline";
import { markFrom } from "../scale";
import type { SawJob } from "../sawingPattern";
import { faceBetween } from "../widestCut";
import type { FaceAround } from "./facesAround";

/** A piece that is left in the middle of a log, the pith in its centre. */
export interface Heart {
  readonly flitch: Flitch;
  /** Which face of the log its wide face looks to. */
  readonly face: "top" | "right";
  /** As the log first lies. [in] */
  readonly place: Outline;
  /** The faces that are sawn around it. */
  readonly faces: readonly FaceAround[];
}

/** Every listed size, flat and upright, at the length at which it is worth most with the pith in its centre. */
export function heartsOf(job: SawJob, facesOf: (heart: Outline) => readonly FaceAround[]): readonly Heart[] {
  const { scaleStep, priced } = job;
  const pieces = new Map<string, { readonly piece: BoardPiece; readonly worth: number }[]>();
  for (const piece of boardPieces(job.log, job.sizes, job.lengths).flatMap(piecesOf)) {
    const key = `${piece.thickness} ${piece.width}`;
    const alike = pieces.get(key) ?? [];
    alike.push({ piece, worth: worthOf(piece, priced) });
    pieces.set(key, alike);
  }
  const hearts = new Map<string, Heart>();
  for (const alike of pieces.values()) {
    const [{ piece: first }] = alike as [(typeof alike)[number]];
    const [thickness, width] = [markFrom(first.thickness, scaleStep), markFrom(first.width, scaleStep)];
    const fromBest = [...alike].sort((a, b) => b.worth - a.worth);
    for (const face of ["top", "right"] as const) {
      const [across, up] = face === "top" ? [width, thickness] : [thickness, width];
      const place = placed(across, up, job);
      const faces = facesOf(place);
      if (!canBeLeft(place, faces, job)) continue;
      const best = fromBest.find(({ piece }) => holds(job.lying, place, piece.length));
      const key = `${across} ${up}`;
      if (!best || (hearts.get(key)?.flitch.worth ?? -1) >= best.worth) continue;
      const flitch = { ...flitchOf([best], first.width, job), thickness: inches(thickness) };
      hearts.set(key, { flitch, face, place, faces });
    }
  }
  return [...hearts.values()];
}

const piecesOf = (ofThickness: PiecesOfThickness) => ofThickness.flatMap(({ pieces }) => pieces);

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
function canBeLeft({ left, right, lower, upper }: Outline, faces: readonly FaceAround[], job: SawJob): boolean {
  if (Math.min(right - left, upper - lower) + HAIR < job.bladeAboveBed) return false;
  const widths = faces.slice(0, 2).map((one) => faceBetween(job.lying, one.face, one.plane, one.sides));
  return Math.max(...widths) <= job.widestCut + HAIR;
}
