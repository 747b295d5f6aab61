import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openPage, type OpenPage } from "./support/page";
import { put, read } from "./support/sheet";

type Row = readonly (string | number | boolean)[];
const filled = (rows: readonly Row[]) => rows.filter(([first]) => first !== "" && first !== null);

describe("the stem and the local table, on the page", () => {
  let opened: OpenPage;
  beforeAll(async () => {
    opened = await openPage();
  });
  afterAll(async () => {
    await opened.close();
  });
  const cell = async (address: string): Promise<unknown> => (await read(opened.page, address))[0]?.[0];
  const plan = async () => filled(await read(opened.page, "Bucking!A17:I60"));
  const habits = async () => filled(await read(opened.page, "Bucking!O6:S40"));
  const sum = (rows: readonly Row[], column: number) =>
    rows.reduce((total, row) => total + (typeof row[column] === "number" ? row[column] : 0), 0);

  it("have no error cell in the demo", async () => {
    for (const sheet of ["Bucking", "Local volume"]) {
      const cells = (await read(opened.page, `${sheet}!A1:AS70`)).flat().map(String);
      expect(
        cells.filter((value) => value.startsWith("#")),
        sheet,
      ).toEqual([]);
    }
  });

  it("cut the demo's stem clear of its flaws, and hold it against habits", async () => {
    expect(await cell("Bucking!B11")).toBe(802); // white oak in the national inventory
    const [header, ...logs] = await plan();
    expect(header?.slice(0, 4)).toEqual(["Log", "From ft", "To ft", "Product"]);
    for (const [, from, to] of logs as number[][]) {
      expect(to! <= 26 || from! >= 29, `${from} to ${to}`).toBe(true);
      expect(to! <= 47 || from! >= 47, `${from} to ${to}`).toBe(true);
    }
    const [, best, ...others] = await habits();
    expect(best?.[0]).toBe("Best plan");
    expect(best?.[2]).toBeCloseTo(sum(logs, 6), 6);
    for (const [way, , value] of others) expect(value, String(way)).toBeLessThanOrEqual((best?.[2] as number) + 1e-9);
    expect(await cell("Bucking!A14")).toMatch(/^\d+ logs, \$\d+\.\d\d; the best habit brings \$\d+\.\d\d$/);
  });

  it("follow the road that is filled in, and refuse both", async () => {
    const { page } = opened;
    await put(page, "Bucking!B7:B8", [[""], [2.5]]);
    expect(await cell("Bucking!B12")).toBe("logs: form class 78");
    const [, ...logs] = await plan();
    expect(Math.max(...logs.map(([, , to]) => Number(to)))).toBeLessThanOrEqual(1 + 2.5 * 16.3);
    await put(page, "Bucking!B7", [[84]]);
    expect(await cell("Bucking!B12")).toBe("Check: clear the height or the logs");
    expect(await cell("Bucking!A17")).toBe("#VALUE!");
    await put(page, "Bucking!B8", [[""]]);
    expect(await cell("Bucking!B12")).toBe("total height: national equations");
    expect((await plan()).length).toBeGreaterThan(3);
  });

  it("fit the felled trees, and read their volumes back from the table", async () => {
    expect(await cell("Local volume!J12")).toBe("Form");
    const [, b] = [await cell("Local volume!K14"), await cell("Local volume!K15")];
    expect(b).toBeGreaterThan(0.001);
    expect(await cell("Local volume!K17")).toBe(10);
    const rows = await read(opened.page, "Local volume!C10:H19");
    const a = (await cell("Local volume!K14")) as number;
    for (const [dbh, height, volume, , byTable, off] of rows as number[][]) {
      expect(byTable).toBeCloseTo(a + (b as number) * dbh! * dbh! * height!, 6);
      expect(off).toBeCloseTo((byTable! / volume! - 1) * 100, 6);
    }
    expect((await read(opened.page, "Local volume!N5:O6")).flat().slice(0, 2)).toEqual(["DBH in", "50 ft"]);
  });

  it("give the tally its wood in place of the national equation, where the owner says so", async () => {
    const { page } = opened;
    const heads = (await read(page, "Trees!A1:Z20")).findIndex(([first]) => first === "Plot");
    const headings = (await read(page, `Trees!A${heads + 1}:Z${heads + 1}`))[0] ?? [];
    const at = (heading: string) => `${String.fromCharCode(65 + headings.indexOf(heading))}${heads + 2}`;
    // The first tree of the demo: a white oak of 16.9 in.
    expect(await cell(`Trees!${at("Species")}`)).toBe("wo");
    await put(page, `Trees!${at("Height ft")}`, [[72]]);
    const national = await cell(`Trees!${at("Wood ft3")}`);
    await put(page, "Local volume!K6", [["Yes"]]);
    const local = await cell(`Trees!${at("Wood ft3")}`);
    const [a, b] = (await read(page, "Local volume!K14:K15")).flat() as number[];
    expect(local).toBeCloseTo(a! + b! * 16.9 * 16.9 * 72, 6);
    expect(local).not.toBeCloseTo(national as number, 1);
    // The products and what they leave are that very wood: all trees have a height here, so the stand's wood is the same.
    const whole = (await read(page, "Products!J9:Q33")).find(([name]) => name === "Whole stems")?.[4];
    const wood = (await read(page, "Products!J61:O66")).find(([name]) => String(name).startsWith("Volume"))?.[1];
    expect(whole).toBeGreaterThan(0);
    expect(whole).toBeCloseTo(wood as number, 6);
    expect(String(await cell("Products!J8"))).toContain("the wood by your local table");
    await put(page, "Local volume!K7", [["ro"]]);
    expect(await cell(`Trees!${at("Wood ft3")}`)).toBe(national);
    await put(page, "Local volume!K6:K7", [[""], ["wo"]]);
    await put(page, `Trees!${at("Height ft")}`, [[""]]);
  });

  it("fit in the other form too, and say so when the trees are gone", async () => {
    const { page } = opened;
    await put(page, "Local volume!K5", [["Powers of D and H"]]);
    expect(await cell("Local volume!K13")).toBe("V = a D^b H^c");
    expect(await cell("Local volume!K16")).toBeGreaterThan(0);
    await put(page, "Local volume!K5", [["Combined variable"]]);
    await put(
      page,
      "Local volume!E10:E19",
      Array.from({ length: 10 }, () => [""]),
    );
    expect(await cell("Local volume!J12")).toBe("No trees yet");
    expect(await cell("Local volume!N5")).toBe("");
  });
});
