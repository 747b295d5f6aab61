import { weightedMean } from "../../core/basis/statistics";
import type { Percent } from "../../core/basis/units";
import { estimateBy } from "../../core/cruise/plotDesign";
import { partTotals, wholeOf, type PlotTotals } from "../../core/cruise/plotTotals";
import { amountNames, amountsOf, NO_TREES } from "./amounts";
import { spilled } from "./answers";
import { estimated, marginAt } from "./margins";
import type { Cells } from "./readings";
import { speciesByName } from "./speciesByName";
import type { Tally } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** What each species adds to the stand, the largest share first, and the whole stand in the last row. */
export function speciesTable({ cruise, species, speciesNames }: Tally, confidence: Percent, units: UnitSystem): Cells {
  const byVolume = cruise.volume !== undefined || cruise.dbh.length === 0;
  const shareOf = byVolume ? "volume" : "basal area";
  const header = ["Species", ...amountNames(units), `Share of ${shareOf} %`, `${marginAt(confidence)}, ${shareOf}`];
  if (cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const shared = (totals: PlotTotals) => totals.volume ?? totals.basalArea;
  const factor = byVolume ? units.perLand.perOurs : units.areaPerLand.perOurs;
  const parts = partTotals(cruise, species, speciesNames.length);
  const whole = wholeOf(parts);
  const mean = (totals: PlotTotals) => weightedMean(shared(totals), whole.design.weight);
  const all = mean(whole);
  const line = (name: string, totals: PlotTotals, value: number) => [
    name,
    ...amountsOf(totals, units),
    (100 * value) / all,
    estimated(cruise.method, undefined, factor, () => estimateBy(totals.design, shared(totals), confidence))[1],
  ];
  const rows = speciesByName(speciesNames).map((kind) => {
    const totals = parts[kind] as PlotTotals;
    return { name: speciesNames[kind] as string, totals, value: mean(totals) };
  });
  return spilled(header, [
    ...rows.sort((one, other) => other.value - one.value).map(({ name, totals, value }) => line(name, totals, value)),
    line("All species", whole, all),
  ]);
}
