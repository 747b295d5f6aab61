import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { published } from "../support/published";
import { accuracyTable } from "./report";

/** Not figures to be reproduced but the very factors of a rule; the volumes that they make are held against ours. */
const INPUTS = ["log/northwestFactors.csv"];

describe("the accuracy report", () => {
  const table = accuracyTable();
  const files = ["log", "lumber"].flatMap((folder) =>
    readdirSync(new URL(`../published/${folder}/`, import.meta.url)).map((file) => `${folder}/${file}`),
  );

  it.each(files.filter((file) => !INPUTS.includes(file)))("compares %s", (file) => {
    const { source, standing } = published(file);
    expect(table).toContain(`| ${source} | ${standing} |`);
  });

  it("has no row that compares nothing", () => {
    expect(table).not.toContain("NaN");
  });
});
