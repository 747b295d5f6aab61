import { chosen, type Choice } from "../../core/basis/choices";
import { weightedMean } from "../../core/basis/statistics";
import { NameList } from "../../core/cruise/nameList";
import { partTotals, wholeOf, type PlotTotals } from "../../core/cruise/plotTotals";
import { spilled } from "./answers";
import { BadRows, column } from "./columns";
import type { Cells } from "./readings";
import { amountNames, amountsOf } from "./standTables";
import { NO_SPECIES, readTally, type TallyArguments } from "./tally";
import type { UnitSystem } from "./unitSystem";

const YES: Choice = { title: "Yes", aliases: ["Y", "x", "TRUE", "Take", "Cut"] };
const NO: Choice = { title: "No", aliases: ["N", "FALSE", "Leave", NO_SPECIES] };
const answers = [YES, NO];

/** The stand before, what is cut and what is left, per acre. A tree without a mark is left. */
export function cutTable(given: TallyArguments & { readonly take: unknown }, units: UnitSystem): Cells {
  const { cruise, species, speciesNames } = readTally({ ...given, species: given.take }, units);
  const shareOf = cruise.volume !== undefined || cruise.dbh.length === 0 ? "volume" : "basal area";
  const header = ["Stand", ...amountNames(units), `Share of ${shareOf} %`];
  if (cruise.dbh.length === 0) return spilled(header, [["No trees yet"]]);
  const cuts = marksThatCut(speciesNames, given.take).map(Number);
  const part = new Uint8Array(species.length);
  for (let tree = 0; tree < part.length; tree += 1) part[tree] = cuts[species[tree] as number] as number;
  const [leave, cut] = partTotals(cruise, part, 2) as [PlotTotals, PlotTotals];
  const before = wholeOf([leave, cut]);
  const shared = ({ volume, basalArea, weight }: PlotTotals) => weightedMean(volume ?? basalArea, weight);
  const line = (name: string, totals: PlotTotals) => [
    name,
    ...amountsOf(totals, units),
    (100 * shared(totals)) / shared(before),
  ];
  return spilled(header, [line("Before", before), line("Cut", cut), line("Leave", leave)]);
}

/** Which of the marks mean a cut; a mark that means neither is named by its row. */
function marksThatCut(marks: readonly string[], take: unknown): readonly boolean[] {
  const bad = new BadRows();
  const read = marks.map((mark) => {
    try {
      return chosen("Take", mark, answers) === YES;
    } catch (problem) {
      nameRows(take, mark, problem, bad);
      return false;
    }
  });
  bad.settle();
  return read;
}

/** Adds every row that has the mark, as the list of names tells marks apart. */
function nameRows(take: unknown, mark: string, problem: unknown, bad: BadRows): void {
  const rows = column(take, "Take");
  const same = new NameList([mark]);
  for (let row = 0; row < rows.rows; row += 1) {
    if (same.placeOf(String(rows.at(row))) === undefined) continue;
    bad.guard(row, () => {
      throw problem;
    });
  }
}
