import { InvalidInput } from "../../core/basis/problem";
import { feet } from "../../core/basis/units";
import { withoutRepeats, type Outline } from "../../core/cruise/outline";
import { column, filledRows, sharedRows } from "./columns";
import { blank, boundedNumber } from "./readings";

const BOUNDS = { unit: "", low: -1e8, high: 1e8 };

/**
 * Corners from two columns. A row that is blank in both is none; a 0 is a place like any other.
 *
 * @param perFoot how many of the user's units make a foot
 * @throws InvalidInput when the columns differ in length, or a row has one number only
 */
export function cornersOf(givenEast: unknown, givenNorth: unknown, perFoot = 1): Outline {
  const [east, north] = [column(givenEast, "Corner east"), column(givenNorth, "Corner north")];
  const rows = Math.min(sharedRows([east, north]), Math.max(filledRows(east, blank), filledRows(north, blank)));
  const corners = Array.from({ length: rows }, (_, row) => {
    const cells = [east.at(row), north.at(row)];
    if (cells.every(blank)) return [];
    if (cells.some(blank)) throw new InvalidInput(`Corner ${row + 1} needs both its numbers, east and north.`);
    const [one, other] = [
      boundedNumber(cells[0], `Corner ${row + 1} east`, BOUNDS),
      boundedNumber(cells[1], `Corner ${row + 1} north`, BOUNDS),
    ];
    return [{ east: feet(one / perFoot), north: feet(other / perFoot) }];
  });
  return withoutRepeats(corners.flat());
}
