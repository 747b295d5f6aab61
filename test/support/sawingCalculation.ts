import { sawBound } from "../../src/functions/sawBound";
import { sawLayout, sawPlan, sawYield } from "../../src/functions/sawing";
import { sawWhatIf } from "../../src/functions/sawChoices";
import { scalingLength } from "../../src/functions/scaling";
import type { CellValue } from "../../src/workbook/plan";
import { board, BOARD_SIZES, log, LOGS, mill, MILL, MORE_PRODUCTS, named, out } from "../../src/workbook/tables";
import type { MemoryBook } from "./memoryHost";

/** The answers of the sheet Sawing over a book in memory, for the log that is picked there. */
export function sawingAnswers(book: MemoryBook): Readonly<Record<string, () => CellValue[][]>> {
  const rows = (table: string) => book.tables.get(table)?.rows ?? [];
  const columns = (table: string, headings: readonly string[]) =>
    rows(table).map((row) => headings.map((heading) => row[heading] ?? null));
  const picked = rows(LOGS).find((row) => row[log.log] === book.names.get(named.pickedLog));
  const cell = (heading: string) => [[picked?.[heading] ?? null]];
  const name = (word: string) => book.names.get(word) as never;
  const list = (table: string) =>
    columns(table, [board.sawn, board.width, board.length, board.product, board.each, board.price]);
  const order = (): Parameters<typeof sawPlan> => [
    [...cell(log.smallEnd), ...cell(log.second)],
    cell(log.largeEnd),
    scalingLength(cell(log.length), name(named.trim), name(named.lengthStep)),
    list(BOARD_SIZES),
    name(named.kerf),
    name(named.pattern),
    columns(MILL, [mill.limit, mill.value]),
  ];
  return {
    [out.sawPlan]: () => sawPlan(...order()),
    [out.sawYield]: () => sawYield(...order()),
    [out.sawBound]: () => sawBound(...(order() as unknown as Parameters<typeof sawBound>)),
    [out.sawWhatIf]: () => {
      const [small, large, length, boards]: readonly unknown[] = order();
      const [kerf, pattern, mill] = order().slice(4) as unknown[];
      return sawWhatIf(
        small as unknown[][],
        large as unknown[][],
        length as unknown[][],
        boards as unknown[][],
        kerf,
        pattern as never,
        list(MORE_PRODUCTS),
        mill as unknown[][],
      );
    },
    // As IFERROR leaves it on the sheet: a gap is a blank.
    [out.sawLayout]: () =>
      sawLayout(...order()).map((row: unknown[]) =>
        row.map((value) => (typeof value === "number" || typeof value === "string" ? value : "")),
      ),
  };
}
