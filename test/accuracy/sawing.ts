import { inches } from "../../src/core/basis/units";
import { faceWidth, lengthOfFace, slabDepth } from "../../src/core/sawing/chord";
import { solidVolume } from "../../src/core/sawing/sawLog";
import { sawYield } from "../../src/core/sawing/sawYield";
import { numberIn, published, type PublishedRow } from "../support/published";
import { cantVolume, inchBoards, livePlan, sawLog } from "../support/sawing";
import type { Comparison } from "./comparison";

/** Our saw plans and their geometry against figures computed independently of them. */
export function sawingComparisons(): readonly Comparison[] {
  return [
    compared("Face opened by a saw plane", "sawing/chord.csv", "in", "face width", (row) =>
      faceWidth(inches(numberIn(row, "diameter")), inches(numberIn(row, "from pith"))),
    ),
    compared("Slab depth for a face", "sawing/slabDepth.csv", "in", "slab depth", (row) =>
      slabDepth(inches(numberIn(row, "diameter")), inches(numberIn(row, "face"))),
    ),
    compared(
      "Length of a face in a tapered log",
      "sawing/lengthOfFace.csv",
      "ft",
      "length from the large end",
      (row) => {
        const smallEnd = numberIn(row, "small end");
        const log = sawLog(smallEnd, smallEnd + 2, 16);
        return lengthOfFace(log, inches(numberIn(row, "from pith")), inches(numberIn(row, "width")));
      },
    ),
    compared("Solid volume of a log", "sawing/taperedLog.csv", "ft3", "log volume", (row) => solidVolume(cone(row))),
    compared("Live sawing, cylinder", "sawing/liveSawing.csv", "bf", "rigid volume", (row) => {
      const diameter = numberIn(row, "diameter");
      const log = sawLog(diameter, diameter, numberIn(row, "length"));
      return sawn(row, log.largeEnd, log, true);
    }),
    compared(
      "Live sawing, tapered log, full-length boards",
      "sawing/taperedLog.csv",
      "bf",
      "full-length volume",
      (row) => sawn(row, cone(row).largeEnd, cone(row), false),
    ),
    compared(
      "Live sawing, tapered log, short boards kept",
      "sawing/taperedLog.csv",
      "bf",
      "volume with short boards",
      (row) => sawn(row, cone(row).largeEnd, cone(row), true),
    ),
    compared("Cant sawing, cylinder", "sawing/cantSawing.csv", "bf", "volume on 1/64 in", (row) =>
      cantVolume(numberIn(row, "diameter"), numberIn(row, "kerf"), [4, 6, 8, 10, 12]),
    ),
  ];
}

const cone = (row: PublishedRow) =>
  sawLog(numberIn(row, "small end"), numberIn(row, "large end"), numberIn(row, "length"));

const sawn = (row: PublishedRow, widest: number, log: ReturnType<typeof cone>, shortBoards: boolean) =>
  sawYield(livePlan(log, inchBoards(numberIn(row, "least width"), widest), numberIn(row, "kerf"), shortBoards))
    .boardFeet;

function compared(
  subject: string,
  path: string,
  unit: string,
  column: string,
  ours: (row: PublishedRow) => number,
): Comparison {
  const { source, standing, printedTo, rows } = published(path);
  const pairs = rows.map((row) => ({ printed: numberIn(row, column), ours: ours(row) }));
  return { subject, source, standing, unit, printedTo, pairs };
}
