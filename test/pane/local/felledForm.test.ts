import { expect, it } from "vitest";
import { readFelled } from "../../../src/pane/local/felledForm";

const imperial = { diameter: "in", distance: "ft", volume: "ft³" } as const;
const metric = { diameter: "cm", distance: "m", volume: "m³" } as const;

it("reads a felled tree", () => {
  expect(readFelled({ dbh: "14.2", height: " 62 ", volume: "30.1" }, imperial)).toEqual({
    tree: { dbh: 14.2, height: 62, volume: 30.1 },
    problems: {},
  });
});

it("says beside each box what is wrong, in the units of the workbook", () => {
  expect(readFelled({ dbh: "142", height: "", volume: "0" }, imperial)).toEqual({
    problems: {
      dbh: "Type a DBH from 1 to 80 in.",
      height: "Type a height from 5 to 400 ft.",
      volume: "Type the wood of its stem, above 0 and up to 10,000 ft³.",
    },
  });
  expect(readFelled({ dbh: "2", height: "200", volume: "x" }, metric).problems).toEqual({
    dbh: "Type a DBH from 3 to 203 cm.",
    height: "Type a height from 2 to 121 m.",
    volume: "Type the wood of its stem, above 0 and up to 10,000 m³.",
  });
});
