import { feet } from "../../core/basis/units";
import { Problem } from "../../core/basis/problem";
import { noLayout, type PointLayout } from "../../workbook/pointLayout";
import { treesOn, type Job } from "../job/job";
import type { Mapped, MappedPlot } from "../job/readMapped";
import type { LayoutState } from "./layoutState";
import { placing, type Placing } from "./placing";
import { pointsOf, propose, sameGrid, type Proposal } from "./proposal";
import type { NamedPoint } from "./walk";

/** Everything the view Lay out points shows, worked out from what is typed and what the workbook holds. */
export interface PointsModel {
  readonly proposal: Proposal;
  readonly saved: PointLayout;
  /** Points on the map, by the names they have or would get. */
  readonly shown: readonly NamedPoint[];
  /** True while the map shows what would be written and not what stands on the sheet. */
  readonly proposed: boolean;
  readonly placing: Placing;
  /** Points planned: rows of the table of plots. */
  readonly planned: number;
}

export function pointsModel(job: Job, mapped: Mapped | undefined, form: LayoutState): PointsModel {
  const saved = mapped?.layout ?? noLayout;
  const plots = mapped?.plots ?? [];
  const proposal = propose(form, saved, { acres: job.acres, points: plots.length });
  const placed = placedPoints(plots);
  const proposed =
    proposal.points.length > 0 && (placed.length === 0 || (form.changed && !sameGrid(proposal.layout, saved)));
  const entered = (plot: MappedPlot) => plot.visited || treesOn(job, plot.name).length > 0;
  const plan = placing(proposal.points, plots, entered, standing(saved));
  const shown = proposed
    ? proposal.points.map((point, at) => ({ ...point, name: plan.names[at] ?? "", visited: false }))
    : placed;
  return { proposal, saved, shown, proposed, placing: plan, planned: plots.length };
}

const placedPoints = (plots: readonly MappedPlot[]): readonly NamedPoint[] =>
  plots.flatMap(({ name, east, north, visited }) =>
    east === null || north === null ? [] : [{ name, visited, east: feet(east), north: feet(north) }],
  );

/** Points of the grid that the workbook tells of; none when it tells of none that can be laid. */
function standing(saved: PointLayout) {
  if (saved.corners.length === 0 || saved.spacing === null) return [];
  try {
    return pointsOf(
      saved.corners.map(({ east, north }) => ({ east: feet(east), north: feet(north) })),
      saved,
    );
  } catch (problem) {
    if (problem instanceof Problem) return [];
    throw problem;
  }
}
