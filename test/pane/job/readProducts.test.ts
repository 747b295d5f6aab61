import { describe, expect, it } from "vitest";
import { productTotal } from "../../../src/pane/job/productTotal";
import { readProducts, type ProductLine } from "../../../src/pane/job/readProducts";
import type { WorkbookHost } from "../../../src/workbook/host";
import type { CellValue } from "../../../src/workbook/plan";
import { named, out } from "../../../src/workbook/tables";

/** A host of which only the answer of PRODUCTTABLE and the use of a local table matter. */
const host = (table: readonly (readonly CellValue[])[], use: CellValue = null) =>
  ({
    readSpill: (name: string) => Promise.resolve(name === out.products ? table : []),
    hasTable: () => Promise.resolve(true),
    readNames: () => Promise.resolve({ [named.localUse]: use }),
  }) as unknown as WorkbookHost;

const table = (land: string, cubic: string): CellValue[][] => [
  ["Product", "Unit", `Volume per ${land}`, "+/-", `Wood ${cubic} per ${land}`, "+/-", `Value $ per ${land}`, "+/-"],
  ["Sawlogs", "bf", 4000, 900, 700, 150, 1800, 400],
  ["Fuel", cubic, 120, "not applicable", 120, "not applicable", 12, "not applicable"],
  ["Left in the woods", "", "", "", 300, 60, "", ""],
];

describe("what the sheet Products answers", () => {
  it("is read with its margins, and in acres and cubic feet", async () => {
    const { lines, units, byOwnTable } = await readProducts(host(table("ac", "ft3")));
    expect(units).toEqual({ land: "acre", cubic: "ft³" });
    expect(byOwnTable).toBe(false);
    expect(lines.map(({ name }) => name)).toEqual(["Sawlogs", "Fuel", "Left in the woods"]);
    expect(lines[0]?.volume).toMatchObject({ value: 4000, margin: 900, percent: 22.5, low: 3100, high: 4900 });
    expect(lines[2]).toMatchObject({ volume: undefined, wood: { value: 300 } });
  });

  it("is in hectares and cubic meters where the workbook is metric", async () => {
    const { units, byOwnTable } = await readProducts(host(table("ha", "m3"), "Yes"));
    expect(units).toEqual({ land: "hectare", cubic: "m³" });
    expect(byOwnTable).toBe(true);
  });
});

describe("a product on the whole tract", () => {
  const line = (volume: ProductLine["volume"]): ProductLine => ({
    name: "Sawlogs",
    unit: "bf",
    volume,
    wood: undefined,
    value: undefined,
  });
  const perAcre = { what: "Sawlogs", value: 4000, margin: 900, percent: 22.5, low: 3100, high: 4900 };

  it("is worked out by hand: 4,000 bf +/- 900 on 32 acres +/- 1.5", () => {
    // 4000 x 32 = 128,000; sqrt((32 x 900)^2 + (4000 x 1.5)^2) = sqrt(829,440,000 + 36,000,000) = 29,418.36
    const total = productTotal(line(perAcre), 32, 1.5);
    expect(total?.value).toBe(128_000);
    expect(total?.margin).toBeCloseTo(29_418.36, 2);
    expect(total?.percent).toBeCloseTo(22.983, 3);
    expect([total?.low, total?.high].map((end) => Number(end?.toFixed(2)))).toEqual([98_581.64, 157_418.36]);
  });

  it("keeps the percentage of its acre where the acres are known for sure", () => {
    expect(productTotal(line(perAcre), 32, 0)).toMatchObject({ value: 128_000, margin: 28_800, percent: 22.5 });
  });

  it("has no margin where its acre has none, and is nothing for wood that is no product", () => {
    const bare = { ...perAcre, margin: null, percent: null, low: null, high: null };
    expect(productTotal(line(bare), 32, 1.5)).toMatchObject({ value: 128_000, margin: null });
    expect(productTotal(line(undefined), 32, 1.5)).toBeUndefined();
  });
});
