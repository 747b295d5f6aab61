import { named } from "../tables";

/** What a formula says of areas and volumes in the units of the workbook. */
const byUnits = (imperial: string, metric: string) => `IF(${named.units}="metric","${metric}","${imperial}")`;

export const landWord = byUnits("acre", "hectare");
export const cubicWord = byUnits("ft3", "m3");
