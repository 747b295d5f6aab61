import { describe, expect, it } from "vitest";
import { didYouMean, NameMatch } from "../../../src/core/basis/nameMatch";

const trees = [
  { names: ["red maple", "swamp maple"] },
  { names: ["sugar maple"] },
  { names: ["eastern white pine"] },
  { names: ["western white pine"] },
  { names: ["yellow-poplar"] },
  { names: ["bastard oak"] },
  { names: ["Bastard oak", "Durand oak"] },
  { names: ["devil's walkingstick"] },
];
const match = new NameMatch(trees, ({ names }) => names);
const liked = (text: string) => match.like(text).map(({ names }) => names[0]);

describe("names that people write", () => {
  it.each(["red maple", "Red  Maple", "MAPLE, RED", "red-maple", "Swamp maple"])("%s is the red maple", (text) => {
    expect(match.bearing(text)).toEqual([trees[0]]);
  });

  it("finds a name with signs in it, and one that two things share", () => {
    expect(match.bearing("yellow poplar")).toEqual([trees[4]]);
    expect(match.bearing("Devils Walkingstick")).toEqual([trees[7]]);
    expect(match.bearing("bastard oak")).toEqual([trees[5], trees[6]]);
  });

  it.each(["", "-", "maple", "red mapel", "red maples", "constructor", "\u0000"])(
    "%j is no name of anything",
    (text) => {
      expect(match.bearing(text)).toEqual([]);
    },
  );
});

describe("what is like a name", () => {
  it("proposes what begins alike, the likest first", () => {
    expect(liked("red mapel")[0]).toBe("red maple");
    expect(liked("white pine")).toEqual(["eastern white pine", "western white pine"]);
    expect(liked("yellow popler")).toEqual(["yellow-poplar"]);
    expect(liked("maple")).toEqual(["red maple", "sugar maple"]);
  });

  it("proposes nothing for what is like nothing", () => {
    for (const text of ["", "RP", "xyz", "12", "x".repeat(5000)]) expect(liked(text)).toEqual([]);
  });

  it("proposes no more than it is asked for", () =>
    expect(match.like("oak maple pine white", 1).length).toBeLessThan(2));

  it("says it in a sentence", () => {
    expect(didYouMean([])).toBe("");
    expect(didYouMean(["red maple"])).toBe("Did you mean red maple?");
    expect(didYouMean(["red maple", "bur oak", "tamarack"])).toBe("Did you mean red maple, bur oak or tamarack?");
  });
});
