import { boardFeet, type BoardFeet } from "../basis/units";
import { A_HAIR } from "./wholeNumbers";

/**
 * Board feet to the nearest whole number of steps, an exact half upwards, as printed scale tables have them. A half that
 * arithmetic left a hair short is still a half.
 */
export const toNearest = (step: number, volume: BoardFeet): BoardFeet =>
  boardFeet(Math.floor(volume / step + 0.5 + A_HAIR) * step);
