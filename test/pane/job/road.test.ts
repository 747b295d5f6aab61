import { describe, expect, it } from "vitest";
import { readJob } from "../../../src/pane/job/readJob";
import type { Job } from "../../../src/pane/job/job";
import { roadOf } from "../../../src/pane/job/road";
import { tree, TREES } from "../../../src/workbook/tables";
import { practiceSheets } from "../../browser/pane/practiceSheets";
import { cruiseCalculation } from "../../support/cruiseCalculation";
import { memoryHost } from "../../support/memoryHost";

/** The step Cut of the practice cruise, with these marks and no others. */
async function cutStep(marks: Readonly<Record<number, string>>) {
  const host = memoryHost(cruiseCalculation);
  await host.lay(practiceSheets());
  const { rows } = await host.readTable(TREES);
  await host.updateRows(
    TREES,
    rows.map((_, row) => ({ row, changes: { [tree.take]: marks[row] ?? null } })),
  );
  return roadOf((await readJob(host)) as Job, undefined, undefined).steps.find(({ title }) => title === "Cut");
}

describe("the step Cut of the job", () => {
  it("is not begun while no tree is marked to stay, however many are marked to go", async () => {
    expect(await cutStep({ 0: "Yes", 1: "Yes" })).toEqual({
      title: "Cut",
      state: "not started",
      done: false,
      view: "cut",
    });
  });

  it.each([
    [{ 0: "No" }, "1 tally row stays"],
    [{ 0: "No", 1: "Yes", 2: "no" }, "2 tally rows stay"],
  ])("tells the rows that stay: %j", async (marks, state) => {
    expect(await cutStep(marks)).toMatchObject({ state, done: true });
  });

  it("has not begun before there is a workbook", () => {
    const { steps, next } = roadOf("none", undefined, undefined);
    expect(steps.find(({ title }) => title === "Cut")?.state).toBe("not started");
    expect(next.view).toBe("plan");
  });
});
