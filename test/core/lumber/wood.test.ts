import { expect, it } from "vitest";
import { OutOfRange } from "../../../src/core/basis/problem";
import { findWood, woods } from "../../../src/core/lumber/wood";

it.each(woods)("finds $name by its name, its scientific name and its code", ({ name, scientific, code }) => {
  for (const text of [name, name.toUpperCase(), ` ${scientific} `, String(code)])
    expect(findWood(text).name).toBe(name);
});

it("minds neither the order of words, nor commas, nor hyphens", () => {
  expect(findWood("Oak, northern red").code).toBe(833);
  expect(findWood("yellow poplar").name).toBe("yellow-poplar");
  expect(findWood("white cedar northern").name).toBe("northern white-cedar");
});

it.each([
  ["red oak", '"red oak" is not in the wood table. Did you mean northern red oak or southern red oak'],
  ["Acer", '"Acer" is not in the wood table. Did you mean red maple, silver maple or sugar maple?'],
  ["yellow popler", '"yellow popler" is not in the wood table. Did you mean yellow-poplar?'],
  ["mockernut hickery", '"mockernut hickery" is not in the wood table. Did you mean mockernut hickory'],
  ["Zx", /Give a common name such as northern red oak, a scientific name, or an inventory code such as 833\.$/],
  ["999", /^"999" is not in the wood table\. Give a common name/],
])("says what %s may have meant", (text, sentence) => {
  expect(() => findWood(text)).toThrow(OutOfRange);
  expect(() => findWood(text)).toThrow(sentence);
});
