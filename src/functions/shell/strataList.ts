import { InvalidInput } from "../../core/basis/problem";
import { BadRows } from "./badRows";
import { column, filledRows, isNothing, numberAt, sharedRows } from "./columns";

/** A stratum and the numbers that stand beside its name, in the unit they were given in. */
export interface ListedStratum {
  readonly name: string;
  readonly acres?: number;
  readonly mean?: number;
  readonly variation?: number;
}

const ACRES = { unit: "ac", low: 0.01, high: 1e6 };
const BOUNDS = {
  acres: ["Acres", ACRES],
  mean: ["Mean", { unit: "", low: 0, high: 1e9 }],
  variation: ["Coefficient of variation", { unit: "%", low: 0, high: 1000 }],
} as const;

/** A list of strata and what stands beside each name; a row without a name is passed over. */
export function strataList(names: unknown, beside: Partial<Record<keyof typeof BOUNDS, unknown>>): ListedStratum[] {
  const name = column(names, "Stratum");
  const columns = (Object.keys(beside) as (keyof typeof BOUNDS)[]).map((key) => ({
    key,
    list: column(beside[key], BOUNDS[key][0]),
  }));
  const rows = Math.min(sharedRows([name, ...columns.map(({ list }) => list)]), filledRows(name));
  const bad = new BadRows("Strata list, row");
  const seen = new Set<string>();
  const listed: ListedStratum[] = [];
  for (let row = 0; row < rows; row += 1) {
    const cell = name.at(row);
    if (isNothing(cell)) continue;
    bad.guard(row, () => {
      const called = String(cell).trim();
      if (seen.has(called.toLowerCase()))
        throw new InvalidInput(`stratum "${called.slice(0, 60)}" stands there twice.`);
      seen.add(called.toLowerCase());
      const numbers = columns.map(({ key, list }) => [key, numberAt(list, row, BOUNDS[key][1], 0)] as const);
      if (numbers.some(([key, number]) => key === "acres" && number === 0))
        throw new InvalidInput("Acres are missing.");
      listed.push({ name: called, ...Object.fromEntries(numbers) });
    });
  }
  bad.settle();
  return listed;
}
