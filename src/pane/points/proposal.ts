import { choiceNamed } from "../../core/basis/choices";
import { Problem } from "../../core/basis/problem";
import { acres, feet } from "../../core/basis/units";
import { gridInOutline } from "../../core/cruise/gridInOutline";
import type { MapPoint } from "../../core/cruise/gridPoints";
import { gridSpacing } from "../../core/cruise/gridSpacing";
import type { Place } from "../../core/cruise/localPlane";
import { outlineAcres, type Outline } from "../../core/cruise/outline";
import { southWest, startCorners } from "../../core/cruise/startCorners";
import { noLayout, toTenth, type PointLayout } from "../../workbook/pointLayout";
import type { LayoutState } from "./layoutState";
import { readAngles } from "./readAngles";

type Field = "spacing" | "seed" | "bearing" | "declination" | "pace" | "place";

/** What the view amounts to: the layout that would be written, and the points it has. */
export interface Proposal {
  readonly layout: PointLayout;
  readonly outline: Outline;
  readonly acres: number | undefined;
  readonly points: readonly MapPoint[];
  /** A sentence beside each box that cannot be used. */
  readonly problems: Readonly<Partial<Record<Field, string>>>;
  /** Why there are no points; "" when there are, or while there is no outline. */
  readonly problem: string;
}

const bounds: Readonly<
  Record<Exclude<Field, "place">, readonly [what: string, low: number, high: number, unit: string]>
> = {
  spacing: ["Spacing", 10, 5000, "ft"],
  seed: ["The seed", 1, 2 ** 31 - 1, ""],
  bearing: ["The bearing", 0, 360, "degrees"],
  declination: ["The declination", -180, 180, "degrees"],
  pace: ["A pace", 1, 10, "ft"],
};

/** Length of a pace while the owner has not counted his; a guess of ours. [ft] */
export const USUAL_PACE = 2.5;

/**
 * @param wanted acres and number of points of the plan, from which the usual spacing follows
 */
export function propose(
  form: LayoutState,
  saved: PointLayout,
  wanted: { readonly acres: number | null; readonly points: number },
): Proposal {
  const problems: Partial<Record<Field, string>> = {};
  const read = (field: keyof typeof bounds, usual: number | null): number | null => {
    const typed = form[field].trim();
    if (typed === "") return usual;
    const [what, low, high, unit] = bounds[field];
    const value = Number(typed);
    if (value >= low && value <= high && (field !== "seed" || Number.isInteger(value))) return value;
    problems[field] =
      field === "seed"
        ? `The seed should be a whole number above 0. You have "${typed}".`
        : `${what} should be between ${low} and ${high} ${unit}. You have "${typed}".`;
    return usual;
  };

  // As the sheet will hold them, so that the sheet and the map have the very same points.
  const outline: Outline = (form.reading?.corners ?? saved.corners).map(({ east, north }) => ({
    east: feet(toTenth(east)),
    north: feet(toTenth(north)),
  }));
  const size = tried(() => (outline.length === 0 ? undefined : outlineAcres(outline)));
  const origin = originOf(form, saved, problems);
  const area = typeof size.value === "number" ? size.value : wanted.acres;
  const usualSpacing = area && wanted.points > 0 ? Math.round(gridSpacing(acres(area), wanted.points)) : null;
  const layout: PointLayout = {
    ...noLayout,
    corners: outline,
    source: form.reading?.source ?? saved.source,
    latitude: origin?.latitude ?? null,
    longitude: origin?.longitude ?? null,
    spacing: read("spacing", saved.spacing ?? usualSpacing),
    seed: read("seed", saved.seed ?? form.drawn),
    bearing: read("bearing", saved.bearing) ?? 0,
    from: form.from || saved.from,
    declination: read("declination", saved.declination) ?? 0,
    pace: read("pace", saved.pace ?? USUAL_PACE),
  };
  const grid = tried(() => (size.value === undefined || layout.spacing === null ? [] : pointsOf(outline, layout)));
  const points = grid.value ?? [];
  return {
    layout: { ...layout, startCorner: nearestCorner(outline, points[0]) },
    outline,
    acres: size.value,
    points,
    problems,
    problem: size.problem || grid.problem,
  };
}

export const pointsOf = (outline: Outline, { spacing, seed, bearing, from }: PointLayout): readonly MapPoint[] =>
  gridInOutline(outline, {
    spacing: feet(spacing ?? 0),
    seed: seed ?? 0,
    bearing,
    from: choiceNamed(from, startCorners) ?? southWest,
  });

/** True when both layouts have the same points. */
export const sameGrid = (one: PointLayout, other: PointLayout): boolean =>
  one.spacing === other.spacing &&
  one.seed === other.seed &&
  one.bearing === other.bearing &&
  one.from === other.from &&
  one.corners.length === other.corners.length &&
  one.corners.every(({ east, north }, at) => {
    const there = other.corners[at];
    return there !== undefined && Math.hypot(east - there.east, north - there.north) < 0.1;
  });

/** Where 0, 0 lies: as the outline itself tells, or as typed, or as the workbook has it. */
function originOf(form: LayoutState, saved: PointLayout, problems: Partial<Record<Field, string>>): Place | undefined {
  if (form.reading?.origin) return form.reading.origin;
  if (form.place.trim() !== "") {
    const typed = tried(() => readAngles(form.place.trim(), 1));
    if (typed.value) return typed.value;
    problems.place = `This needs a latitude and a longitude, such as 44.12345, -89.56789. You have "${form.place}".`;
    return undefined;
  }
  if (form.reading || saved.latitude === null || saved.longitude === null) return undefined;
  return { latitude: saved.latitude, longitude: saved.longitude };
}

/** Counted from 1; null without points. */
function nearestCorner(outline: Outline, point: MapPoint | undefined): number | null {
  if (!point || outline.length === 0) return null;
  const away = outline.map(({ east, north }) => Math.hypot(east - point.east, north - point.north));
  return away.indexOf(Math.min(...away)) + 1;
}

function tried<T>(work: () => T): { readonly value: T | undefined; readonly problem: string } {
  try {
    return { value: work(), problem: "" };
  } catch (problem) {
    if (problem instanceof Problem) return { value: undefined, problem: problem.message };
    throw problem;
  }
}
