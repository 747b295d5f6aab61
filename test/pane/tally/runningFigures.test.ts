import { expect, it } from "vitest";
import type { Job, SavedPlot } from "../../../src/pane/job/job";
import { runningFigures } from "../../../src/pane/tally/runningFigures";

const plot = (name: string, size: number | null): SavedPlot => ({
  row: 0,
  name,
  value: name,
  visited: false,
  empty: false,
  size,
  check: "",
  accepted: "",
});
const job = { method: "Point", size: 10, plots: [plot("1", null), plot("2a", 20)] } as unknown as Job;
const trees = [12, 14, 22].map((dbh) => ({
  species: "ro",
  dbh,
  logs: null,
  height: null,
  count: 1,
  cull: null,
  note: "",
}));

it("a point has its trees times the factor of Setup, or times its own", () => {
  expect(runningFigures(trees, job, "1").basalArea).toBeCloseTo(30, 9);
  expect(runningFigures(trees, job, "2A").basalArea).toBeCloseTo(60, 9);
  expect(runningFigures(trees, job).basalArea).toBeCloseTo(30, 9);
});
