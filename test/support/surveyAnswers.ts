import { numberIn, published, type PublishedRow } from "./published";

/** What the package survey made of a sample that its script invented. */
export function surveyAnswer(design: string, sample: string): (quantity: string) => number {
  const { rows } = published("cruise/survey-answers.csv");
  return (quantity) => {
    const row = rows.find((one) => one.design === design && one.sample === sample && one.quantity === quantity);
    if (!row) throw new Error(`no ${quantity} of ${design}, sample ${sample}`);
    return numberIn(row, "value");
  };
}

/** The samples of one design, each with its rows. */
export function surveySamples(path: string): readonly (readonly [string, readonly PublishedRow[]])[] {
  const samples = new Map<string, PublishedRow[]>();
  for (const row of published(path).rows)
    samples.set(row.sample ?? "", [...(samples.get(row.sample ?? "") ?? []), row]);
  return [...samples];
}

/** Rows put together by a column, in the order in which its names come. */
export function groupedBy(rows: readonly PublishedRow[], column: string): readonly (readonly PublishedRow[])[] {
  const groups = new Map<string, PublishedRow[]>();
  for (const row of rows) groups.set(row[column] ?? "", [...(groups.get(row[column] ?? "") ?? []), row]);
  return [...groups.values()];
}
