import { expect, it } from "vitest";
import { likeCodes } from "../../../src/core/cruise/likeCodes";

const codes = ["ro", "wo", "sm", "yp", "bc", "hick"];

it.each([
  ["rp", ["ro", "yp"], "one letter wrong, those with the same beginning first"],
  ["RO ", ["wo"], "its own code is no slip of itself"],
  ["or", ["ro"], "two letters swapped"],
  ["hck", ["hick"], "a letter missing"],
  ["hicck", ["hick"], "a letter too many"],
  ["hikc", ["hick"], "two letters swapped further in"],
  ["zz", [], "nothing like it"],
  ["r", [], "one letter tells too little"],
])("%s is like %j: %s", (typed, like) => {
  expect(likeCodes(typed, codes)).toEqual(like);
});
