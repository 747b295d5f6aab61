import { OutOfRange } from "../basis/problem";
import { inches, type Inches } from "../basis/units";
import { isPriced, type BoardSize } from "./boardSize";
import { sawPlan, type SawOrder } from "./sawPlan";
import { sawYield, type SawYield } from "./sawYield";

/** Kerfs that are tried beside the owner's own: a thin and a common band, and a circular saw. [in] */
export const KERFS: readonly Inches[] = [inches(1 / 16), inches(1 / 8), inches(1 / 4)];

/** What one thing changed makes of a plan. */
export interface WhatIf {
  readonly kerf?: Inches;
  readonly more?: BoardSize;
  /** What the plan gives then; a sentence where there is none. */
  readonly gives: SawYield | string;
}

/**
 * The same log planned anew, one thing changed at a time: as it is, at other kerfs, with one product more. An edger's
 * kerf that the mill states stays as it is.
 */
export function whatIf(order: SawOrder, more: readonly BoardSize[]): readonly WhatIf[] {
  const yieldOf = (changed: SawOrder): SawYield | string => {
    try {
      return sawYield(sawPlan(changed));
    } catch (problem) {
      if (!(problem instanceof OutOfRange)) throw problem;
      return problem.message;
    }
  };
  const priced = isPriced(order.sizes);
  const kerfs = KERFS.filter((kerf) => Math.abs(kerf - order.kerf) > 1e-9);
  return [
    { gives: yieldOf(order) },
    ...kerfs.map((kerf) => ({ kerf, gives: yieldOf({ ...order, kerf }) })),
    ...more.map((size) => ({
      more: size,
      gives: isPriced([size]) === priced ? yieldOf({ ...order, sizes: [...order.sizes, size] }) : pricesDiffer(priced),
    })),
  ];
}

/** A plan goes for value or for board feet, never for a little of both. */
const pricesDiffer = (priced: boolean): string =>
  priced
    ? "Not tried: the boards have prices, this one has none. Give it one in $ per MBF or per piece."
    : "Not tried: the boards have no prices, this one has. Give every board a price, or leave this one's out.";
