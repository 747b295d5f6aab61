import { describe, expect, it } from "vitest";
import { findings } from "../../../src/pane/job/findings";
import { readJob } from "../../../src/pane/job/readJob";
import type { Job } from "../../../src/pane/job/job";
import { plot, PLOTS, species, SPECIES, tree, TREES } from "../../../src/workbook/tables";
import { practiceSheets } from "../../browser/pane/practiceSheets";
import { cruiseCalculation } from "../../support/cruiseCalculation";
import { memoryHost } from "../../support/memoryHost";

async function practice() {
  const host = memoryHost(cruiseCalculation);
  await host.lay(practiceSheets());
  return findings((await readJob(host)) as Job);
}

describe("what the Check columns say", () => {
  it("comes with its place, so that one can go there", async () => {
    const [point, diameter] = await practice();
    expect(point).toMatchObject({ where: "Point 12", place: { table: PLOTS, row: 11, heading: plot.visited } });
    expect(diameter).toMatchObject({
      where: "Point 1, tree in row 4",
      place: { table: TREES, row: 3, heading: tree.dbh },
    });
  });

  it("offers 14.3 for 143", async () => {
    const odd = (await practice()).find(({ says }) => says.includes("143"));
    expect(odd?.fixes).toEqual([{ label: "Use 14.3", table: TREES, row: 3, changes: { [tree.dbh]: 14.3 } }]);
  });

  it("offers the codes that a slip of the key may have hit, and to add the new one", async () => {
    const odd = (await practice()).find(({ says }) => says.includes('"rp"'));
    expect(odd?.fixes.slice(0, 2)).toEqual([
      { label: "Use ro", table: TREES, row: 20, changes: { [tree.species]: "ro" } },
      { label: "Use yp", table: TREES, row: 20, changes: { [tree.species]: "yp" } },
    ]);
    expect(odd?.fixes.slice(2)).toEqual([
      { label: "Add rp", table: SPECIES, row: undefined, changes: { [species.code]: "rp", [species.name]: "rp" } },
    ]);
  });

  it("asks about 0.15 typed for 15 percent off a log", async () => {
    const odd = (await practice()).find(({ where }) => where === "Log 4");
    expect(odd?.says).toContain("type 15 for 15 percent");
  });

  it("asks of a point without trees whether it is empty or not visited yet", async () => {
    const [point] = await practice();
    expect(point?.fixes.map(({ label, changes }) => [label, changes[plot.visited], changes[plot.none]])).toEqual([
      ["It is empty", "Yes", "Yes"],
      ["Not visited yet", "No", null],
    ]);
  });

  it("knows what was accepted, and why", async () => {
    const accepted = (await practice()).filter(({ accepted: reason }) => reason !== "");
    expect(accepted.map(({ accepted: reason }) => reason)).toEqual(["measured twice"]);
  });
});
