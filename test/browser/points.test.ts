import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { LIMIT_DIAMETERS } from "../../src/workbook/sheets/fieldTallyLimits";
import { openPage, type OpenPage } from "./support/page";
import { PaneOnPage } from "./support/pane";
import { read } from "./support/sheet";

const near = (value: unknown) => expect.closeTo(Number(value), 1) as unknown;

/** The second step of the job on the real page: an outline, the points, what is taken along, and the tally as text. */
let open: OpenPage;
let pane: PaneOnPage;
beforeAll(async () => {
  open = await openPage();
  pane = new PaneOnPage(open.page);
});
afterAll(() => open.close());

it("shows the demo's points on its outline, and writes its trees as CSV text", async () => {
  await pane.go("Lay out points");
  const words = await pane.untilItSays(/14 points on the sheet Points/);
  expect(words).toMatch(/7 corners, 32\.0 acres; Setup has 32\.0, 0\.1 % apart/);
  expect(words).toMatch(/Do not move a point because it looks poor/);
  await pane.go("Share");
  await pane.field(/Leave out names/).uncheck();
  await pane.button(/Show the text of the trees/).click();
  const text = await pane.field(/132 rows, units in the names/).inputValue();
  expect(text.split("\n").slice(0, 2)).toEqual([
    "stand,plot,species,dbh_in,logs_16ft,height_ft,count,take,cull_pct,note,distance_ft,accepted_because",
    "Demo woodlot - invented,1,wo,16.9,2,76,,,15,,,",
  ]);
});

it("lays points on a pasted outline into a cruise of one's own, the same as the seed gives in the sheet", async () => {
  await pane.go("Plan the cruise");
  await pane.field("Acres").first().fill("10");
  await pane.field("Points to take").fill("9");
  await pane.button("Build workbook").click();
  await pane.answer("Replace them");
  await pane.untilItSays(/The workbook is built/);

  await pane.go("Lay out points");
  await pane.field(/Corners in order around the tract/).fill("0, 0\n660, 0\n660, 660\n0, 660");
  await pane.untilItSays(/4 corners, 10\.0 acres; Setup has 10\.0, 0\.0 % apart/);
  await pane.field("Seed").fill("7");
  await pane.untilItSays(/9 points fall inside, as planned/);
  await pane.button("Put the points on the sheet Points").click();
  await pane.untilItSays(/9 points of the sheet Points get their place/);

  const points = await read(open.page, "Points!A8:C16");
  const headings = (await read(open.page, "Points!A7:C7"))[0];
  expect(headings).toEqual(["Plot", "East ft", "North ft"]);
  const grid = await read(open.page, "Outline!F9:H17");
  expect(points).toEqual(grid.map(([point, east, north]) => [point, near(east), near(north)]));
  expect((await read(open.page, "Outline!B8"))[0]?.[0]).toBeCloseTo(10, 6);

  const walk = await read(open.page, "Point list!B10:I11");
  expect(walk[0]?.slice(0, 1)).toEqual([1]);
  expect([walk[0]?.[3], walk[0]?.[5], walk[0]?.[6], walk[0]?.[7]]).toEqual([0, 220, expect.closeTo(10 / 3, 6), 88]);
});

it("warns where outline and Setup differ, and sets the acres of the outline when asked", async () => {
  await pane.go("Lay out points");
  await pane.text("Paste another outline").click();
  await pane.field(/Corners in order around the tract/).fill("0, 0\n660, 0\n660, 990\n0, 990");
  await pane.untilItSays(/The outline has 15\.0 acres, but Setup has 10\.0\. One of them is wrong/);
  await pane.button("Set acres to 15").click();
  await pane.untilItSays(/4 corners, 15\.0 acres; Setup has 15\.0, 0\.0 % apart/);
  expect((await read(open.page, "Setup!B4:B12")).flat()).toContain(15);
});

it("cuts a hole out of an outline from a map, and saves the points as a file for a receiver", async () => {
  const square = (west: number, south: number, wide: number) => [
    [west, south],
    [west + wide, south],
    [west + wide, south + wide],
    [west, south + wide],
    [west, south],
  ];
  const coordinates = [square(-89.57, 44.12, 0.002), square(-89.5695, 44.1205, 0.001)];
  await pane.field(/Corners in order around the tract/).fill(JSON.stringify({ type: "Polygon", coordinates }));
  // By latitude 44.121, a degree is 111,110 m north and 80,060 m east: 8.79 acres, less a quarter of them
  await pane.untilItSays(/A hole is cut out of the outline.*The outline has 6\.6 acres, but Setup has 15\.0/);
  await pane.text("For a satellite receiver (GPX)").click();
  const [file] = await Promise.all([
    open.page.waitForEvent("download"),
    pane.button(/Save as a file: .*\.gpx/).click(),
  ]);
  expect(file.suggestedFilename()).toMatch(/\.gpx$/);
  expect(readFileSync((await file.path()) ?? "", "utf8")).toMatch(/^<\?xml[^]*<wpt lat="44\.12/);
  await pane.field(/Corners in order around the tract/).fill("");
});

it("leads from the plan to the tally to print", async () => {
  await pane.go("Plan the cruise");
  await pane.button("Print tally").click();
  await pane.untilItSays(/This is the tally to print/);
  const sheet = await open.page.evaluate(() =>
    Excel.run(async (context) => {
      const active = context.workbook.worksheets.getActiveWorksheet();
      active.load("name");
      await context.sync();
      return active.name;
    }),
  );
  expect(sheet).toBe("Field tally");
});

it("has the limiting distances of its gauge on the field tally, by native formulas", async () => {
  const limits = await read(open.page, "Field tally!B7:M9");
  expect(limits[0]).toEqual([...LIMIT_DIAMETERS]);
  // BAF 10: 2.75 ft for each inch to the center, half an inch less to the face
  LIMIT_DIAMETERS.forEach((dbh, at) => {
    expect(Number(limits[1]?.[at])).toBeCloseTo(2.75 * dbh, 9);
    expect(Number(limits[2]?.[at])).toBeCloseTo(2.75 * dbh - dbh / 24, 9);
  });
  const formulas = (await open.page.evaluate(() => woodlotPage.formula("Field tally!A1:M60"))).flat();
  expect(formulas.filter((formula) => String(formula).startsWith("=")).length).toBeGreaterThan(40);
  expect(formulas.filter((formula) => /WOODLOT/i.test(String(formula)))).toEqual([]);
  open.expectQuiet();
});
