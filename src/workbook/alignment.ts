import { addressOf, type Zone, zoneAt } from "./address";
import { formats } from "./formats";
import type { BlockPlan, SheetPlan, SpillPlan } from "./plan";

/** Where the cells of a sheet stand differently from how a spreadsheet puts texts and numbers by itself. */
export interface Alignment {
  /** Headings right under which numbers stand, which end where their numbers end. */
  readonly right: readonly string[];
  /** Numbers that are names, which begin where their heading begins. */
  readonly left: readonly string[];
  /** Texts that follow right upon numbers, which begin a little further in. */
  readonly indented: readonly string[];
}

/** Headings of tables stay as they are, since their right end is their button's; so do those wider than their column. */
export function alignmentOf(plan: SheetPlan): Alignment {
  const headings = plan.blocks.filter(({ style }) => style === "Heading").map((block) => rowOfHeadings(plan, block));
  const answers = plan.spills.map(columnsOfAnswer);
  return {
    right: [...headings, ...answers].flatMap(({ right }) => right).map(addressOf),
    left: plan.blocks.flatMap(({ at, cells, names = false }) =>
      names && cells.length > 0
        ? [addressOf({ ...zoneAt(at), rows: cells.length, columns: cells[0]?.length ?? 1 })]
        : [],
    ),
    indented: [...headings, ...answers].flatMap(({ indented }) => indented).map(addressOf),
  };
}

interface Zones {
  readonly right: readonly Zone[];
  readonly indented: readonly Zone[];
}

function rowOfHeadings(plan: SheetPlan, block: BlockPlan): Zones {
  const top = zoneAt(block.at);
  const below = top.row + block.cells.length;
  const line = block.cells.at(-1) ?? [];
  const numbers = line.map((cell, i) => {
    const room = plan.widths[top.column + i] ?? 0;
    const fits = typeof cell === "string" ? cell.length <= room || block.lines !== undefined : cell !== null && i > 0;
    return fits && numberAt(plan, below, top.column + i);
  });
  const zone = (i: number): Zone => ({ row: below - 1, column: top.column + i, rows: 1, columns: 1 });
  return {
    right: indexes(line, (_, i) => numbers[i] === true).map(zone),
    indented: indexes(line, (cell, i) => cell !== null && !numbers[i] && numbers[i - 1] === true).map(zone),
  };
}

function numberAt(plan: SheetPlan, row: number, column: number): boolean {
  const inBlock = plan.blocks.some(({ at, cells, format }) => {
    const top = zoneAt(at);
    const cell = cells[row - top.row]?.[column - top.column];
    return cell !== undefined && cell !== null && isOfNumbers(format);
  });
  const inAnswer = plan.spills.some((spill) => {
    const top = zoneAt(spill.at);
    return top.row === row && headed(spill) === 0 && isOfNumbers(spill.formats?.[column - top.column]);
  });
  return inBlock || inAnswer;
}

function columnsOfAnswer(spill: SpillPlan): Zones {
  const { row, column } = zoneAt(spill.at);
  const { formats: given = [], rows } = spill;
  const zone = (i: number, deep: number): Zone => ({ row, column: column + i, rows: deep, columns: 1 });
  return {
    right: indexes(given, (format, i) => i < headed(spill) && isOfNumbers(format)).map((i) => zone(i, 1)),
    indented: indexes(given, (format, i) => !isOfNumbers(format) && isOfNumbers(given[i - 1])).map((i) =>
      zone(i, rows),
    ),
  };
}

/** How many cells of its first row are headings. */
export const headed = ({ rows, columns, headings }: SpillPlan): number => (rows > 1 ? (headings ?? columns) : 0);

const isOfNumbers = (format: string | undefined): boolean =>
  format !== undefined && format !== formats.text && format !== formats.general;

const indexes = <T>(line: readonly T[], holds: (one: T, i: number) => boolean): readonly number[] =>
  line.flatMap((one, i) => (holds(one, i) ? [i] : []));
