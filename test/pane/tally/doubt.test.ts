import { beforeAll, expect, it } from "vitest";
import { demoWorkbook } from "../../../src/demo/demoWorkbook";
import type { Job } from "../../../src/pane/job/job";
import { readJob } from "../../../src/pane/job/readJob";
import { doubt } from "../../../src/pane/tally/doubt";
import { cruiseCalculation } from "../../support/cruiseCalculation";
import { memoryHost } from "../../support/memoryHost";

let job: Job;
beforeAll(async () => {
  const host = memoryHost(cruiseCalculation);
  await host.lay(demoWorkbook());
  job = { ...((await readJob(host)) as Job), minDbh: 5 };
});

const asked = (dbh: number, logs: number | null, species = "ro") =>
  doubt({ species, dbh, logs, height: null, count: 1, cull: null, note: "" }, "1", job);

it.each([
  ["a thin tree of half a log", 8, 0.5],
  ["half a log", 14, 0.5],
  ["five logs, which the tapers do not reach", 24, 5],
])("warns before saving that the tables do not cover %s", (_, dbh, logs) => {
  expect(asked(dbh, logs)).toMatch(/You have .*the whole stand has no volume; without logs, the tree still counts\.$/);
});

it("says nothing of trees that the tables cover, or that have no logs", () => {
  expect([asked(14, 2.5), asked(10, 1), asked(8, null)]).toEqual(["", "", ""]);
});

it("asks about the diameter alone where that is the slip, and about all else together", () => {
  expect(asked(143, 2)).toBe("DBH 143 in is over your 60 in limit. Missing a decimal point?");
  expect(asked(8, 0.5, "zz")).toMatch(/"zz" is not in your species list.*no volume/);
});
