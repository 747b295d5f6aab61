import { inchesOf, type DefectKind } from "./defectKind";
import { grosenbaugh } from "./grosenbaugh";

const FEET_PER_INCH_ALLOWED = 8; // 1 in in 8 ft, 2 in in 16 ft [1]

/**
 * A bow along the whole log.
 *
 *     P = (S - L / 8) / d, not below 0
 *
 *     P  share of the gross scale                                    [1]
 *     S  largest departure of the edge from a straight line          [in]
 *     L  log length                                                  [ft]
 *     d  scaling diameter                                            [in]
 *
 * The source allows 2 in for a log of 16 ft and 1 in for one of 8 ft; in between and beyond the allowance is taken in
 * proportion (a reading of ours).
 */
export const sweep: DefectKind = {
  id: "sweep",
  title: "Sweep",
  sources: [
    ...grosenbaugh("[1] sweep: (S - 2)/d for 16 ft, (S - 1)/d for 8 ft"),
    {
      author: "Woodlot Reckoner",
      year: "",
      title: "Sweep in logs of other lengths",
      where: "the allowance goes in proportion to the length, 1 in for every 8 ft",
      standing: "choice of ours",
    },
  ],
  asks: [inchesOf("size", "Departure")],
  share: ({ diameter, length }, { size: departure }) =>
    Math.max(0, departure - length / FEET_PER_INCH_ALLOWED) / diameter,
};
