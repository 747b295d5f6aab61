import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { cautions } from "../../src/core/reference/cautions";
import { RELEASED } from "../../src/core/reference/release";
import { logRules } from "../../src/core/log/rules";
import { cubicFormulas } from "../../src/core/log/cubic";
import { defectKinds } from "../../src/core/log/defects";
import { topics } from "../../src/core/value/topics";
import { buildInfo, cautionOf, sourceOf } from "../../src/functions/trust";

const files = readdirSync("src/functions").filter(
  (file) => file.endsWith(".ts") && !/^(names|register)\.ts$/.test(file),
);
const shells = await Promise.all(
  files.map(
    async (file) => (await import(/* @vite-ignore */ `../../src/functions/${file}`)) as Record<string, unknown>,
  ),
);
const functions = shells
  .flatMap((shell) => Object.entries(shell).filter(([, one]) => typeof one === "function"))
  .map(([name]) => name.toUpperCase());

describe("SOURCEOF", () => {
  it.each(functions)("%s states at least one source", (name) => {
    const [header, ...rows] = sourceOf(name);
    expect(header).toEqual(["Author", "Year", "Title", "Where", "Standing", "Address"]);
    expect(rows.length).toBeGreaterThan(0);
    for (const [author, , title, where, standing] of rows as string[][]) {
      for (const cell of [author, title, where, standing]) expect(cell?.trim()).not.toBe("");
    }
  });

  it.each([...logRules, ...cubicFormulas, ...defectKinds])("$title states its own sources", ({ title, sources }) => {
    expect(
      sourceOf(title)
        .slice(1)
        .map((row) => row[2] as unknown),
    ).toEqual(sources.map((source) => source.title));
  });

  it("owns up to what is from memory", () => {
    const standings = sourceOf("scribner decimal c").map((row) => row[4] as unknown);
    expect(standings).toContain("from memory");
    expect(standings).toContain("read");
  });

  it("knows nothing that is not there to be called", () => {
    const called = topics.map(({ title }) => title).filter((title) => /^[A-Z]{3,}$/.test(title));
    expect(called.sort()).toEqual([...functions].sort());
  });

  it("gives no topic a name that another one has", () => {
    const titles = topics.map(({ title }) => title.toLowerCase());
    expect(new Set(titles).size).toBe(titles.length);
  });

  it("says what it can be asked for, and proposes what is like it", () => {
    const expected =
      "Topic should be the name of a function, a log rule, a formula or a caution, such as LOGSCALE or Doyle.";
    expect(() => sourceOf("Bangor")).toThrow(`${expected} You have "Bangor".`);
    expect(() => sourceOf("Logscal")).toThrow(`${expected} You have "Logscal". Did you mean LOGSCALE`);
    expect(() => sourceOf("International")).not.toThrow();
    expect(() => sourceOf("Internationale")).toThrow("Did you mean International 1/4 or International 1/8?");
    expect(() => sourceOf("")).toThrow("You have a blank.");
  });
});

describe("CAUTIONOF", () => {
  it.each(cautions)("$title: one line, then the text behind it", ({ title, line, text, source }) => {
    expect(cautionOf(title.toUpperCase())).toBe(`${line} ${text}`);
    expect(line.length).toBeLessThanOrEqual(110);
    expect(text.length).toBeGreaterThan(100);
    expect(source.where).not.toBe("");
  });

  it.each([
    "Estimate",
    "Felling",
    "Sawing",
    "Log weight",
    "Ungraded lumber",
    "Forester",
    "Tax",
    "Contracts and water",
    "Prices",
  ])("%s has a caution", (title) => {
    expect(cautions.map((caution) => caution.title)).toContain(title);
  });

  it("gives way to local codes and licensed practice", () => {
    expect(cautionOf("Ungraded lumber")).toMatch(/local code official decides.*licensed engineer/);
    expect(cautionOf("Contracts")).toMatch(/licensed surveyor/);
    expect(cautionOf("Estimate")).toMatch(/licensed scaler or appraiser/);
  });
});

describe("BUILDINFO", () => {
  it("gives the version of the package and the day it was released", () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
    expect(buildInfo().slice(0, 2)).toEqual([
      ["Part", "Version", "Date"],
      ["Woodlot Reckoner", version, RELEASED.date],
    ]);
  });

  it("names every printed table that the core holds", () => {
    const files = readdirSync("src/core/reference").map((file) => file.replace(".ts", ""));
    const tables = files.filter((file) => !["cautions", "release"].includes(file));
    expect(RELEASED.tables.map(({ file }) => file).sort()).toEqual(tables.sort());
    for (const { date } of RELEASED.tables) expect(date).toMatch(/^\d{4}-\d\d-\d\d$/);
  });
});
