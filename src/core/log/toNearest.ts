import { boardFeet, type BoardFeet } from "../basis/units";

/** Board feet to the nearest whole number of steps, an exact half upwards, as printed scale tables have them. */
export const toNearest = (step: number, volume: BoardFeet): BoardFeet =>
  boardFeet(Math.floor(volume / step + 0.5) * step);
