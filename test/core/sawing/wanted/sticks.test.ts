import { describe, expect, it } from "vitest";
import { feet } from "../../../../src/core/basis/units";
import { allot } from "../../../../src/core/sawing/wanted/allot";
import { cutDowns } from "../../../../src/core/sawing/wanted/cutDown";
import { sticksOf } from "../../../../src/core/sawing/wanted/sticks";
import { piece } from "../../../support/cutLists";

describe("boards to be cut to pieces", () => {
  it("are as long as pieces of one cross-section end to end: 8 and 10 ft from a log of 18 ft", () => {
    const { sizes, piecesIn } = sticksOf([piece(2, 4, 8), piece(2, 4, 10), piece(2, 6, 8)], [5, 7, 8], 18);
    const told = sizes.map(({ width, length, pricePerPiece }) => [width, length, pricePerPiece]);
    expect(told).toEqual([
      [4, 8, 5],
      [4, 10, 7],
      [4, 16, 10],
      [4, 18, 12],
      [6, 8, 8],
      [6, 16, 16],
    ]);
    expect([...piecesIn(piece(2, 4, 18))].sort()).toEqual([0, 1]);
    expect(piecesIn(piece(2, 6, 16))).toEqual([2, 2]);
  });

  it("leave out what is worth nothing, what is too long, and a longer board that is worth no more", () => {
    expect(sticksOf([piece(2, 4, 8), piece(2, 4, 20)], [0, 9], 16).sizes).toEqual([]);
    const { sizes } = sticksOf([piece(1, 6, 8), piece(1, 6, 9)], [5, 4], 16);
    expect(sizes.map(({ length }) => length)).toEqual([8, 16]);
  });

  it("meet a length to the hair: three pieces of 5.33 ft from 15.99 ft", () => {
    const { sizes } = sticksOf([piece(1, 4, 5.33)], [1], 15.99);
    expect(sizes.at(-1)).toMatchObject({ length: feet(15.99), pricePerPiece: 3 });
  });
});

describe("pieces that are had too often", () => {
  const pieces = [piece(2, 8, 16), piece(2, 4, 8), piece(1, 4, 8), piece(2, 8, 16)];

  it("can be cut down, a kerf between: 2 x 8 x 16 to two of 2 x 4 x 8 only, for 8 in hold one 4 in and a kerf", () => {
    expect(cutDowns(pieces, 0.125)).toEqual([
      { from: 0, to: 1, gives: 2 },
      { from: 0, to: 2, gives: 2 },
      { from: 0, to: 3, gives: 1 },
      { from: 1, to: 2, gives: 1 },
      { from: 3, to: 1, gives: 2 },
      { from: 3, to: 2, gives: 2 },
    ]);
  });

  it("fill what is missing, the leftover cut further", () => {
    const plan = { worth: 0, gives: [1, 0, 0, 0], plans: [] };
    const { gives, missing } = allot([{ source: 0, plan }], [0, 1, 1, 0], pieces, cutDowns(pieces, 0.125));
    expect(gives).toEqual([[0, 1, 1, 0]]);
    expect(missing).toEqual([0, 0, 0, 0]);
  });
});
