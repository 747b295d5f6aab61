import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addressOf, beside, cellAt, columnLetters, fixed, meet, zoneAt } from "../../src/workbook/address";

describe("addresses of cells", () => {
  it.each([
    [0, "A"],
    [25, "Z"],
    [26, "AA"],
    [51, "AZ"],
    [701, "ZZ"],
    [702, "AAA"],
    [16_383, "XFD"],
  ])("column %i is %s", (column, letters) => {
    expect(columnLetters(column)).toBe(letters);
  });

  it("reads back every zone it writes", () => {
    const zone = fc.record({
      row: fc.nat(5000),
      column: fc.nat(16_000),
      rows: fc.integer({ min: 1, max: 300 }),
      columns: fc.integer({ min: 1, max: 300 }),
    });
    fc.assert(
      fc.property(zone, (one) => {
        expect(zoneAt(addressOf(one))).toEqual(one);
      }),
    );
  });

  it("reads fixed addresses and those behind a sheet's name", () => {
    expect(zoneAt("'Stand table'!$B$3:$C$5")).toEqual({ row: 2, column: 1, rows: 3, columns: 2 });
    expect(fixed("AB12")).toBe("$AB$12");
    expect(beside("B2", 3, -1)).toBe("A5");
    expect(cellAt(11, 27)).toBe("AB12");
    expect(() => zoneAt("Trees")).toThrow("no address");
  });

  it("sees when zones meet, and when they only touch", () => {
    const zone = zoneAt("B2:C4");
    expect(meet(zone, zoneAt("C4:D9"))).toBe(true);
    expect(meet(zone, zoneAt("D2:E4"))).toBe(false);
    expect(meet(zone, zoneAt("B5"))).toBe(false);
  });
});
