import { InvalidInput } from "../../core/basis/problem";
import { feet, inches } from "../../core/basis/units";
import { logRule } from "../../core/log/findLogRule";
import type { LogRule } from "../../core/log/logRule";
import { cardRule } from "../../core/log/scaleCard";
import { LONGEST_LOG, WIDEST_LOG } from "./logArguments";
import { boundsIn } from "./measuredIn";
import { asCells, blank, boundedNumber, oneText, type Cells } from "./readings";
import { saidIn } from "./saidIn";
import type { Unit, UnitSystem } from "./unitSystem";

const MOST_ON_A_CARD = 1e6; // bf; a choice of ours

/** A range that has rows and columns is a card; one text is the name of a rule. */
export const isCard = (given: unknown): boolean => {
  const cells = asCells(given);
  return cells.length > 1 && (cells[0]?.length ?? 0) > 1;
};

/** The rule that is named, or the buyer's card that stands in for it. */
export const ruleOrCard = (given: unknown, units: UnitSystem): LogRule =>
  isCard(given) ? cardOf(given, units) : logRule(oneText(given, "Rule"));

/**
 * A buyer's printed table: lengths in the first row, diameters in the first column, the corner ignored. Rows and
 * columns without a heading are left out where they are wholly blank, as below and beside a table.
 *
 * @throws InvalidInput when a heading or a cell is no number, or there is no card
 */
export function cardOf(given: unknown, system: UnitSystem): LogRule {
  const { diameter, distance } = system;
  const cells = asCells(given);
  if (!isCard(cells)) {
    throw new InvalidInput(
      "Card should be a range with lengths in its first row and diameters in its first column. You have one row or column.",
    );
  }
  const rows = headed(cells.map((row) => row as unknown[]));
  const columns = headed(transposed(cells));
  const heading = (cell: unknown, what: string, unit: Unit, high: number) => {
    if (blank(cell) || cell === 0) throw new InvalidInput(`${what} is missing beside figures of the card.`);
    return boundedNumber(cell, what, boundsIn(unit, 1, high)) / unit.perOurs;
  };
  const rule = saidIn(system, cardRule);
  return rule({
    diameters: rows.map((row) => inches(heading(cells[row]?.[0], "Card diameter", diameter, WIDEST_LOG))),
    lengths: columns.map((column) => feet(heading(cells[0]?.[column], "Card length", distance, LONGEST_LOG))),
    volumes: rows.map((row) => columns.map((column) => volumeIn(cells[row]?.[column]))),
  });
}

const transposed = (cells: Cells): unknown[][] =>
  (cells[0] ?? []).map((_, column) => cells.map((row): unknown => row[column]));

/** Places of the lines of a card, from the second on, that hold anything. */
function headed(lines: readonly (readonly unknown[])[]): readonly number[] {
  const places = lines.map((_, place) => place).slice(1);
  const filled = places.filter((place) => lines[place]?.some((cell) => !blank(cell) && cell !== 0));
  if (filled.length > 0) return filled;
  throw new InvalidInput(
    "The card is blank. Give a range with lengths in its first row and diameters in its first column.",
  );
}

/** A blank cell has no value; a 0 is none either, since some spreadsheets hand over a blank as 0. */
function volumeIn(cell: unknown): number | undefined {
  if (blank(cell) || cell === 0) return undefined;
  return boundedNumber(cell, "Card board feet", { unit: "bf", low: 0, high: MOST_ON_A_CARD });
}
