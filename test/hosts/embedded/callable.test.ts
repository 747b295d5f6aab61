import { describe, expect, it } from "vitest";
import { callable } from "../../../src/hosts/embedded/functions/callable";
import { FunctionError, type Implementation } from "../../../src/hosts/embedded/functions/collector";
import type { ParameterMetadata } from "../../../src/hosts/embedded/functions/metadata";
import { Sentences } from "../../../src/hosts/embedded/functions/sentences";

const scalar = (type: string, optional = false): ParameterMetadata => ({
  name: "x",
  type,
  dimensionality: "scalar",
  optional,
});
const matrix: ParameterMetadata = { name: "m", type: "any", dimensionality: "matrix" };

const CELL = { subUnitId: "sheet", row: 4, column: 2 };

function prepared(
  parameters: readonly ParameterMetadata[],
  implementation: Implementation,
  sentences = new Sentences(),
) {
  const called = callable({ id: "F", name: "F", parameters }, implementation, sentences);
  return { call: (...args: unknown[]) => called.apply(CELL, args), sentences };
}

describe("a throwing function cannot stop the engine", () => {
  it("answers the error's own code, and keeps its sentence for the cell", () => {
    const { call, sentences } = prepared([], () => {
      throw new FunctionError("#N/A", "No table reaches that far.");
    });
    expect(call()).toBe("#N/A");
    expect(sentences.find("sheet", 4, 2, "#N/A")).toBe("No table reaches that far.");
    expect(sentences.find("sheet", 4, 2, "#VALUE!")).toBeUndefined();
  });

  it("answers #VALUE! for a bug, which has no sentence for a person", () => {
    const { call, sentences } = prepared([], () => {
      throw new TypeError("x is not a function");
    });
    expect(call()).toBe("#VALUE!");
    expect(sentences.find("sheet", 4, 2, "#VALUE!")).toBeUndefined();
  });

  it("forgets the sentence once the function answers", () => {
    let fails = true;
    const { call, sentences } = prepared([], () => {
      if (fails) throw new FunctionError("#VALUE!", "Too thin.");
      return 1;
    });
    call();
    fails = false;
    call();
    expect(sentences.find("sheet", 4, 2, "#VALUE!")).toBeUndefined();
  });
});

describe("arguments arrive as they were declared", () => {
  const echo: Implementation = (...args) => JSON.stringify(args);

  it("unwraps a single cell for a single value, and leaves it a range where a range is declared", () => {
    expect(prepared([scalar("any"), matrix], echo).call([[7]], [[7]])).toBe("[7,[[7]]]");
  });

  it("makes a range of a single value where a range is declared", () => {
    expect(prepared([matrix], echo).call(7)).toBe("[[[7]]]");
  });

  it("gives null for a left-out optional argument, at the end or between commas", () => {
    const parameters = [scalar("any", true), scalar("string", true), scalar("number", true)];
    expect(prepared(parameters, echo).call()).toBe("[null,null,null]");
    expect(prepared(parameters, echo).call(null, null, 3)).toBe("[null,null,3]");
  });

  it("reads a blank cell as an empty text for a text, and as 0 for a number", () => {
    expect(prepared([scalar("string"), scalar("number"), scalar("any")], echo).call([[""]], [[""]], [[""]])).toBe(
      '["",0,""]',
    );
  });

  it("turns numbers and booleans into declared texts, and texts into declared numbers", () => {
    expect(prepared([scalar("string"), scalar("string"), scalar("number")], echo).call(12, true, "3.5")).toBe(
      '["12","TRUE",3.5]',
    );
    expect(prepared([scalar("number")], echo).call("oak")).toBe("#VALUE!");
  });

  it("answers #VALUE! for too few or too many arguments, and takes any number where they repeat", () => {
    const one = prepared([scalar("any"), scalar("any", true)], echo);
    expect(one.call()).toBe("#VALUE!");
    expect(one.call(1, 2, 3)).toBe("#VALUE!");
    expect(prepared([{ ...scalar("any"), repeating: true }], echo).call(1, 2, 3)).toBe("[[1,2,3]]");
  });

  it("passes an error on without calling, from a single value or from inside a range", () => {
    let calls = 0;
    const { call } = prepared([scalar("any"), matrix], () => (calls += 1));
    expect(call("#DIV/0!", [[1]])).toBe("#DIV/0!");
    expect(call(1, [[1], ["#REF!"]])).toBe("#REF!");
    expect(calls).toBe(0);
    expect(call("#1 common", [["# logs"]])).toBe(1);
  });
});

describe("a range given for a single value", () => {
  const product: Implementation = (a, b) => Number(a) * Number(b);

  it("makes the function answer once for each cell, columns against rows", () => {
    const { call } = prepared([scalar("any"), scalar("any")], product);
    expect(call([[1], [2], [3]], 10)).toEqual([[10], [20], [30]]);
    expect(call([[1], [2]], [[3, 4]])).toEqual([
      [3, 4],
      [6, 8],
    ]);
    expect(call([[1], [2], [3]], [[1], [2]])).toEqual([[1], [4], ["#N/A"]]);
  });

  it("keeps one cell's error and sentence to that cell", () => {
    const { call, sentences } = prepared([scalar("any")], (x) => {
      if (x === 2) throw new FunctionError("#VALUE!", "Two will not do.");
      return x;
    });
    expect(call([[1], [2], [3]])).toEqual([[1], ["#VALUE!"], [3]]);
    expect(sentences.find("sheet", 5, 2, "#VALUE!")).toBe("Two will not do.");
    expect(sentences.find("sheet", 4, 2, "#VALUE!")).toBeUndefined();
  });
});

describe("answers are clean", () => {
  it.each([
    [NaN, "#VALUE!"],
    [Infinity, "#NUM!"],
    [undefined, ""],
    [null, ""],
    [new Date(0), "#VALUE!"],
    [{}, "#VALUE!"],
    [Promise.resolve(1), "#VALUE!"],
    ["oak", "oak"],
    [true, true],
    [[[5]], 5],
    [[], "#VALUE!"],
    [[[]], "#VALUE!"],
    [[[1, 2], [3]], "#VALUE!"],
    [[1, 2], "#VALUE!"],
  ])("%j becomes %j", (answer, expected) => {
    expect(prepared([], () => answer).call()).toEqual(expected);
  });

  it("cleans each cell of a range, and keeps the sentence of an error among them", () => {
    const { call, sentences } = prepared([], () => [
      [1, NaN, null],
      ["a", new FunctionError("#N/A", "Out of the table."), -Infinity],
    ]);
    expect(call()).toEqual([
      [1, "#VALUE!", ""],
      ["a", "#N/A", "#NUM!"],
    ]);
    expect(sentences.find("sheet", 5, 3, "#N/A")).toBe("Out of the table.");
  });
});
