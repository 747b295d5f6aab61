import { chosen, type Choice } from "../../core/basis/choices";
import { weightedMean } from "../../core/basis/statistics";
import { partTotals, plotTotals, type PlotTotals } from "../../core/cruise/plotTotals";
import { spilled } from "./answers";
import { BadRows, column, isNothing } from "./columns";
import type { Cells } from "./readings";
import { amountNames, amountsOf } from "./standTables";
import { NO_SPECIES, readTally, type TallyArguments } from "./tally";
import type { UnitSystem } from "./unitSystem";

const YES: Choice = { title: "Yes", aliases: ["Y", "x", "TRUE", "Take", "Cut"] };
const NO: Choice = { title: "No", aliases: ["N", "FALSE", "Leave", NO_SPECIES] };
const answers = [YES, NO];

/** The stand before, what is cut and what is left, per acre. A tree without a mark is left. */
export function cutTable(given: TallyArguments & { readonly take: unknown }, units: UnitSystem): Cells {
  checkMarks(given.take);
  const { cruise, species, speciesNames } = readTally({ ...given, species: given.take }, units);
  const shareOf = cruise.volume !== undefined || cruise.dbh.length === 0 ? "volume" : "basal area";
  const header = ["Stand", ...amountNames(units), `Share of ${shareOf} %`];
  if (cruise.dbh.length === 0) return spilled(header, [["No trees yet"]]);
  const taken = speciesNames.map((mark) => (chosen("Take", mark, answers) === YES ? 1 : 0));
  const part = Uint8Array.from(species, (mark) => taken[mark] as number);
  const [leave, cut] = partTotals(cruise, part, 2) as [PlotTotals, PlotTotals];
  const before = plotTotals(cruise);
  const shared = ({ volume, basalArea, weight }: PlotTotals) => weightedMean(volume ?? basalArea, weight);
  const line = (name: string, totals: PlotTotals) => [
    name,
    ...amountsOf(totals, units),
    (100 * shared(totals)) / shared(before),
  ];
  return spilled(header, [line("Before", before), line("Cut", cut), line("Leave", leave)]);
}

/** Names the first row whose mark is neither yes nor no, before the tally is read. */
function checkMarks(take: unknown): void {
  const marks = column(take, "Take");
  const bad = new BadRows();
  const seen = new Set<unknown>();
  for (let row = 0; row < marks.rows; row += 1) {
    const mark = marks.at(row);
    if (isNothing(mark) || seen.has(mark)) continue;
    bad.guard(row, () => {
      chosen("Take", mark, answers);
      seen.add(mark);
    });
  }
  bad.settle();
}
