import { existsSync, readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { validateXML } from "xmllint-wasm";
import { NAMESPACE } from "../../src/functions/names";
import { actionOf } from "../../src/hosts/excel/ribbonActions";
import { viewTitles, type ViewName } from "../../src/pane/views/viewNames";
import { projectRoot } from "../support/sourceFiles";

const manifest = readFileSync(path.join(projectRoot, "dist", "manifest.xml"), "utf8");
const attributes = (name: string) =>
  [...manifest.matchAll(new RegExp(`\\b${name}="([^"]*)"`, "g"))].map((found) => found[1] ?? "");
const urls = attributes("DefaultValue").filter((value) => value.startsWith("https://"));

/** The schemas hold the part of [MS-OWEMXML] that an add-in of this kind uses. */
const schemas = path.join(projectRoot, "test/support/manifest-xsd");
const schemaFiles = readdirSync(schemas).map((fileName) => ({
  fileName,
  contents: readFileSync(path.join(schemas, fileName), "utf8"),
}));

describe("manifest.xml, as built", () => {
  const lint = (contents: string) =>
    validateXML({
      xml: [{ fileName: "manifest.xml", contents }],
      schema: schemaFiles.filter(({ fileName }) => fileName === "OfficeApp.xsd"),
      preload: schemaFiles.filter(({ fileName }) => fileName !== "OfficeApp.xsd"),
    });

  it("obeys the schema", async () => {
    const { valid, errors } = await lint(manifest);
    expect(errors.map((one) => one.message)).toEqual([]);
    expect(valid).toBe(true);
  });

  it("would be refused by the schema with its elements out of order", async () => {
    const { valid } = await lint(manifest.replace(/<ProviderName>.*<\/ProviderName>/, ""));
    expect(valid).toBe(false);
  });

  it("resolves every resource that it names", () => {
    const defined = new Set(attributes("id"));
    expect(attributes("resid").filter((resid) => !defined.has(resid))).toEqual([]);
  });

  it("serves everything from one origin, and from files that exist", () => {
    expect(new Set(urls.map((url) => new URL(url).origin)).size).toBe(1);
    for (const url of urls) expect(existsSync(path.join(projectRoot, "dist", new URL(url).pathname)), url).toBe(true);
  });

  it("shares one runtime between functions, commands and pane", () => {
    const runtime = /<Runtime resid="([^"]+)" lifetime="long"\/>/.exec(manifest)?.[1];
    const page = /<Page>\s*<SourceLocation resid="([^"]+)"/.exec(manifest)?.[1];
    const commands = /<FunctionFile resid="([^"]+)"/.exec(manifest)?.[1];
    expect([page, commands]).toEqual([runtime, runtime]);
    expect(runtime).toBe("Taskpane.Url");
  });

  it("asks only for views that the pane has", () => {
    const asked = [...manifest.matchAll(/<FunctionName>([^<]+)<\/FunctionName>/g)].map((found) => found[1]);
    const offered = (Object.keys(viewTitles) as ViewName[]).map(actionOf);
    expect(asked.length).toBeGreaterThan(0);
    expect(asked.filter((name) => !offered.includes(name ?? ""))).toEqual([]);
  });

  it("gives the functions the namespace that formulas use", () => {
    expect(manifest).toContain(`id="Functions.Namespace" DefaultValue="${NAMESPACE}"`);
  });

  it("carries the version of the package", () => {
    const { version } = JSON.parse(readFileSync(path.join(projectRoot, "package.json"), "utf8")) as { version: string };
    expect(manifest).toContain(`<Version>${version}.0</Version>`);
  });
});
