import { boardFeet } from "./boardFeet";
import { buckPlan } from "./buckPlan";
import { cardScale } from "./cardScale";
import { logCubic } from "./logCubic";
import { logScale } from "./logScale";
import { lumberWeight } from "./lumberWeight";
import { targetThickness } from "./targetThickness";
import type { Working } from "./working";

/** Every function that can set down its working. Messages and tests read this list. */
export const workings: readonly Working[] = [
  logScale,
  cardScale,
  logCubic,
  boardFeet,
  targetThickness,
  lumberWeight,
  buckPlan,
];
