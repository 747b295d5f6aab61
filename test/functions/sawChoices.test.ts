import { describe, expect, it } from "vitest";
import { fullTaper } from "../../src/core/sawing/lyingLog";
import { onTheScale } from "../../src/core/sawing/scale";
import { ChoicePattern, ChoiceTaper, sawValue, sawWhatIf } from "../../src/functions/sawChoices";
import { sawLayout, SawingPatternName, SawingTaper, sawPlan, sawYield } from "../../src/functions/sawing";

const live = ChoicePattern.live;
const alike = SawingPatternName.live;

describe("SAWWHATIF", () => {
  it("tells what other kerfs and one product more would give, and how much more that is", () => {
    const rows = sawWhatIf([[10.8]], [[10.8]], [[8]], [[1, 10]], 0.125, live, [[1, 4]]);
    expect(rows.map(([name]) => name as string)).toEqual([
      "If",
      "As it is",
      "Kerf 0.0625 in",
      "Kerf 0.25 in",
      "With 1 x 4 in too",
    ]);
    // A face of 10 in reaches 2.04 in from the pith: three inch boards lie there at any kerf up to half an inch.
    expect(rows.slice(1, 4).map((row) => row[1] as number)).toEqual([3, 3, 3]);
    expect(rows[4]?.[4]).toBeGreaterThan(0);
  });

  it("says why where nothing can be planned, and waits for a log", () => {
    expect(sawWhatIf([[4]], [[5]], [[16]], [[2, 8]], 0.125, live, [[1, 2]])[1]?.[1]).toContain("No board in your list");
    expect(sawWhatIf([[null]], [[5]], [[16]], [[2, 8]], 0.125, live)[1]?.[0]).toBe("No log yet");
  });
});

describe("SAWWHATIF with prices", () => {
  const tried = (boards: readonly unknown[], more: readonly unknown[]) =>
    sawWhatIf([[10.8]], [[10.8]], [[8]], [[...boards]], 0.125, live, [[...more]])
      .at(-1)
      ?.slice(0, 2) as string[];

  it("says which product is not tried because it alone has a price, or has none", () => {
    expect(tried([1, 10, 900], [1, 4, 700])[1]).toBeGreaterThan(3);
    expect(tried([1, 10, 900], [1, 4, ""])).toEqual([
      "With 1 x 4 in too",
      "Not tried: the boards have prices, this one has none. Give it one in $ per MBF or per piece.",
    ]);
    expect(tried([1, 10], [1, 4, 700])[1]).toMatch(/^Not tried: the boards have no prices/);
  });
});

describe("SAWVALUE", () => {
  it("shares the lumber out by grade, prices the rest by volume, and counts hours", () => {
    const grades = [
      ["Better", 25, 1000],
      ["Common", 75, 400],
    ];
    const rates = [
      ["Slabs", 1],
      ["Sawdust", 1],
      ["Board feet per hour", 100],
    ];
    const rows = sawValue([[10.8]], [[10.8]], [[8]], [[1, 10]], 0.125, live, grades, rates);
    // 20 bf; the log holds pi x 10.8^2 x 8 / 576 = 5.0894 ft3, the lumber 20 / 12 = 1.6667 of it.
    const value = (item: string) => rows.find(([name]) => name === item);
    expect(value("Better")).toEqual(["Better", 5, "bf", 1000, 5]);
    expect(value("Common")?.[4]).toBeCloseTo(6, 9);
    expect((value("Slabs and edgings")?.[1] as number) + (value("Sawdust")?.[1] as number)).toBeCloseTo(3.4227, 3);
    expect(value("Whole log")?.[4]).toBeCloseTo(5 + 6 + 3.4227, 3);
    expect(value("Hours at the mill")?.[1]).toBeCloseTo(0.2, 9);
    expect(value("Value per hour")?.[1]).toBeCloseTo(72.11, 1);
  });

  it("wants shares that add to 100", () => {
    const short = [["Better", 25, 1000]];
    expect(() => sawValue([[12]], [[12]], [[8]], [[1, 4]], 0.125, live, short)).toThrow(
      "Grade shares should add to 100 %. You have 25.",
    );
    expect(() => sawValue([[12]], [[12]], [[8]], [[1, 4]], 0.125, live, [["", 100, 5]], [["Bark", 2]])).toThrow(
      "Rate should be one of: Slabs, Sawdust, Board feet per hour.",
    );
  });
});

describe("products of a board list", () => {
  it("resaws a blank into two pieces of bevel siding, T = b + p + k", () => {
    const list = [
      ["Thickness", "Width", "Product", "Price per piece"],
      [1.0625, 6, "Bevel siding", 3],
    ];
    const plan = sawPlan([[8]], [[8]], [[8]], list, 0.0625, alike);
    const [, first] = plan.filter((row) => String(row[3]).includes("bevel siding"));
    expect(first?.[3]).toBe("1.063 x 6 x 8 for 2 bevel siding");
    expect(first?.[4]).toBeCloseTo((1 * 6 * 8) / 12, 9); // (1.0625 - 0.0625) x 6 x 8 / 12
    expect(first?.[5]).toBe(6); // two at $3
  });

  it("cuts a blank into shingles, butts and tips by turns", () => {
    const list = [
      ["Thickness", "Width", "Product", "Price per piece"],
      [4, 4, "Shingles", 0.5],
    ];
    const rows = sawPlan([[7]], [[7]], [[8]], list, 0.125, alike);
    // (4 + 1/8) / (0.23125 + 1/8) = 11.58, so 11 a block; (8 + 1/96) / (16/12 + 1/96) = 5.96, so 5 blocks of 16 in.
    const [blank] = rows.filter((row) => String(row[3]).includes("shingles"));
    expect(blank?.[3]).toBe("4 x 4 x 8 for 55 shingles");
    expect(blank?.[5]).toBe(27.5);
  });

  it("reads random widths, steps of widths, and six columns without headings", () => {
    const volume = (boards: unknown[][]) => sawYield([[12]], [[12]], [[8]], boards, 0.125, alike)[1]?.[1] as number;
    const listed = volume([4, 6, 8, 10].map((width) => [1, width]));
    expect(volume([[1, "4 to 10 by 2"]])).toBe(listed);
    expect(volume([[1, "random"]])).toBeGreaterThan(listed);
    expect(volume([[1, "4 and wider", null, null, null, null]])).toBeGreaterThan(listed);
    expect(volume([[1, 8, 8, "Board", null, null]])).toBe(volume([[1, 8]]));
    expect(() => volume([[1, "wide"]])).toThrow("Board width needs a number");
    expect(() => volume([[1, "9 to 4"]])).toThrow("of 100 widths at most");
  });
});

describe("how a log lies", () => {
  it("takes two diameters of an oval end, sweep and taper, and says how the log is laid", () => {
    const boards = [[1, 4]];
    const oval = sawPlan([[10], [12]], [[10], [12]], [[8]], boards, 0.125, alike);
    expect(oval[1]?.[1]).toMatch(/^none, laid with longer diameter (level|upright)$/);
    const bent = sawPlan([[12]], [[12]], [[8]], boards, 0.125, alike, undefined, 2);
    expect(bent[1]?.[1]).toMatch(/laid with belly (up|to the right)/);
    const volume = (sweep: number) =>
      sawYield([[12]], [[12]], [[8]], boards, 0.125, alike, undefined, sweep)[1]?.[1] as number;
    expect(volume(3)).toBeLessThan(volume(0));
    const full = sawPlan([[12]], [[16]], [[8]], boards, 0.125, alike, undefined, 0, SawingTaper.full);
    expect(full[1]?.[1]).toBe("none");
    expect(fullTaper.title).toBe(String(ChoiceTaper.full));
    const pieces = sawLayout([[12]], [[12]], [[8]], boards, 0.125, alike, undefined, 2).map((row) => row[2] as string);
    expect(new Set(pieces)).toContain("Middle");
  });

  it("shows each setting as the scale does, and what that does to the thickness", () => {
    const mill = [["Scale step", 0.0625]];
    const rows = sawPlan([[12]], [[12]], [[8]], [[1, 6]], 0.09, alike, mill);
    expect(rows[0]?.[6]).toBe("On the scale");
    for (const [, , reading, piece, , , shown] of rows.slice(1)) {
      if (typeof reading !== "number") continue;
      const [whole = "0", fraction = "0/1"] =
        String(shown).includes("/") && !String(shown).includes(" ") ? ["0", String(shown)] : String(shown).split(" ");
      const [over = NaN, under = NaN] = fraction.split("/").map(Number);
      expect(Number(whole) + over / under).toBeCloseTo(reading, 9);
      // 1 in and a kerf of 0.09 need 18 marks of 1/16: 1.125 - 0.09 = 1.035.
      if (piece !== "slab") expect(piece).toMatch(/, sawn 1.035 thick$/);
    }
    expect(onTheScale(12.4375, 1 / 16)).toBe("12 7/16");
    expect(onTheScale(0.5, 1 / 16)).toBe("1/2");
    expect(onTheScale(3, 1 / 16)).toBe("3");
    expect(onTheScale(3, 0.3)).toBe("10 marks");
  });
});
