import { describe, expect, it } from "vitest";
import { logRule } from "../../../src/core/log/findLogRule";
import { demoContent } from "../../../src/demo/demoWorkbook";
import { readJob } from "../../../src/pane/job/readJob";
import { logDoubt } from "../../../src/pane/logs/logDoubt";
import { scaledBy } from "../../../src/pane/logs/scaledBy";
import { scaleOrWhy, sheetTotal, totalsByRule } from "../../../src/pane/logs/scaleFigures";
import { usualSettings } from "../../../src/workbook/settings";
import { workbookPlan } from "../../../src/workbook/workbookPlan";
import { cruiseCalculation } from "../../support/cruiseCalculation";
import { memoryHost } from "../../support/memoryHost";

const plain = { ...usualSettings.scale, rule: "Doyle" };
const measured = { smallEnd: 14, length: 16, largeEnd: null, deduction: null };
const by = (change: Partial<typeof plain>, given: object = {}) =>
  scaledBy(logRule("Doyle"), { ...measured, ...given }, { ...plain, ...change });

// Doyle is plain arithmetic: ((D - 4) / 4)^2 L, so 100 bf for 14 in by 16 ft and 121 bf for 15 in.
describe("a log as the buyer's scaler writes it down", () => {
  it("is what the rule gives for whole measures", () => {
    expect(by({})).toEqual({ diameter: 14, length: 16, gross: 100, net: 100 });
  });

  it("has its diameter rounded the buyer's way", () => {
    expect(by({ diameterRounding: "Half down" }, { smallEnd: 14.5 }).gross).toBe(100);
    expect(by({ diameterRounding: "Half up" }, { smallEnd: 14.5 }).gross).toBe(121);
    expect(by({ diameterRounding: "Always down" }, { smallEnd: 14.9 }).gross).toBe(100);
    expect(by({ diameterRounding: "None", rounding: "None" }, { smallEnd: 14.5 }).gross).toBeCloseTo(110.25, 9);
  });

  it("takes the mean of two readings", () => {
    expect(by({}, { smallEnd: 13, second: 17 }).diameter).toBe(15);
  });

  it("loses its trim, and drops to the next lower step", () => {
    expect(by({ trim: 0.33 }, { length: 16.33 }).length).toBe(16);
    expect(by({ trim: 0.33 }, { length: 16.2 }).length).toBe(15);
    expect(by({ lengthStep: 2 }, { length: 15.9 }).length).toBe(14);
  });

  it("is scaled in segments beyond the longest length, each as thick as the log where its large end is known", () => {
    // By Doyle, which builds in no taper, 2 x 100 for 32 ft in two; with 14 to 18 in the lower one is 16 in: 100 + 144.
    expect(by({ longest: 16 }, { length: 32 }).gross).toBe(200);
    expect(by({ longest: 16 }, { length: 32, largeEnd: 18 }).gross).toBe(244);
  });

  it("is scaled without its large end where rounding made the small end the thicker one", () => {
    expect(by({}, { smallEnd: 14.6, largeEnd: 14.8 }).gross).toBe(121);
  });

  it("has its deduction off the gross scale", () => {
    expect(by({}, { deduction: 15 })).toMatchObject({ gross: 100, net: 85 });
  });
});

describe("the pane and the sheet", () => {
  it("agree on every log and on the sum, under every rule of the menus and every rounding", async () => {
    for (const rule of ["Doyle", "Scribner Decimal C", "International 1/4", "Vermont"]) {
      for (const diameterRounding of ["None", "Half up", "Always down"]) {
        const scale = { ...demoContent.settings.scale, rule, diameterRounding };
        const host = memoryHost(cruiseCalculation);
        await host.lay(workbookPlan({ ...demoContent, settings: { ...demoContent.settings, scale } }));
        const job = await readJob(host);
        if (!job) throw new Error("The demo has a job.");
        const logs = job.logs.map((one) => ({ ...one.log, second: one.second, net: one.net }));
        expect(logs.map((one) => (scaleOrWhy(one, job.scale) as { net: number }).net)).toEqual(
          job.logs.map(({ net }) => net),
        );
        const sum = job.logs.reduce((total, { net }) => total + (net ?? 0), 0);
        expect(sheetTotal(logs, job.scale)?.net).toBeCloseTo(sum, 9);
        expect(totalsByRule(logs, job.scale).find(({ title }) => title === rule)?.net).toBeCloseTo(sum, 9);
      }
    }
  });

  it("leave out a log that a rule has no value for, and count it", () => {
    const total = sheetTotal([{ ...measured }, { ...measured, smallEnd: 3 }], plain);
    expect(total).toMatchObject({ net: 100, without: 1 });
    expect(sheetTotal([measured], { ...plain, rule: "Buyer's own" })).toBeUndefined();
  });

  it("ask about 0.15 typed for 15 percent, and about ends that look swapped", async () => {
    const host = memoryHost(cruiseCalculation);
    await host.lay(workbookPlan(demoContent));
    const job = await readJob(host);
    if (!job) throw new Error("The demo has a job.");
    const line = { species: "wo", smallEnd: 14, length: 16, largeEnd: null, sweep: null, deduction: null, note: "" };
    expect(logDoubt(line, job)).toBe("");
    expect(logDoubt({ ...line, deduction: 0.15 }, job)).toContain("Deduction 0.15 %, or 15 %? Type d15");
    expect(logDoubt({ ...line, largeEnd: 12 }, job)).toContain("Swapped?");
    expect(logDoubt({ ...line, smallEnd: 140 }, job)).toContain("decimal point");
    expect(logDoubt({ ...line, sweep: 1.5 }, job)).toBe("");
    expect(logDoubt({ ...line, sweep: 15 }, job)).toBe(
      "Sweep 15 in is more than half the small end. Missing a decimal point?",
    );
    expect(logDoubt({ ...line, species: "zz" }, job)).toContain('"zz" is not in your species list');
  });
});
