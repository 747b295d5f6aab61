import { affectedLength, type DefectKind } from "./defectKind";
import { grosenbaugh } from "./grosenbaugh";

/**
 * A piece of the round like a slice of a pie, as a fire scar or a deep seam.
 *
 *     P = l / L * a / 360
 *
 *     P  share of the gross scale    [1]
 *     a  angle of the slice          [degrees]
 *     l  affected length             [ft]
 *     L  log length                  [ft]
 */
export const sector: DefectKind = {
  id: "sector",
  title: "Sector",
  aliases: ["Pie cut", "Wedge"],
  sources: grosenbaugh("sector of angle a: l/L times a/360"),
  asks: [affectedLength, { of: "size", what: "Angle", unit: "degrees", most: 360 }],
  share: ({ length }, { affectedLength: lost, size: angle }) => (lost / length) * (angle / 360),
};
