import { InvalidInput } from "../basis/problem";
import { requireNotNegative } from "../basis/require";
import type { Source } from "../basis/source";
import type { SawPlan } from "./sawingPattern";
import { solidVolume } from "./sawLog";
import { sawYield } from "./sawYield";

export const sources: readonly Source[] = [
  {
    author: "Woodlot Reckoner",
    year: "2026",
    title: "Lumber by the owner's own grade shares, slabs and sawdust by volume, hours by his own throughput",
    where: "core/sawing/planValue",
    standing: "choice of ours",
  },
];

/** A grade, the share of the lumber that the owner expects in it, and its price. */
export interface GradeShare {
  readonly name: string;
  /** [%] */
  readonly share: number;
  /** [$/MBF] */
  readonly price: number;
}

/** What the rest of the log brings, and how fast the owner saws; what is not known is left out. */
export interface Rates {
  /** [$/ft3 of solid wood] */
  readonly sawdust?: number;
  readonly slabs?: number;
  /** [bf/h] */
  readonly perHour?: number;
}

export interface ValueLine {
  readonly item: string;
  readonly amount: number;
  readonly unit: "bf" | "ft3" | "h" | "$/h" | "";
  /** $ per MBF of lumber, per ft3 of the rest. */
  readonly price?: number;
  readonly value?: number;
}

/**
 * What a plan is worth by the grades that the owner expects, with slabs, sawdust and hours.
 *
 *     lumber of a grade = B s / 100,  worth p / 1000 a board foot
 *     slabs, sawdust    = V share / 100,  worth so much a cubic foot of solid wood
 *     hours             = B / r
 *
 *     B  board feet of the plan    s, p  share [%] and price [$/MBF] of a grade
 *     V  solid wood of the log [ft3]    r  board feet sawn in an hour
 *
 * @throws InvalidInput when a number is below 0 or the shares do not add to 100
 */
export function planValue(plan: SawPlan, grades: readonly GradeShare[], rates: Rates): readonly ValueLine[] {
  const { boardFeet, sawdust, slab } = sawYield(plan);
  const wood = solidVolume(plan.log);
  for (const { share, price } of grades) {
    requireNotNegative("Grade share", share, "%");
    requireNotNegative("Grade price", price, "$ per MBF");
  }
  const shares = grades.reduce((sum, { share }) => sum + share, 0);
  if (Math.abs(shares - 100) > 0.01) {
    throw new InvalidInput(`Grade shares should add to 100 %. You have ${Number(shares.toFixed(2))}.`);
  }
  const priced = (item: string, amount: number, price: number | undefined): ValueLine => ({
    item,
    amount,
    unit: "ft3",
    ...(price !== undefined && { price, value: amount * price }),
  });
  const lines: ValueLine[] = [
    ...grades.map(({ name, share, price }): ValueLine => {
      const amount = (boardFeet * share) / 100;
      return { item: name, amount, unit: "bf", price, value: (amount * price) / 1000 };
    }),
    priced("Slabs and edgings", (wood * slab) / 100, rates.slabs),
    priced("Sawdust", (wood * sawdust) / 100, rates.sawdust),
  ];
  const total = lines.reduce((sum, { value = 0 }) => sum + value, 0);
  const hours = rates.perHour === undefined ? undefined : boardFeet / rates.perHour;
  return [
    ...lines,
    { item: "Whole log", amount: boardFeet, unit: "bf", value: total },
    ...(hours === undefined
      ? []
      : ([
          { item: "Hours at the mill", amount: hours, unit: "h" },
          { item: "Value per hour", amount: total / hours, unit: "$/h" },
        ] as const)),
  ];
}
