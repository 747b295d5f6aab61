import { OutOfRange } from "../../basis/problem";
import { told } from "../../basis/telling";
import { affectedLength, inchesOf, type DefectKind } from "./defectKind";
import { grosenbaugh } from "./grosenbaugh";

const KERF_AROUND = 1; // in, added to both sides of the box and taken off the diameter [1]

/**
 * Rot or shake inside the log, boxed in.
 *
 *     P = l / L * (H + 1) (W + 1) / (d - 1)^2
 *
 *     P     share of the gross scale          [1]
 *     H, W  height and width of the box       [in]
 *     l     affected length                   [ft]
 *     L     log length                        [ft]
 *     d     scaling diameter                  [in]
 *
 * What lies in the outermost collar of slabs is not scaled, and so is no defect.
 *
 * @throws OutOfRange when d <= 1 in
 */
export const interior: DefectKind = {
  id: "interior",
  title: "Interior",
  aliases: ["Interior rot", "Rot", "Shake", "Heart rot"],
  sources: grosenbaugh("[1] interior: l/L times (H + 1)(W + 1)/(d - 1)^2"),
  asks: [affectedLength, inchesOf("size", "Height"), inchesOf("width", "Width")],
  share({ diameter, length }, { affectedLength: lost, size: height, width }) {
    if (diameter <= KERF_AROUND) {
      throw new OutOfRange(
        (telling) => `Interior as published has no value for a log of ${told(telling, diameter, "in")}.`,
      );
    }
    const box = (height + KERF_AROUND) * (width + KERF_AROUND);
    return ((lost / length) * box) / (diameter - KERF_AROUND) ** 2;
  },
};
