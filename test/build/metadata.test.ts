import { readFileSync, readdirSync, statSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import quantile from "@stdlib/stats-base-dists-t-quantile";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { mersenne } from "pure-rand/generator/mersenne";
import { beforeAll, describe, expect, it } from "vitest";
import { functionNames, NAMESPACE } from "../../src/functions/names";
import { builtInNames } from "../support/builtInNames";
import { projectRoot } from "../support/sourceFiles";

interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional?: boolean;
    readonly repeating?: boolean;
  }[];
}

const dist = (file: string) => path.join(projectRoot, "dist", file);

/** A1 to XFD1048576, and the R1C1 way of saying it. */
const isCellAddress = (name: string) => /^[A-Z]{1,3}[0-9]{1,7}$/.test(name) || /^R[0-9]*C[0-9]*$/.test(name);

describe("functions.json and functions.js, as built", () => {
  let functions: readonly FunctionMetadata[];
  const associated = new Map<string, unknown>();

  beforeAll(() => {
    functions = (JSON.parse(readFileSync(dist("functions.json"), "utf8")) as { functions: FunctionMetadata[] })
      .functions;
    // A bare engine: no window, no document, no Office, no console; only what the vendor promises to functions.
    const CustomFunctions = {
      associate: (id: string, one: unknown) => associated.set(id, one),
      Error: class extends Error {},
      ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
    };
    vm.runInContext(readFileSync(dist("functions.js"), "utf8"), vm.createContext({ CustomFunctions }));
  });

  it("tells of exactly the functions that functions.js hands over, and of those that workbooks may call", () => {
    const ids = functions.map((one) => one.id).sort();
    expect([...associated.keys()].sort()).toEqual(ids);
    expect([...functionNames].sort()).toEqual(ids);
  });

  it("knows Student's t in a bare engine: 8,071 bf/ac give or take 1,779 from fourteen points, t = 2.160", () => {
    const points = [7420, 9650, 5130, 11280, 8040, 6310, 12760, 3980, 8890, 7150, 10240, 1870, 11950, 8330];
    const margin = associated.get("MARGINOFERROR") as (values: number[][], confidence: number) => number;
    expect(
      margin(
        points.map((one) => [one]),
        95,
      ),
    ).toBeCloseTo(1779, 0);
  });

  it("keeps of its libraries all that it uses: margins and random starts to the last digit", () => {
    const call = <T>(id: string, ...values: unknown[]) =>
      (associated.get(id) as (...values: unknown[]) => T)(...values);
    for (let plots = 2; plots < 40; plots += 1) {
      const values = Array.from({ length: plots }, (_, plot) => [plot]);
      const deviation = Math.sqrt((plots * (plots + 1)) / 12 / plots); // of the mean of 0, 1, 2, ...
      for (const confidence of [50, 68, 90, 99.9])
        expect(call<number>("MARGINOFERROR", values, confidence) / deviation).toBeCloseTo(
          quantile(0.5 + confidence / 200, plots - 1),
          5,
        );
    }
    for (const seed of [1, 7, 365, 2 ** 31 - 1]) {
      const chance = mersenne(seed);
      const [east, north] = [uniformFloat64(chance) * 220, uniformFloat64(chance) * 220];
      const [, first] = call<number[][]>(
        "GRIDINOUTLINE",
        [[0], [900], [900], [0]],
        [[0], [0], [900], [900]],
        220,
        seed,
      );
      expect(first?.slice(1)).toEqual([expect.closeTo(east, 8), expect.closeTo(north, 8)]);
    }
  });

  it("declares as many arguments as each function takes", () => {
    for (const { id, parameters } of functions) {
      const given = associated.get(id) as (...args: unknown[]) => unknown;
      expect(given.length, id).toBe(parameters.length);
    }
  });

  it("calls no function by a cell address, a built-in name, a short name or a name twice", () => {
    const names = functions.map((one) => one.name.toUpperCase());
    expect(names.filter(isCellAddress)).toEqual([]);
    expect(names.filter((name) => builtInNames.has(name))).toEqual([]);
    expect(names.filter((name) => name.length < 3 || name.length > 64)).toEqual([]);
    expect(new Set(names).size).toBe(names.length);
  });

  it("keeps the lengths that Excel accepts", () => {
    expect(NAMESPACE.length).toBeLessThanOrEqual(32);
    for (const { id, description, parameters } of functions) {
      expect(description.length, id).toBeGreaterThan(20);
      expect(description.length, id).toBeLessThanOrEqual(1024);
      expect(parameters.length, id).toBeLessThanOrEqual(128);
      for (const parameter of parameters) {
        expect(parameter.name.length, id).toBeLessThanOrEqual(64);
        expect(parameter.description?.length ?? 0, `${id} ${parameter.name}`).toBeGreaterThan(3);
        expect(parameter.description.length, `${id} ${parameter.name}`).toBeLessThanOrEqual(512);
      }
    }
  });

  it("puts optional arguments last", () => {
    for (const { id, parameters } of functions) {
      const firstOptional = parameters.findIndex((one) => one.optional);
      if (firstOptional >= 0)
        expect(
          parameters.slice(firstOptional).every((one) => one.optional),
          id,
        ).toBe(true);
    }
  });

  it("stays small enough for every platform", () => {
    expect(statSync(dist("functions.json")).size).toBeLessThan(200_000);
  });

  it("keeps the embedded grid out of what Excel loads", () => {
    const excelFiles = readdirSync(dist("")).filter((file) => file.endsWith(".js"));
    expect(excelFiles).toContain("taskpane.js");
    for (const file of excelFiles) expect(readFileSync(dist(file), "utf8").includes("univer"), file).toBe(false);
  });
});
