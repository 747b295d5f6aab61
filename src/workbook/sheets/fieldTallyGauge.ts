import { acres, squareFeetPerAcre } from "../../core/basis/units";
import { toCenter, toFace, type MeasureTo } from "../../core/cruise/measureTo";
import { plotRadius } from "../../core/cruise/plotRadius";
import { plotRadiusFactor } from "../../core/cruise/plotRadiusFactor";
import type { Formula } from "../plan";
import { named } from "../tables";
import type { KnownGauge } from "./fieldTallyLimits";

/** Two short lines, since a long one would run over the edge of the paper. */
export function gaugeInWords(known?: KnownGauge): readonly Formula[] {
  const atPoints = (says: string, otherwise: string) => `=IF(${named.method}="Point",${says},${otherwise})`;
  const factor = `SQRT(43560/576/${named.size})`;
  const radius = `"Plot radius "&TEXT(SQRT(43560*${named.size}/PI()),"0.0")&" ft, level. A tree is in when its center is."`;
  const [first, second] = known ? sayGauge(known) : [undefined, undefined];
  return [
    {
      formula: atPoints(`"${BORDERLINE}"`, `IF(${named.method}="Fixed",${radius},"")`),
      ...(first !== undefined && { result: first }),
    },
    {
      formula: atPoints(
        `"Any other DBH: "&TEXT(${factor},"0.000")&" ft per inch to the center, "&TEXT(${factor}-1/24,"0.000")&" to the face."`,
        '""',
      ),
      ...(second !== undefined && { result: second }),
    },
  ];
}

const BORDERLINE = "Borderline tree: in when the level tape reads no more than its limit.";

/** The same in the words that the formulas come to. */
function sayGauge({ method, size }: KnownGauge): readonly [string, string] {
  if (method === "Point") {
    const factor = (measureTo: MeasureTo) => plotRadiusFactor(squareFeetPerAcre(size), measureTo).toFixed(3);
    return [BORDERLINE, `Any other DBH: ${factor(toCenter)} ft per inch to the center, ${factor(toFace)} to the face.`];
  }
  if (method !== "Fixed") return ["", ""];
  return [`Plot radius ${plotRadius(acres(size)).toFixed(1)} ft, level. A tree is in when its center is.`, ""];
}
