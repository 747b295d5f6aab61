import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { put, read } from "./support/sheet";

const PLOTS = 14;
const blank = (rows: number, columns = 1) => Array.from({ length: rows }, () => Array<string>(columns).fill(""));
const column = <T>(of: (plot: number) => T) => Array.from({ length: PLOTS }, (_, plot) => [of(plot)]);

describe("the designs of a cruise, on the page", () => {
  let opened: OpenPage;
  beforeAll(async () => {
    opened = await openPage();
  });
  afterAll(async () => {
    await opened.close();
  });

  const cell = async (address: string) => (await read(opened.page, address))[0]?.[0];
  const set = (address: string, cells: unknown[][]) => put(opened.page, address, cells);
  const volumes = async () => (await read(opened.page, "Points!L8:L21")).map(([one]) => Number(one));
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length;

  it("weigh strata by their acres in the stand, the cut, the species and the stock alike", async () => {
    const all = await volumes();
    const inOak = (plot: number) => plot % 3 !== 0;
    await set("Design!A14:D15", [
      ["Oak", 20, 9000, 40],
      ["Swamp", 12, 4000, 60],
    ]);
    await set(
      "Points!N8:N21",
      column((plot) => (inOak(plot) ? "Oak" : "Swamp")),
    );
    const [oak, swamp] = [true, false].map((oakward) => mean(all.filter((_, plot) => inOak(plot) === oakward)));
    const expected = (20 * (oak ?? 0) + 12 * (swamp ?? 0)) / 32;
    expect(await cell("Stand!B12")).toBeCloseTo(expected, 6);
    expect(await cell("Cut!E10")).toBeCloseTo(expected, 6);
    expect((await read(opened.page, "Margins!A51:H55")).find(([name]) => name === "All strata")?.[1]).toBeCloseTo(
      expected,
      6,
    );
    const species = (await read(opened.page, "Stand!A30:G40")).find(([name]) => name === "All species");
    expect(species?.[4]).toBeCloseTo(expected, 6);
    const stock = (await read(opened.page, "'Stock table'!A5:H30")).find(([name]) => name === "All classes");
    expect(stock?.filter((one) => typeof one === "number").at(-1)).toBeCloseTo(expected, 6);
    expect(await cell("Stand!A6")).toContain("By strata");
    // 20 x 9000 x 40 to 12 x 4000 x 60 of 14 plots is 10 to 4
    expect(await read(opened.page, "Design!N14:N15")).toEqual([[10], [4]]);
    await set("Design!A14:D15", blank(2, 4));
    await set("Points!N8:N21", blank(PLOTS));
    expect(await cell("Stand!B12")).toBeCloseTo(mean(all), 6);
  });

  it("take clusters as the unit of the margins, and say so", async () => {
    const plain = await cell("Stand!C12");
    await set(
      "Points!O8:O21",
      column((plot) => Math.floor(plot / 2) + 1),
    );
    const pairs = (await volumes()).reduce<number[]>((sums, one, plot) => {
      sums[Math.floor(plot / 2)] = (sums[Math.floor(plot / 2)] ?? 0) + one / 2;
      return sums;
    }, []);
    const spread = Math.sqrt(pairs.reduce((sum, one) => sum + (one - mean(pairs)) ** 2, 0) / 6 / 7);
    expect(await cell("Stand!C12")).toBeCloseTo(2.4469118 * spread, 2); // t of 6 degrees of freedom
    expect(await cell("Margins!B12")).toBeCloseTo(Number(await cell("Stand!C12")), 6);
    expect(await cell("Stand!A6")).toContain("By clusters");
    await set("Points!O8:O21", blank(PLOTS));
    expect(await cell("Stand!C12")).toBeCloseTo(Number(plain), 6);
  });

  it("count a half sweep double", async () => {
    const before = await volumes();
    await set("Points!Q8", [["Half"]]);
    expect((await volumes())[0]).toBeCloseTo(2 * (before[0] ?? 0), 6);
    await set("Points!Q8", [[""]]);
  });

  it("drop a point outside the tract from the number of points, and its trees with it, each with a word", async () => {
    const all = await volumes();
    expect(await cell("Stand!A2")).toContain(`${PLOTS} plots`);
    const tallied = (await read(opened.page, "Trees!A8:C150")).filter(([plot]) => plot === 1).length;
    expect(tallied).toBeGreaterThan(0);
    await set("Points!R8", [["Yes"]]);
    expect(await cell("Stand!A6")).toContain("1 point outside the tract is left out.");
    expect(await cell("Stand!A2")).toContain(`${PLOTS - 1} plots`);
    expect(await cell("Stand!B12")).toBeCloseTo(mean(all.slice(1)), 6);
    expect(await cell("Cut!E10")).toBeCloseTo(mean(all.slice(1)), 6);
    expect(await cell("Points!M8")).toContain("the trees tallied on it are left out");
    const trees = (await read(opened.page, "Trees!A8:W150")).filter(([plot]) => plot === 1);
    for (const row of trees) expect(row.some((one) => String(one).startsWith("Left out: its point lies"))).toBe(true);
    expect(Number((await read(opened.page, "Margins!B17:B17"))[0]?.[0])).toBeGreaterThan(0);
    await set("Points!R8", [[""]]);
    expect(await cell("Stand!B12")).toBeCloseTo(mean(all), 6);
  });

  it("take no tree of a point that was only counted as measured, say so, and go on with everything else", async () => {
    const all = await volumes();
    const trees = (await read(opened.page, "Trees!A8:W150")).filter(([plot]) => plot === 1);
    await set("Points!S8", [["Count"]]);
    expect(await cell("Stand!B12")).toBeCloseTo(mean(all.slice(1)), 6);
    expect(await cell("Cut!E10")).toBeCloseTo(mean(all.slice(1)), 6);
    expect(await cell("Points!M8")).toContain("the DBH of the trees tallied on it is not used");
    const now = (await read(opened.page, "Trees!A8:W150")).filter(([plot]) => plot === 1);
    expect(now).toHaveLength(trees.length);
    for (const row of now) expect(row.some((one) => String(one).startsWith("Counted, not measured: its"))).toBe(true);
    // Each still counts as one tree in for the basal area, at a factor of 10, here and in what all points say of it
    const area = (await read(opened.page, "Points!Z8:AA8"))[0]?.find((one) => one === 10 * trees.length);
    expect(area).toBe(10 * trees.length);
    expect(await cell("Margins!B17")).toBeCloseTo(94.2857, 3);
    expect((await read(opened.page, "Margins!A26:H27"))[1]?.slice(-2)).toEqual([PLOTS, PLOTS - 1]);
    await set("Points!S8", [[""]]);
    expect(await cell("Stand!B12")).toBeCloseTo(mean(all), 6);
  });

  it("stretch the radius of fixed plots on a slope one way only, and narrow the margin for a population", async () => {
    await set("Setup!B8:B9", [["Fixed"], [0.1]]);
    const level = Math.sqrt(4356 / Math.PI);
    expect(await cell("Points!V8")).toBeCloseTo(level, 6);
    await set("Design!B5", [["Enlarged plot"]]);
    const slope = Number(await cell("Points!H8")) / 100;
    expect(await cell("Points!V8")).toBeCloseTo(level * (1 + slope ** 2) ** 0.25, 6);
    const margin = Number(await cell("Stand!C12"));
    await set("Design!B6", [[56]]);
    expect(await cell("Stand!C12")).toBeCloseTo(margin * Math.sqrt(0.75), 6);
    await set("Design!B5:B6", [["Level distances"], [""]]);
  });

  it("expand thick trees by the gauge and thin ones by their plot under Point and fixed", async () => {
    await set("Setup!B8:B9", [["Point and fixed"], [10]]);
    await set("Design!H14:I15", [
      [0, 0.05],
      [14, 10],
    ]);
    expect(await read(opened.page, "Design!J14:J15")).toEqual([["Plot"], ["Gauge"]]);
    const trees = (await read(opened.page, "Trees!A8:C150")).filter(([plot]) => plot !== "");
    const perAcre = trees.reduce((sum, [, , dbh]) => {
      const thick = Number(dbh) >= 14;
      return sum + (thick ? 10 / ((Math.PI / 576) * Number(dbh) ** 2) : 20);
    }, 0);
    expect(await cell("Stand!B9")).toBeCloseTo(perAcre / PLOTS, 6);
    await set("Design!H14:I15", blank(2, 2));
  });

  it("show no margin for a tally of every tree, and never 0", async () => {
    await set("Setup!B8:B9", [["All"], [32]]);
    await set(
      "Points!P8:P21",
      column(() => 2),
    );
    expect(await read(opened.page, "Stand!C9:F9")).toEqual([Array<string>(4).fill("not applicable")]);
    expect(await cell("Stand!A2")).toContain("a margin is not applicable");
    expect(await cell("Stand!H12")).toBe("");
    await set("Points!P8:P21", blank(PLOTS));
    await set("Setup!B8:B9", [["Point"], [10]]);
    expect(await cell("Stand!B10")).toBeCloseTo(94.2857, 3);
    opened.expectQuiet();
  });
});
