import { chosen, type Choice } from "../../core/basis/choices";
import { NameList } from "../../core/cruise/nameList";
import { BadRows } from "./badRows";
import { column } from "./columns";
import { NO_SPECIES, readTally, type Tally, type TallyArguments } from "./tally";
import type { UnitSystem } from "./unitSystem";

const YES: Choice = {
  title: "Yes",
  aliases: ["Y", "x", "TRUE", "Take", "Cut"],
};
const NO: Choice = {
  title: "No",
  aliases: ["N", "FALSE", "Leave", NO_SPECIES],
};
const answers = [YES, NO];

/** A tally, and for each of its lines whether the tree is to be cut: 1 for a cut, 0 for a tree that stays. */
export interface MarkedTally {
  readonly tally: Tally;
  readonly cut: Uint8Array;
}

/**
 * Reads a tally and its marks. A tree without a mark is left.
 * @throws InvalidInput naming the first mark that means neither yes nor no
 */
export function readMarked(given: TallyArguments & { readonly take: unknown }, units: UnitSystem): MarkedTally {
  const tally = readTally(given, units);
  const cut = new Uint8Array(tally.cruise.dbh.length);
  if (!tally.mark) return { tally, cut };
  const { of, names } = tally.mark;
  const cuts = marksThatCut(names, given.take).map(Number);
  for (let tree = 0; tree < cut.length; tree += 1) cut[tree] = cuts[of[tree] as number] as number;
  return { tally, cut };
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
