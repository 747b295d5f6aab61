import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { demoContent } from "../../src/demo/demoWorkbook";
import { buckHabits } from "../../src/functions/bucking";
import { localFit } from "../../src/functions/localTables";
import { felled, flaw, product } from "../../src/workbook/tables";
import { projectRoot } from "../support/sourceFiles";

const readme = readFileSync(path.join(projectRoot, "README.md"), "utf8").replace(/\s+/g, " ");

it("the README tells of the demo's stem what its own formulas give", () => {
  const { stem, products } = demoContent;
  const list = products.map((row) =>
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
  const column = (heading: string) => stem.flaws.map((row) => [row[heading] ?? null]);
  const [from, to] = [column(flaw.from), column(flaw.to)];
  const ways = buckHabits("white oak", stem.dbh, stem.height, list, stem.stump, stem.trim, from, to) as [
    string,
    number,
    number,
  ][];
  const brings = (way: string) => `$${ways.find(([name]) => name === way)?.[2].toFixed(2)}`;
  expect(readme).toContain(`makes ${ways[1]?.[1]} logs for ${brings("Best plan")}.`);
  expect(readme).toContain(
    `Cut as long as fits it brings ${brings("As long as fits")}, all in 16-ft logs ${brings("All 16 ft")}.`,
  );
});

it("the README tells of the demo's local table what its own formulas give", () => {
  const column = (heading: string) => demoContent.localVolume.felled.map((row) => [row[heading] ?? null]);
  const fit = localFit(column(felled.dbh), column(felled.height), column(felled.volume));
  const value = (label: string) => fit.find(([name]) => name === label)?.[1] as number;
  expect(readme).toContain(
    `a standard error of ${value("Standard error of estimate").toFixed(2)} ft3, ${value("Standard error pct of mean").toFixed(0)} % of their mean`,
  );
});
