import { beforeAll, describe, expect, it } from "vitest";
import { demoContent } from "../../../src/demo/demoWorkbook";
import type { Job } from "../../../src/pane/job/job";
import { readJob } from "../../../src/pane/job/readJob";
import { whyNoStand } from "../../../src/pane/job/whyNoStand";
import { workbookPlan } from "../../../src/workbook/workbookPlan";
import { cruiseCalculation } from "../../support/cruiseCalculation";
import { memoryHost } from "../../support/memoryHost";

let demo: Job;
beforeAll(async () => {
  const host = memoryHost(cruiseCalculation);
  await host.lay(workbookPlan(demoContent));
  demo = (await readJob(host)) as Job;
});

const FEW = "There is not enough data yet: a margin of error needs at least 2 points with their trees.";
const check = "The tables have no volume for it, so the stand has none either: correct DBH or logs.";

describe("why the stand has no figures", () => {
  it("is the tree that the tables do not cover, in its own sentence", () => {
    const trees = demo.trees.map((one) => (one.row === 4 ? { ...one, volume: null, check } : one));
    expect(whyNoStand({ ...demo, trees }, { lacking: FEW, error: "#N/A" })).toBe(
      `Point ${demo.trees[4]?.plot}, tree in row 5: ${check}`,
    );
  });

  it("is a lack of points only where points are lacking", () => {
    const one = demo.plots.slice(0, 1);
    const few = { ...demo, plots: one, trees: demo.trees.filter(({ plot }) => plot === one[0]?.name) };
    expect(whyNoStand(few, { lacking: FEW, error: "#N/A" })).toBe(FEW);
    expect(whyNoStand(demo, { lacking: FEW, error: "#N/A" })).not.toMatch(/2 points/);
  });

  it("is what the sheet says of itself otherwise", () => {
    expect(whyNoStand(demo, { lacking: "No trees yet.", error: "" })).toBe("No trees yet.");
  });
});
