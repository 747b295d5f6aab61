import { inches, percent, squareFeetPerAcre } from "../../core/basis/units";
import { limitingDistance } from "../../core/cruise/limitingDistance";
import { toCenter, toFace, type MeasureTo } from "../../core/cruise/measureTo";
import { slopeStretch } from "../../core/tree/horizontalDistance";
import { columnLetters } from "../address";
import { formats } from "../formats";
import type { BlockPlan, CellValue, PlannedCell } from "../plan";
import { named } from "../tables";
import { across } from "./sheetParts";

/** Diameters that the table tells; others are reckoned from the feet per inch beside it. [in] */
export const LIMIT_DIAMETERS = [8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 32] as const;
/** Slopes along which a tape is laid. [%] */
export const LIMIT_SLOPES = [10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80] as const;

/** Method and gauge, where they are known beforehand. */
export interface KnownGauge {
  readonly method: string;
  readonly size: number;
}

/** Lines of the table. */
export const LIMIT_ROWS = 5;

/**
 * Limiting distances of the gauge on the sheet, to the center and to the face of a tree, and how much longer a tape
 * along a slope may read. By native formulas, the same as LIMITINGDISTANCE:
 *
 *     to the center   D sqrt(43560 / (576 BAF))
 *     to the face     D (sqrt(43560 / (576 BAF)) - 1/24)
 *     on a slope      times sqrt(1 + (s / 100)^2)
 */
export function limitBlocks(row: number, known?: KnownGauge): readonly BlockPlan[] {
  const limits = (formula: (letter: string) => string, measureTo: MeasureTo): readonly PlannedCell[] =>
    LIMIT_DIAMETERS.map((diameter, at) => ({
      formula: formula(columnLetters(at + 1)),
      ...(known && { result: limitOf(diameter, measureTo, known) }),
    }));
  const factor = `SQRT(43560/576/${named.size})`;
  const atPoints = (answer: string) => `=IF(${named.method}="Point",${answer},"")`;
  return [
    across(`A${row}`, "Heading", ["DBH in", ...LIMIT_DIAMETERS]),
    across(`A${row + 1}`, "Note", ["Center"]),
    across(
      `B${row + 1}`,
      "Computed",
      limits((letter) => atPoints(`${letter}${row}*${factor}`), toCenter),
      formats.hundredth,
    ),
    across(`A${row + 2}`, "Note", ["Face"]),
    across(
      `B${row + 2}`,
      "Computed",
      limits((letter) => atPoints(`${letter}${row}*(${factor}-1/24)`), toFace),
      formats.hundredth,
    ),
    across(`A${row + 3}`, "Heading", ["Slope %", ...LIMIT_SLOPES]),
    across(`A${row + 4}`, "Note", ["Times"]),
    across(
      `B${row + 4}`,
      "Computed",
      LIMIT_SLOPES.map((slope, at) => ({
        formula: `=SQRT(1+(${columnLetters(at + 1)}${row + 3}/100)^2)`,
        ...(known && { result: slopeStretch(percent(slope)) }),
      })),
      formats.thickness,
    ),
  ];
}

/** Blank where trees are not picked by a gauge. */
const limitOf = (diameter: number, measureTo: MeasureTo, { method, size }: KnownGauge): CellValue =>
  method === "Point" ? limitingDistance({ dbh: inches(diameter), baf: squareFeetPerAcre(size), measureTo }) : "";
