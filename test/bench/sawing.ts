import highsLoader from "highs";
import { best } from "../../src/core/sawing/patterns/best";
import { cant } from "../../src/core/sawing/patterns/cant";
import { board, planned, sawLog } from "../support/sawing";
import { liveSawingProgram } from "../support/liveSawingProgram";
import { ratio, type Ratio } from "./ratio";

/** Twelve products of three thicknesses and two timbers, at invented prices. */
const products = [
  board(1, 4, 600),
  board(1, 6, 700),
  board(1, 8, 750),
  board(1, 10, 800),
  board(1.25, 6, 800),
  board(1.25, 8, 850),
  board(1.25, 10, 900),
  board(2, 4, 650),
  board(2, 6, 700),
  board(2, 8, 750),
  board(4, 4, 600),
  board(6, 6, 700),
];
const KERF = 0.09;

/** Plans of a log, against a general integer solver on the live model; the wider patterns against the live plan. */
export async function sawingRatios(): Promise<readonly Ratio[]> {
  const highs = await highsLoader();
  // Each further thickness and inch multiplies the solver's places, so that it is given a small log and two thicknesses.
  const small = sawLog(12, 12, 16);
  const few = products.filter(({ thickness, width }) => (thickness === 1 || thickness === 2) && width <= 8);
  const program = liveSawingProgram(small.smallEnd, small.length, few, KERF);
  const log = sawLog(24, 26, 16);
  const liveAlone = () => planned(log, products, KERF);
  return [
    await ratio(
      "Live plan of a 12-in log, 6 products, against a general integer solver (HiGHS) on the same model",
      "0.01",
      () => planned(small, few, KERF, { shortBoards: false, sideBySide: false }),
      () => highs.solve(program),
    ),
    await ratio(
      "Cant plan of a 24-in, 16-ft log, 12 products, against its live plan",
      "5 ms class",
      () => planned(log, products, KERF, { pattern: cant }),
      liveAlone,
    ),
    await ratio(
      "Best plan of all patterns, same log, against its live plan",
      "5 ms class",
      () => planned(log, products, KERF, { pattern: best }),
      liveAlone,
    ),
  ];
}
