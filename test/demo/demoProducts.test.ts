import { describe, expect, it } from "vitest";
import { demoContent } from "../../src/demo/demoWorkbook";
import { productTable } from "../../src/functions/products";
import { checkHeights, checkSpecies, speciesOf } from "../../src/functions/speciesList";
import { standSummary } from "../../src/functions/standSummary";
import { stemVolume } from "../../src/functions/stem";
import { treeWeight, WeightOfTree } from "../../src/functions/treeWeight";
import { product, species, tree } from "../../src/workbook/tables";
import * as demo from "./demoColumns";

const { settings, species: list, trees, products } = demoContent;
const heights = demo.columnOf(trees, tree.height);
const codes = new Map(list.map((row) => [row[species.code], row[species.fia]]));
const national = trees.map((row) => [codes.get(row[tree.species] ?? null) ?? null]);
const wood = stemVolume(national, demo.dbhColumn, heights);
const productCells = products.map((row) =>
  [
    product.product,
    product.smallestEnd,
    product.shortest,
    product.longest,
    product.step,
    product.soldBy,
    product.price,
  ].map((heading) => row[heading] ?? null),
);
const byProduct = (dbh: unknown[][], measured: string) =>
  productTable(
    demo.plotColumn,
    national,
    dbh,
    heights,
    demo.logsColumn,
    productCells,
    demo.countedPlots,
    "Point",
    [[settings.size]],
    measured,
    ...([
      null,
      demo.columnOf(trees, tree.cull),
      null,
      demo.boardCells,
      settings.kerf,
      demo.pattern,
      settings.realized,
    ] as never[]),
  ) as (string | number)[][];

describe("the demo's species", () => {
  it("each mean one of the national list", () => {
    const names = demo.columnOf(list, species.name);
    const fia = demo.columnOf(list, species.fia);
    expect(checkSpecies(names, fia).flat()).toEqual(["", "", "", "", "", ""]);
    expect(speciesOf(fia).flat()).toEqual([
      "northern red oak",
      "white oak",
      "sugar maple",
      "yellow-poplar",
      "black cherry",
      "hickory spp.",
    ]);
  });
});

describe("the demo's total heights", () => {
  it("fit their trees and their logs, and every tree has one", () => {
    const checks = checkHeights(demo.dbhColumn, demo.logsColumn, heights, "Both");
    expect(checks.flat().filter((text) => text !== "")).toEqual([]);
    expect(heights.flat().filter((height) => Number(height) > 0)).toHaveLength(132);
  });

  it("give every tree wood and weight", () => {
    const weight = treeWeight(national, demo.dbhColumn, heights, WeightOfTree.StemGreen);
    for (const column of [wood, weight])
      expect(column.flat().filter((value) => typeof value === "number" && value > 0)).toHaveLength(132);
  });
});

describe("the demo's products", () => {
  it.each(["Total height", "Logs"])("have no error by %s, and no tree is missing", (measured) => {
    for (const dbh of [demo.dbhColumn, demo.harvestDbhColumn]) {
      const table = byProduct(dbh, measured);
      expect(table.flat().filter((one) => typeof one !== "string" && !Number.isFinite(one))).toEqual([]);
      expect(table.filter(([name]) => String(name).startsWith("Not in it"))).toEqual([]);
      expect(table[1]?.[2]).toBeGreaterThan(1000);
    }
  });

  it("add up to the wood of the stand, as STANDSUMMARY has it", () => {
    const table = byProduct(demo.dbhColumn, "Total height");
    const at = table.findIndex(([name]) => name === "Whole stems");
    const parts = table.slice(1, at).reduce((sum, row) => sum + Number(row[4]), 0);
    const stand = standSummary(
      demo.plotColumn,
      demo.dbhColumn,
      demo.countedPlots,
      "Point" as never,
      settings.size as never,
      wood,
    );
    expect(parts).toBeCloseTo(Number(stand[4]?.[1]), 8);
    expect(table[at]?.[4]).toBeCloseTo(Number(stand[4]?.[1]), 8);
    expect(table[at]?.[5]).toBeCloseTo(Number(stand[4]?.[2]), 8);
  });
});
