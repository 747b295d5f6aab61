import { buckHabits, buckPlan } from "../../src/functions/bucking";
import type { CellValue } from "../../src/workbook/plan";
import { flaw, named, out, product, PRODUCTS, species, SPECIES, STEM_FLAWS } from "../../src/workbook/tables";
import type { MemoryBook } from "./memoryHost";

/** The answers of the sheet Bucking over a book in memory. */
export function buckingAnswers(book: MemoryBook): Readonly<Record<string, () => CellValue[][]>> {
  const rows = (table: string) => book.tables.get(table)?.rows ?? [];
  const columns = (table: string, headings: readonly string[]) =>
    rows(table).map((row) => headings.map((heading) => row[heading] ?? null));
  const name = (word: string) => book.names.get(word) as never;
  const meant = () => {
    const code = name(named.stemSpecies);
    return rows(SPECIES).find((row) => row[species.code] === code)?.[species.name] ?? code;
  };
  const order = (): Parameters<typeof buckPlan> => [
    meant(),
    name(named.stemDbh),
    name(named.stemHeight),
    columns(PRODUCTS, [
      product.product,
      product.smallestEnd,
      product.shortest,
      product.longest,
      product.step,
      product.soldBy,
      product.price,
    ]),
    name(named.stemStump),
    name(named.stemTrim),
    columns(STEM_FLAWS, [flaw.from]),
    columns(STEM_FLAWS, [flaw.to]),
    "",
    "",
    name(named.stemLogs),
    name(named.formClass),
    name(named.units),
  ];
  return {
    [out.buckPlan]: () => buckPlan(...order()),
    [out.buckHabits]: () => buckHabits(...order()),
  };
}
