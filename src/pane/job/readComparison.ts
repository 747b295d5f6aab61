import type { WorkbookHost } from "../../workbook/host";
import { named, out } from "../../workbook/tables";
import { readAnswer } from "./spill";

/** One way to sell, with its range, as the sheet Compare has it. */
export interface Way {
  readonly name: string;
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
  /** Its rank, or that it is too close to call. */
  readonly verdict: string;
}

export interface Comparison {
  readonly ways: readonly Way[];
  /** Why there is nothing to compare; "" when there is. */
  readonly lacking: string;
  /** The sheet's own sentence on which way comes out ahead. */
  readonly verdict: string;
  /** Words that stand over the prices while they are invented or without a source. */
  readonly priceNotice: string;
}

export async function readComparison(host: WorkbookHost): Promise<Comparison> {
  const answer = await readAnswer(host, out.compare);
  if (answer.kind === "none") return { ways: [], lacking: answer.because, verdict: "", priceNotice: "" };
  const words = await host.readNames([named.verdict, named.priceNotice]);
  const [headings = [], ...rows] = answer.rows;
  const place = (word: string, otherwise: number) => {
    const found = headings.findIndex((heading) =>
      String(heading ?? "")
        .toLowerCase()
        .startsWith(word),
    );
    return found < 0 ? otherwise : found;
  };
  const [value, low, high] = [place("value", 1), place("low", 2), place("high", 3)];
  const ways = rows.flatMap((row) => {
    const worth = row[value];
    if (typeof worth !== "number") return [];
    const bound = (at: number) => (typeof row[at] === "number" ? row[at] : null);
    return [
      {
        name: String(row[0] ?? ""),
        value: worth,
        low: bound(low),
        high: bound(high),
        verdict: String(row.at(-1) ?? ""),
      },
    ];
  });
  return {
    ways,
    lacking: ways.length > 0 ? "" : "The sheet Compare has no prices to work with yet.",
    verdict: String(words[named.verdict] ?? ""),
    priceNotice: String(words[named.priceNotice] ?? ""),
  };
}
