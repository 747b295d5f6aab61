import type { Percent } from "../../core/basis/units";
import { countMeasure, wholePointsMeasured } from "../../core/cruise/countMeasure";
import { doubleSampleRatio } from "../../core/cruise/doubleSampling";
import type { Estimate } from "../../core/cruise/estimate";
import { NO_TREES } from "./amounts";
import { answeredCells, spilled } from "./answers";
import type { CountTally } from "./countTally";
import type { Cells } from "./readings";
import { marginAt } from "./margins";
import type { UnitSystem } from "./unitSystem";

const WARNING =
  "Whole points were measured, where trees are alike: go by the margin of the last row, not by those by single trees.";

/** Basal area from all points, volume for basal area from the measured trees, and their product, each with margins. */
export function countTable(tally: CountTally, confidence: Percent, units: UnitSystem): Cells {
  const { counts, bafs, trees } = tally;
  const header = ["Measure", "Value", marginAt(confidence), "Margin %", "Low", "High"];
  if (counts.every((count) => count === 0)) return spilled(header, NO_TREES);
  const areas = counts.map((count, plot) => count * (bafs[plot] as number));
  const found = countMeasure(areas, trees, confidence);
  const line = (name: string, { value, margin, marginPercent, low, high }: Estimate, factor: number) => [
    name,
    ...[value * factor, margin * factor, marginPercent, low * factor, high * factor],
  ];
  const perLand = units.perLand.perOurs;
  const volume = `Volume ${units.perLand.name}`;
  const rows = [
    line(`Basal area ${units.areaPerLand.name}`, found.basalArea, units.areaPerLand.perOurs),
    line(`Volume per ${units.treeArea.name} of basal area`, found.ratio, 1 / units.treeArea.perOurs),
    line(volume, found.volume, perLand),
    line(`${volume}, product term left out`, found.volumeByPlainSum, perLand),
  ];
  if (!wholePointsMeasured(counts, trees)) return spilled(header, rows);
  return spilled(header, [
    ...rows,
    [WARNING],
    [`${volume}, by whole points`, ...byWholePoints(tally, areas, confidence, perLand)],
  ]);
}

/** The margin that holds where whole points were measured: the point, not the tree, is the unit. */
function byWholePoints({ trees }: CountTally, areas: Float64Array, confidence: Percent, perLand: number) {
  return answeredCells(5, () => {
    const volumes = new Map<number, number>();
    for (const { plot, count, baf, basalArea, volume } of trees)
      volumes.set(plot, (volumes.get(plot) ?? 0) + (count * baf * volume) / basalArea);
    const measured = [...volumes].map(([plot, full]) => ({ quick: areas[plot] as number, full }));
    const { value, margin, marginPercent, low, high } = doubleSampleRatio({ quick: areas, measured }, confidence);
    return [value * perLand, margin * perLand, marginPercent, low * perLand, high * perLand];
  });
}
