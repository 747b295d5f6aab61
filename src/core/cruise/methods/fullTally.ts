import { requirePositive } from "../../basis/require";
import { perAcre } from "../../basis/units";
import type { SamplingMethod } from "../samplingMethod";

/**
 * Every tree of the tract, or of each of its parts. Nothing is left to the luck of the draw, so there is no margin
 * of error to state; a margin of 0 would be false, since slips of the tape and of the volume table remain.
 *
 *     TF = 1 / A
 *
 *     TF  trees per acre that the tree adds to its part of the tract   [1/ac]
 *     A   acres of that part                                          [ac]
 *
 * @throws InvalidInput when the diameter or the acres are not a number above 0
 */
export const fullTally: SamplingMethod = {
  id: "fullTally",
  title: "All",
  aliases: ["All trees", "Full tally", "100 %", "100 % tally", "100%"],
  size: { what: "Tract size", kind: "area", low: 0.001, high: 1e6 },
  plotsWeigh: "by area",
  complete: true,
  sources: [
    {
      author: "trade habit",
      year: "",
      title: "Tally of every tree",
      where: "a tally over the acres it was taken on; no sampling error",
      standing: "common practice",
    },
  ],

  treesPerAcre(dbh, size) {
    requirePositive("DBH", dbh, "in");
    requirePositive("Tract size", size, "ac");
    return perAcre(1 / size);
  },
};
