import { readdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { projectRoot } from "../support/sourceFiles";
import { hostileArgument, plausibleArgument } from "./arguments";

type Shell = (...args: unknown[]) => unknown;

interface Declared {
  readonly id: string;
  readonly result: { readonly type?: string; readonly dimensionality?: string };
  readonly parameters: readonly {
    readonly name: string;
    readonly optional?: boolean;
    /** The last argument, given any number of times: the spreadsheet hands all of them over as one list. */
    readonly repeating?: boolean;
  }[];
}

const folder = path.join(projectRoot, "src/functions");
const files = readdirSync(folder)
  .filter((file) => file.endsWith(".ts") && file !== "names.ts" && file !== "register.ts")
  .map((file) => path.join(folder, file));

/** Read from the shells themselves, as functions.json is, so that no build is needed. */
const metadata = JSON.parse((await generateCustomFunctionsMetadata(files, false)).metadataJson) as {
  functions: Declared[];
};
const shells = new Map<string, Shell>();
for (const file of files) {
  const exported = (await import(/* @vite-ignore */ pathToFileURL(file).href)) as Record<string, unknown>;
  for (const [name, one] of Object.entries(exported)) {
    if (typeof one === "function") shells.set(name.toUpperCase(), one as Shell);
  }
}

describe.each(metadata.functions.map((one) => [one.id, one] as const))("%s, whatever it is given,", (id, declared) => {
  const shell = shells.get(id);
  const required = declared.parameters.filter((one) => !one.optional).length;

  const answersHonestly = (args: readonly unknown[]): void => {
    if (!shell) throw new Error(`${id} has no shell`);
    let answer: unknown;
    try {
      answer = shell(...args);
    } catch (problem) {
      expectSentence(problem);
      return;
    }
    expectDeclaredKind(answer, declared);
  };

  const repeats = declared.parameters.at(-1)?.repeating === true;

  const filled = (one: fc.Arbitrary<unknown>) => {
    const args = fc
      .array(one, { minLength: required, maxLength: declared.parameters.length })
      .map((given) => [...given, ...Array<null>(declared.parameters.length - given.length).fill(null)]);
    if (!repeats) return args;
    return fc.tuple(args, fc.array(one, { maxLength: 8 })).map(([given, list]) => [...given.slice(0, -1), list]);
  };

  it("answers hostile arguments with a value of its kind or a sentence", () => {
    fc.assert(fc.property(filled(hostileArgument), answersHonestly), { numRuns: 150 });
  });

  it("answers a mixture of sound and hostile arguments likewise", () => {
    fc.assert(fc.property(filled(fc.oneof(plausibleArgument, plausibleArgument, hostileArgument)), answersHonestly), {
      numRuns: 300,
    });
  });
});

function expectDeclaredKind(answer: unknown, { id, result }: Declared): void {
  if (result.dimensionality === "matrix") {
    expect(Array.isArray(answer), id).toBe(true);
    const rows = answer as unknown[][];
    expect(rows.length, id).toBeGreaterThan(0);
    const width = rows[0]?.length ?? 0;
    expect(width, id).toBeGreaterThan(0);
    for (const row of rows) {
      expect(row.length, `${id} is ragged`).toBe(width);
      for (let column = 0; column < row.length; column += 1) expectCell(row[column], id);
    }
    return;
  }
  expectCell(answer, id);
  if (result.type === "number") expect(typeof answer, id).toBe("number");
  if (result.type === "string") expect(typeof answer, id).toBe("string");
}

function expectCell(cell: unknown, id: string): void {
  if (typeof cell === "string" || typeof cell === "boolean") return;
  if (typeof cell === "number") {
    if (!Number.isFinite(cell)) throw new Error(`${id} answered ${cell}`);
    return;
  }
  expectSentence(cell);
}

function expectSentence(problem: unknown): void {
  if (!(problem instanceof CustomFunctions.Error)) throw problem;
  const { code, message = "" } = problem;
  expect(["#VALUE!", "#N/A"]).toContain(code);
  expect(message).toMatch(/^[A-Z0-9"'].{8,1500}[.?]$/s);
  // What the user himself typed is quoted, whatever it was.
  expect(message.replace(/"[^"]*"/g, "")).not.toMatch(/\b(NaN|undefined|null|Infinity)\b|\[object/);
}
