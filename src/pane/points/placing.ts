import type { MapPoint } from "../../core/cruise/gridPoints";
import { toTenth } from "../../workbook/pointLayout";
import type { MappedPlot } from "../job/readMapped";

/** What writing points would do to the table of plots. */
export interface Placing {
  /** Name of each point, in walking order. */
  readonly names: readonly string[];
  readonly updates: readonly { readonly row: number; readonly east: number | null; readonly north: number | null }[];
  readonly appends: readonly { readonly name: number; readonly east: number; readonly north: number }[];
  /** Plots that were visited or have a place of their own, and so stay as they are. */
  readonly kept: readonly string[];
  /** Plots that have no place on this grid. */
  readonly spare: readonly string[];
  /** Plots, not visited, whose place an earlier grid gave and this one replaces. */
  readonly moved: readonly string[];
}

/** As near as a place that was rounded to the tenth of a foot comes to the grid it was taken from. [ft] */
const SAME_PLACE = 0.2;

/**
 * Gives points to plots: first to those that have no place and were not visited, in their order, then to those that an
 * earlier grid placed and no one has visited, then to new ones numbered on. What was entered by hand is never touched.
 *
 * @param entered true for a plot that was visited or has trees
 * @param before points of the grid that the workbook holds now
 */
export function placing(
  points: readonly MapPoint[],
  plots: readonly MappedPlot[],
  entered: (plot: MappedPlot) => boolean,
  before: readonly MapPoint[],
): Placing {
  const blank = ({ east, north }: MappedPlot) => east === null && north === null;
  const laid = ({ east, north }: MappedPlot) =>
    east !== null &&
    north !== null &&
    before.some((point) => Math.hypot(point.east - east, point.north - north) < SAME_PLACE);
  const free = plots.filter((plot) => !entered(plot) && (blank(plot) || laid(plot)));
  const filled = free.slice(0, points.length);
  const left = free.slice(points.length);
  const rest = points.slice(filled.length);
  const numbers = plots.map(({ name }) => Number(name)).filter(Number.isInteger);
  const next = Math.max(0, ...numbers) + 1;
  const appends = rest.map(({ east, north }, at) => ({ name: next + at, east: toTenth(east), north: toTenth(north) }));
  return {
    names: [...filled.map(({ name }) => name), ...appends.map(({ name }) => String(name))],
    updates: [
      ...filled.map(({ row }, at) => ({
        row,
        east: toTenth(points[at]?.east ?? 0),
        north: toTenth(points[at]?.north ?? 0),
      })),
      ...left.filter((plot) => !blank(plot)).map(({ row }) => ({ row, east: null, north: null })),
    ],
    appends,
    kept: plots.filter((plot) => !free.includes(plot)).map(({ name }) => name),
    spare: left.map(({ name }) => name),
    moved: free.filter((plot) => !blank(plot)).map(({ name }) => name),
  };
}

/** What writing would do, in words. */
export function placingInWords({ updates, appends, kept, spare }: Placing): readonly string[] {
  const placed = updates.filter(({ east }) => east !== null).length;
  const points = (count: number) => `${count} ${count === 1 ? "point" : "points"}`;
  return [
    ...(placed > 0 ? [`${points(placed)} of the sheet Points ${placed === 1 ? "gets its" : "get their"} place.`] : []),
    ...(appends.length > 0
      ? [`${points(appends.length)} ${appends.length === 1 ? "is" : "are"} added, from ${appends[0]?.name ?? ""} on.`]
      : []),
    ...(kept.length > 0
      ? [
          `${named(kept)} ${kept.length === 1 ? "was" : "were"} visited or placed by hand and ${kept.length === 1 ? "stays as it is" : "stay as they are"}.`,
        ]
      : []),
    ...(spare.length > 0
      ? [
          `${named(spare)} ${spare.length === 1 ? "has" : "have"} no place on this grid: take ${spare.length === 1 ? "it" : "them"} off the sheet Points, or lay a closer grid.`,
        ]
      : []),
  ];
}

const SHOWN = 6;

/** "Points 3, 8 and 11", not more than a few by name. */
export function named(names: readonly string[]): string {
  if (names.length === 1) return `Point ${names[0]}`;
  if (names.length > SHOWN) return `${names.length} points (${names.slice(0, 3).join(", ")} ... ${names.at(-1)})`;
  return `Points ${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
