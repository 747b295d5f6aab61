import { describe, expect, it } from "vitest";
import { demoWorkbook } from "../../../src/demo/demoWorkbook";
import { putStem } from "../../../src/pane/bucking/putStem";
import { formOf, readStem, type StemForm } from "../../../src/pane/bucking/stemForm";
import { readBucking, type BuckingAnswers } from "../../../src/pane/job/readBucking";
import { cruiseCalculation } from "../../support/cruiseCalculation";
import { memoryHost } from "../../support/memoryHost";

async function demo() {
  const host = memoryHost(cruiseCalculation);
  await host.lay(demoWorkbook());
  const read = async () => (await readBucking(host)) as BuckingAnswers;
  return { host, read };
}

const form: StemForm = { species: "white oak", dbh: "20", road: "height", measure: "80", flaws: "" };

describe("a stem typed in the pane", () => {
  it("shows what the sheet has, and the plan with the habits beside it", async () => {
    const { read } = await demo();
    const answers = await read();
    expect(formOf(answers)).toEqual({
      species: "wo",
      dbh: "21.5",
      road: "height",
      measure: "84",
      flaws: "rot 26-29, crook 47",
    });
    expect(answers.steps.length).toBeGreaterThan(3);
    expect(answers.lacking).toBe("");
    expect(answers.ways[0]?.way).toBe("Best plan");
    expect(answers.ways[0]?.value).toBeCloseTo(
      answers.steps.reduce((sum, { value }) => sum + value, 0),
      9,
    );
  });

  it("goes to the sheet by one height only, its flaws row by row, and comes back the same", async () => {
    const { host, read } = await demo();
    const typed = { ...form, road: "logs", measure: "2.5", species: "", flaws: "broken 30" } as const;
    const { stem } = readStem(typed);
    if (!stem) throw new Error("The form was not read.");
    await putStem(host, stem);
    const answers = await read();
    expect([answers.height, answers.logs]).toEqual([null, 2.5]);
    expect(formOf(answers)).toEqual(typed);
    expect(answers.steps.every(({ to }) => to <= 30)).toBe(true);
  });

  it("clears flaws that are gone, and adds rows where there are more than the sheet has", async () => {
    const { host, read } = await demo();
    const put = async (flaws: string) => {
      const { stem } = readStem({ ...form, flaws });
      if (stem) await putStem(host, stem);
      return (await read()).flaws.length;
    };
    expect(await put("crook 10, crook 20, crook 30, crook 40, crook 41, crook 42, crook 43, crook 44, crook 45")).toBe(
      9,
    );
    expect(await put("")).toBe(0);
    expect(await put("rot 5-6")).toBe(1);
  });

  it.each([
    [{ species: " " }, { species: "Type a species: a code of yours or a common name." }],
    [{ dbh: "143" }, { dbh: "Type a DBH from 1 to 80 in." }],
    [{ dbh: "" }, { dbh: "Type a DBH from 1 to 80 in." }],
    [{ measure: "2" }, { measure: "Type a total height from 5 to 400 ft." }],
    [{ road: "logs", measure: "80" }, { measure: "Type 1 to 4 logs of 16 ft, such as 2.5." }],
    [{ flaws: "rot 5" }, { flaws: '"rot 5" needs where it begins and where it ends, such as rot 5-8.' }],
  ] as const)("with %j says %j", (change, problems) => {
    expect(readStem({ ...form, ...change })).toEqual({ problems });
  });

  it("needs no species with logs", () => {
    expect(readStem({ ...form, species: "", road: "logs", measure: "2" }).problems).toEqual({});
  });
});

describe("the sheet Bucking", () => {
  it("tells its own error where there is no plan", async () => {
    const { host, read } = await demo();
    await host.writeNames({ Stem_DBH: "thick" });
    expect((await read()).lacking).toMatch(/^The sheet Bucking shows #VALUE!/);
    await host.writeNames({ Stem_DBH: null });
    expect((await read()).lacking).toBe("No trees yet");
  });

  it("may not be there", async () => {
    const host = memoryHost(cruiseCalculation);
    await host.lay(demoWorkbook().filter(({ name }) => name !== "Bucking"));
    expect(await readBucking(host)).toBe("none");
  });
});
