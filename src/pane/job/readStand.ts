import type { WorkbookHost } from "../../workbook/host";
import type { CellValue } from "../../workbook/plan";
import { out } from "../../workbook/tables";
import { readAnswer, type Spill } from "./spill";

/** A number and its margin, which are one thing; the margin is null where the sheet has none. */
export interface Estimated {
  readonly what: string;
  readonly value: number;
  readonly margin: number | null;
  readonly percent: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Every tree was tallied, so that a margin does not apply. */
  readonly complete?: true;
}

export interface PointFigures {
  readonly plot: string;
  readonly trees: number;
  readonly basalArea: number;
  readonly volume: number;
}

export interface DiameterClass {
  readonly inches: number;
  readonly total: number;
}

/** The answers of the sheet Stand, as they stand there now. */
export interface StandAnswers {
  readonly summary: readonly Estimated[];
  /** Why there is no summary; "" when there is one. */
  readonly lacking: string;
  /** The error that the sheet shows in place of the summary; "" for none. */
  readonly error: string;
  /** Trees that are not kept back, and the lumber they should saw out to, per acre. */
  readonly harvest: readonly Estimated[];
  readonly lumber: readonly Estimated[];
  readonly tract: Estimated | undefined;
  readonly tractHarvest: Estimated | undefined;
  readonly tractLumber: Estimated | undefined;
  /** Further points for the margin that is wanted; undefined while the sheet does not know. */
  readonly morePoints: number | undefined;
  readonly points: readonly PointFigures[];
  readonly classes: readonly DiameterClass[];
}

export async function readStand(host: WorkbookHost): Promise<StandAnswers> {
  const [summary, harvest, lumber, tract, tractHarvest, tractLumber, plots, stand, more] = await Promise.all(
    [
      out.summary,
      out.harvest,
      out.lumber,
      out.tract,
      out.tractHarvest,
      out.tractLumber,
      out.plots,
      out.stand,
      out.morePlots,
    ].map((name) => readAnswer(host, name)),
  );
  const further = more?.kind === "rows" ? more.rows[0]?.[0] : undefined;
  const measures = estimates(summary);
  return {
    summary: measures,
    lacking: measures.length > 0 ? "" : summary?.kind === "none" ? summary.because : "No trees yet.",
    error: summary?.kind === "none" ? (summary.error ?? "") : "",
    harvest: estimates(harvest),
    lumber: estimates(lumber),
    tract: total(tract, "Whole stand"),
    tractHarvest: total(tractHarvest, "Harvest"),
    tractLumber: total(tractLumber, "Lumber from the harvest"),
    morePoints: typeof further === "number" ? further : undefined,
    points: lines(plots).flatMap(([plot, trees, , basalArea, volume]) =>
      typeof trees === "number"
        ? [{ plot: String(plot), trees, basalArea: numberOr(basalArea, 0), volume: numberOr(volume, 0) }]
        : [],
    ),
    classes: lines(stand).flatMap((row) => {
      const [inches, all] = [row[0], row.at(-1)];
      return typeof inches === "number" && typeof all === "number" ? [{ inches, total: all }] : [];
    }),
  };
}

/** One measure of a summary, found by how its name begins. */
export const measure = (summary: readonly Estimated[], begins: string) =>
  summary.find(({ what }) => what.toLowerCase().startsWith(begins.toLowerCase()));

const lines = (spill: Spill | undefined) => (spill?.kind === "rows" ? spill.rows.slice(1) : []);

const estimates = (spill: Spill | undefined): readonly Estimated[] =>
  lines(spill).flatMap(([what, ...numbers]) => estimated(String(what ?? ""), numbers) ?? []);

/** A total comes as one row of numbers, with or without a heading above it. */
function total(spill: Spill | undefined, what: string): Estimated | undefined {
  if (spill?.kind !== "rows") return undefined;
  const row = spill.rows.find(([first]) => typeof first === "number");
  if (!row) return undefined;
  const [value, margin, low, high] = row;
  const percent = typeof value === "number" && typeof margin === "number" && value > 0 ? (100 * margin) / value : null;
  return estimated(what, [value ?? null, margin ?? null, percent, low ?? null, high ?? null]);
}

function estimated(what: string, [value, margin, percent, low, high]: readonly CellValue[]): Estimated | undefined {
  if (typeof value !== "number") return undefined;
  return {
    what,
    value,
    margin: numberOr(margin, null),
    percent: numberOr(percent, null),
    low: numberOr(low, null),
    high: numberOr(high, null),
    ...(margin === "not applicable" && { complete: true }),
  };
}

const numberOr = <T>(value: CellValue | undefined, otherwise: T) => (typeof value === "number" ? value : otherwise);
