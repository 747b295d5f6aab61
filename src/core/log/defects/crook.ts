import { affectedLength, inchesOf, type DefectKind } from "./defectKind";
import { grosenbaugh } from "./grosenbaugh";

/**
 * A sharp bend near one end.
 *
 *     P = C / d * l / L
 *
 *     P  share of the gross scale               [1]
 *     C  deflection of the end                  [in]
 *     d  scaling diameter                       [in]
 *     l  length from the bend to that end       [ft]
 *     L  log length                             [ft]
 */
export const crook: DefectKind = {
  id: "crook",
  title: "Crook",
  sources: grosenbaugh("crook: C/d times l/L"),
  asks: [affectedLength, inchesOf("size", "Deflection")],
  share: ({ diameter, length }, { affectedLength: lost, size: deflection }) =>
    (deflection / diameter) * (lost / length),
};
