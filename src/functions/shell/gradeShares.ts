import { chosen, textOf, type Choice } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import type { GradeShare, Rates } from "../../core/sawing/planValue";
import { blank, rowsSaying } from "./listCells";
import { asCells, boundedNumber, isLeftOut } from "./readings";

const isHeading = (row: readonly unknown[]) => row.slice(1).some((cell) => typeof cell === "string" && !blank(cell));

/** Grade, share in percent and price in $ per MBF, a row each. */
export function gradeShares(given: unknown): readonly GradeShare[] {
  const rows = rowsSaying(asCells(given), isHeading);
  if (rows.length === 0) throw new InvalidInput("Give at least one grade: its name, its share in percent, its price.");
  return rows.map(([name, share, price], i) => ({
    name: blank(name) ? `Grade ${i + 1}` : textOf(name).slice(0, 60),
    share: blank(share) ? 0 : boundedNumber(share, "Grade share", { unit: "%", low: 0, high: 100 }),
    price: blank(price) ? 0 : boundedNumber(price, "Grade price", { unit: "$ per MBF", low: 0, high: 1e6 }),
  }));
}

interface Rate extends Choice {
  readonly id: keyof Rates;
  readonly unit: string;
}

const kinds: readonly Rate[] = [
  { id: "slabs", title: "Slabs", aliases: ["Slabs $ per ft3", "Slabs and edgings"], unit: "$ per ft3" },
  { id: "sawdust", title: "Sawdust", aliases: ["Sawdust $ per ft3"], unit: "$ per ft3" },
  {
    id: "perHour",
    title: "Board feet per hour",
    aliases: ["Throughput", "Throughput bf per hour"],
    unit: "bf per hour",
  },
];

/** Names in the first column, their numbers in the second; one without a number is not known. */
export function ratesOf(given: unknown): Rates {
  if (isLeftOut(given)) return {};
  const rows = rowsSaying(asCells(given), isHeading).flatMap(([name, value]) => {
    const { id, title, unit } = chosen("Rate", name, kinds);
    return blank(value) ? [] : [[id, boundedNumber(value, title, { unit, low: 0, high: 1e6 })] as const];
  });
  return Object.fromEntries(rows);
}
