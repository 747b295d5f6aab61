import type { WorkbookHost } from "../../workbook/host";
import { noLayout, type PointLayout } from "../../workbook/pointLayout";
import { corner, named, OUTLINE, plot as plotHeading, PLOTS } from "../../workbook/tables";
import { number, positive, text, yes } from "./cells";

/** A plot of the workbook and its place on the map, where it has one. */
export interface MappedPlot {
  /** Row of the table of plots, counted from 0. */
  readonly row: number;
  readonly name: string;
  readonly east: number | null;
  readonly north: number | null;
  readonly visited: boolean;
}

/** What the workbook knows of the map: the layout, and the plots. */
export interface Mapped {
  readonly layout: PointLayout;
  readonly plots: readonly MappedPlot[];
}

const names = [
  named.spacing,
  named.seed,
  named.linesBearing,
  named.walkFrom,
  named.startCorner,
  named.declination,
  named.pace,
  named.latitude,
  named.longitude,
  named.outlineFrom,
];

/** Reads the layout and the places of the plots; an older workbook has no sheet for the outline. */
export async function readMapped(host: WorkbookHost): Promise<Mapped> {
  const [hasOutline, hasPlots] = await Promise.all([host.hasTable(OUTLINE), host.hasTable(PLOTS)]);
  const plots = hasPlots ? (await host.readTable(PLOTS)).rows : [];
  return {
    layout: hasOutline ? await readLayout(host) : noLayout,
    plots: plots
      .map((row, at) => ({
        row: at,
        name: text(row[plotHeading.plot]),
        east: number(row[plotHeading.east]),
        north: number(row[plotHeading.north]),
        visited: yes(row[plotHeading.visited]) || yes(row[plotHeading.none]),
      }))
      .filter(({ name }) => name !== ""),
  };
}

async function readLayout(host: WorkbookHost): Promise<PointLayout> {
  const [{ rows }, values] = await Promise.all([host.readTable(OUTLINE), host.readNames(names)]);
  return {
    corners: rows.flatMap((row) => {
      const [east, north] = [number(row[corner.east]), number(row[corner.north])];
      return east === null || north === null ? [] : [{ east, north }];
    }),
    source: text(values[named.outlineFrom]),
    latitude: number(values[named.latitude]),
    longitude: number(values[named.longitude]),
    spacing: positive(values[named.spacing]),
    seed: number(values[named.seed]),
    bearing: number(values[named.linesBearing]) ?? noLayout.bearing,
    from: text(values[named.walkFrom]) || noLayout.from,
    declination: number(values[named.declination]) ?? noLayout.declination,
    pace: positive(values[named.pace]),
    startCorner: positive(values[named.startCorner]),
  };
}
