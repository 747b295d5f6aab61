import { answersOf } from "../support/answers";
import { numberIn, published, type PublishedRow } from "../support/published";
import type { Comparison } from "./comparison";

/** One column of a published table against ours. */
export function ofTable(
  path: string,
  subject: string,
  unit: string,
  quantity: string,
  ours: (row: PublishedRow) => number,
  step?: number,
): Comparison {
  const { source, standing, printedTo, rows } = published(path);
  const pairs = rows.map((row) => ({ printed: numberIn(row, quantity), ours: ours(row) }));
  return { subject, source, standing, unit, printedTo: step ?? printedTo, pairs };
}

/** Answers of one example, each printed to its own step. */
export function ofAnswers(
  path: string,
  subject: string,
  unit: string,
  ours: Readonly<Record<string, number>>,
): Comparison[] {
  const { source, standing } = published(path);
  const answer = answersOf(path);
  return Object.entries(ours).map(([quantity, value]) => {
    const { printed, printedTo } = answer(quantity);
    return { subject: `${subject}: ${quantity}`, source, standing, unit, printedTo, pairs: [{ printed, ours: value }] };
  });
}
