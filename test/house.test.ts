import { readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { identifiersOf, memberAccessesOf, projectRoot, sourceFiles } from "./support/sourceFiles";

/** Which rooms of src a room may look into, itself apart. A room is a folder; the longest that fits a file is its room. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  "core/basis": [],
  "core/reference": ["core/basis"],
  "core/log": ["core/basis", "core/reference"],
  "core/lumber": ["core/basis", "core/reference"],
  "core/tree": ["core/basis", "core/reference", "core/log"],
  "core/cruise": ["core/basis", "core/reference", "core/log", "core/tree"],
  "core/sawing": ["core/basis", "core/reference", "core/log", "core/lumber"],
  "core/value": ["core/basis", "core/reference", "core/log", "core/lumber", "core/tree", "core/cruise", "core/sawing"],
  functions: ["core"],
  workbook: ["core", "functions/names.ts"],
  demo: ["core", "workbook"],
  pane: ["core", "workbook", "demo"],
  hosts: ["core", "functions", "workbook", "demo", "pane"],
};

/** Names that only some rooms may speak. */
const spokenOnlyIn: Readonly<Record<string, readonly string[]>> = {
  CustomFunctions: ["functions", "hosts"],
  Office: ["hosts"],
  Excel: ["hosts"],
  document: ["pane", "hosts"],
};

/** The clock and chance make an answer differ from one run to the next, so only hosts have them. */
const onlyInHosts = ["Date.now", "new Date", "Math.random", "performance.now"];

const topLevel = [
  ".ci",
  ".config",
  ".editorconfig",
  ".gitignore",
  ".npmrc",
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "manifest.xml",
  "package-lock.json",
  "package.json",
  "src",
  "test",
  "tsconfig.json",
  "webpack.config.js",
];

const files = sourceFiles();
const rooms = Object.keys(mayImport).sort((a, b) => b.length - a.length);
const inside = (file: string, room: string) => file === room || file.startsWith(`${room}/`);
const roomOf = (file: string) => rooms.find((room) => inside(file, room));

describe("the house", () => {
  it("has a room for every file", () => {
    expect(files.filter((file) => !roomOf(file.path)).map((file) => file.path)).toEqual([]);
  });

  it.each(files.map((file) => [file.path, file] as const))("%s looks only into rooms below its own", (path, file) => {
    const own = roomOf(path) ?? "";
    const allowed = [own, ...(mayImport[own] ?? [])];
    expect(file.imports.filter((target) => !allowed.some((room) => inside(target, room)))).toEqual([]);
  });

  it("has no circle of imports", () => {
    const importsOf = new Map(files.map((file) => [file.path, file.imports]));
    const done = new Set<string>();
    const visit = (path: string, trail: readonly string[]): void => {
      const start = trail.indexOf(path);
      if (start >= 0) throw new Error(`circle: ${[...trail.slice(start), path].join(" -> ")}`);
      if (done.has(path)) return;
      for (const target of importsOf.get(path) ?? []) visit(target, [...trail, path]);
      done.add(path);
    };
    for (const file of files) visit(file.path, []);
    expect(done.size).toBe(files.length);
  });

  it.each(Object.entries(spokenOnlyIn))("names %s only where it exists", (name, allowed) => {
    const speakers = files.filter((file) => identifiersOf(file.syntax).has(name)).map((file) => file.path);
    expect(speakers.filter((path) => !allowed.some((room) => inside(path, room)))).toEqual([]);
  });

  it.each(onlyInHosts)("asks %s only in hosts", (chain) => {
    const askers = files.filter((file) => memberAccessesOf(file.syntax).has(chain)).map((file) => file.path);
    expect(askers.filter((path) => !inside(path, "hosts"))).toEqual([]);
  });

  it("shows nothing unexpected at its door", () => {
    const made = [".git", "node_modules", "dist"];
    expect(readdirSync(projectRoot).filter((name) => !made.includes(name) && !topLevel.includes(name))).toEqual([]);
  });
});
