import { OutOfRange } from "../../basis/problem";
import type { Inches } from "../../basis/units";
import type { BoardPiece } from "../boardSize";
import type { Mill } from "../millLimits";
import { liveOrCant } from "../patterns/liveOrCant";
import { sawPlan } from "../sawPlan";
import { solidVolume, type SawLog } from "../sawLog";
import type { SawingPattern, SawPlan } from "../sawingPattern";
import { sticksOf } from "./sticks";
import type { SourcePlan, WoodSource } from "./woodSource";

/** How logs are sawn into wanted pieces. */
export interface PieceSawing {
  readonly pieces: readonly BoardPiece[];
  readonly kerf: Inches;
  readonly mill: Mill;
  /** Left out: live or cant, whichever is better. */
  readonly pattern?: SawingPattern;
  /** False when each flitch gives one board only. Left out: true. */
  readonly sideBySide?: boolean;
}

/** The best way to saw one log into pieces of given worths: exact within the pattern, by the sawing programme itself. */
export function sawnInto(log: SawLog, worths: readonly number[], sawing: PieceSawing): SourcePlan {
  const { pieces, kerf, mill, pattern = liveOrCant, sideBySide = true } = sawing;
  const { sizes, piecesIn } = sticksOf(pieces, worths, log.length);
  const plan = sizes.length === 0 ? undefined : orNone(() => sawPlan({ log, sizes, kerf, mill, pattern, sideBySide }));
  const gives = pieces.map(() => 0);
  if (!plan) return { worth: 0, gives, plans: [] };
  for (const { boards } of plan.flitches) {
    for (const { piece } of boards) for (const i of piecesIn(piece)) gives[i] = (gives[i] as number) + 1;
  }
  return { worth: plan.worth, gives, plans: [{ log, plan }] };
}

/** Logs of the same measures as one source of wood. */
export const logSource = (names: readonly string[], log: SawLog, sawing: PieceSawing): WoodSource => ({
  names,
  wood: solidVolume(log),
  best: (worths) => sawnInto(log, worths, sawing),
});

/** A log that the mill cannot take, or that is too small for every piece, gives none. */
function orNone(plan: () => SawPlan): SawPlan | undefined {
  try {
    return plan();
  } catch (problem) {
    if (problem instanceof OutOfRange) return undefined;
    throw problem;
  }
}
