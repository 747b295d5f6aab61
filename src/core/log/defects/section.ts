import { affectedLength, type DefectKind } from "./defectKind";
import { grosenbaugh } from "./grosenbaugh";

/**
 * A length that is lost over its whole cross section, as end rot or a split butt.
 *
 *     P = l / L
 *
 *     P  share of the gross scale    [1]
 *     l  affected length             [ft]
 *     L  log length                  [ft]
 */
export const section: DefectKind = {
  id: "section",
  title: "Section",
  aliases: ["End rot", "End"],
  sources: grosenbaugh("whole cross section lost: l/L"),
  asks: [affectedLength],
  share: ({ length }, extent) => extent.affectedLength / length,
};
