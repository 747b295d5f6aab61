import { weightedMean } from "../../core/basis/statistics";
import { partTotals, wholeOf, type PlotTotals } from "../../core/cruise/plotTotals";
import { spilled } from "./answers";
import { readMarked } from "./marks";
import type { Cells } from "./readings";
import { amountNames, amountsOf, NO_TREES } from "./amounts";
import type { TallyArguments } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** The stand before, what is cut and what is left, per acre. A tree without a mark is left. */
export function cutTable(given: TallyArguments & { readonly take: unknown }, units: UnitSystem): Cells {
  const { tally, cut: marked } = readMarked(given, units);
  const { cruise } = tally;
  const shareOf = cruise.volume !== undefined || cruise.dbh.length === 0 ? "volume" : "basal area";
  const header = ["Stand", ...amountNames(units), `Share of ${shareOf} %`];
  if (cruise.dbh.length === 0) return spilled(header, NO_TREES);
  const [leave, cut] = partTotals(cruise, marked, 2) as [PlotTotals, PlotTotals];
  const before = wholeOf([leave, cut]);
  const shared = ({ volume, basalArea, design }: PlotTotals) => weightedMean(volume ?? basalArea, design.weight);
  const line = (name: string, totals: PlotTotals) => [
    name,
    ...amountsOf(totals, units),
    (100 * shared(totals)) / shared(before),
  ];
  return spilled(header, [line("Before", before), line("Cut", cut), line("Leave", leave)]);
}
