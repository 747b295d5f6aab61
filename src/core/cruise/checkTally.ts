import { shown } from "../basis/require";
import { inches, type Feet } from "../basis/units";
import { inOurUnits, told, type Telling } from "../basis/telling";
import { basalArea } from "../tree/basalArea";
import { checkTree, type TallyLine, type TallyRules } from "./checkTree";
import { farFromOthers, type Others } from "./farFromOthers";
import { USUAL_TOLERANCE } from "./inOrOut";

/** A line of the tally with what can only be judged beside the others. */
export interface FullTallyLine extends TallyLine {
  /** Volume of the tree, in any unit that is the same for all. */
  readonly volume: number | undefined;
  /** Level distance from the middle of the point or plot, where it was taped. [ft] */
  readonly distance: Feet | undefined;
  /** The farthest that a tree of this DBH may stand and still be in. [ft] */
  readonly limit: Feet | undefined;
}

/** Fewest trees that show what is usual on a plot, and in a tally; choices of ours. */
const FEWEST_ON_PLOT = 5;
const FEWEST_IN_TALLY = 10;
/** Half of the trees thicker than this speak for centimetres; a choice of ours. [in] */
const THICK_STAND = 28;

/**
 * The first thing that looks wrong with each line of a whole tally, in one plain sentence; "" when nothing does. What a
 * line says of itself comes first, then what shows only beside the other lines.
 */
export function checkTally(lines: readonly FullTallyLine[], rules: TallyRules): readonly string[] {
  const alone = lines.map((line) => checkTree(line, rules));
  const sound = lines.map((line, row) => (alone[row] === "" ? line : undefined));
  const onPlot = besideOthers(
    sound,
    ({ dbh }) => dbh,
    FEWEST_ON_PLOT,
    ({ plot }) => plot?.trim().toLowerCase(),
  );
  const inTally = besideOthers(sound, volumeRatio, FEWEST_IN_TALLY, () => "");
  const whole = rules.telling ? undefined : centimetres(lines);
  return lines.map(
    (line, row) =>
      (alone[row] ?? "") ||
      (row === whole?.row ? whole.says : "") ||
      beyondLimit(line, rules) ||
      diameterOdd(line, onPlot[row], rules) ||
      volumeOdd(line, inTally[row]),
  );
}

/** Told once, on the first line that has a diameter. */
function centimetres(lines: readonly FullTallyLine[]): { readonly row: number; readonly says: string } | undefined {
  const diameters = Float64Array.from(lines.filter(({ dbh }) => dbh !== undefined).map(({ dbh = 0 }) => dbh)).sort();
  const middle = diameters[Math.floor(diameters.length / 2)];
  if (middle === undefined || middle <= THICK_STAND || diameters.length < FEWEST_ON_PLOT) return undefined;
  return {
    row: lines.findIndex(({ dbh }) => dbh !== undefined),
    says: `Half of the trees are ${shown(middle)} in DBH or more. Is the whole tally in centimetres? It should be in inches.`,
  };
}

function beyondLimit({ dbh, distance, limit }: FullTallyLine, { telling = inOurUnits }: TallyRules): string {
  if (dbh === undefined || distance === undefined || limit === undefined) return "";
  if (distance <= limit + USUAL_TOLERANCE) return "";
  const [taped, reach] = [distance, limit].map((feet) => `${tenths(telling, feet)} ${telling.unit("ft")}`);
  return `Taped at ${taped}, but a tree of ${told(telling, dbh, "in")} is out beyond ${reach}. Distance, DBH or gauge?`;
}

function diameterOdd(
  { dbh = 0 }: FullTallyLine,
  others: Others | undefined,
  { telling = inOurUnits }: TallyRules,
): string {
  if (!others) return "";
  const diameter = (value: number) => told(telling, value, "in");
  const range =
    others.least === others.largest
      ? diameter(others.least)
      : `${diameter(others.least)} to ${diameter(others.largest)}`;
  return `DBH ${diameter(dbh)} is far from the other trees of this point: ${range}. Is it right?`;
}

/** Volume for a square foot of basal area: it rests on the height, so a slip in the logs shows in it. */
const volumeRatio = ({ dbh, volume }: FullTallyLine) =>
  dbh !== undefined && volume !== undefined && volume > 0 ? volume / basalArea(inches(dbh)) : undefined;

function volumeOdd(line: FullTallyLine, others: Others | undefined): string {
  if (!others) return "";
  const whole = (value: number) => shown(Math.round(value));
  return `It has ${whole(volumeRatio(line) ?? 0)} bf for each ft2 of its basal area, far from the other trees: ${whole(others.least)} to ${whole(others.largest)}. Check DBH and logs.`;
}

/** For each line, the others of its group that it lies far from. */
function besideOthers(
  lines: readonly (FullTallyLine | undefined)[],
  value: (line: FullTallyLine) => number | undefined,
  fewest: number,
  groupOf: (line: FullTallyLine) => string | undefined,
): readonly (Others | undefined)[] {
  const groups = new Map<string, { readonly rows: number[]; readonly values: number[] }>();
  lines.forEach((line, row) => {
    const found = line && value(line);
    const group = line && groupOf(line);
    if (found === undefined || group === undefined || !(found > 0)) return;
    const known = groups.get(group) ?? { rows: [], values: [] };
    if (known.rows.length === 0) groups.set(group, known);
    known.rows.push(row);
    known.values.push(found);
  });
  const answers = new Array<Others | undefined>(lines.length);
  for (const { rows, values } of groups.values()) {
    const far = farFromOthers(values, fewest);
    rows.forEach((row, place) => (answers[row] = far[place]));
  }
  return answers;
}

/** Distances are taped to a tenth. */
const tenths = (telling: Telling, feet: number) => shown(Math.round(Number(telling.number(feet, "ft")) * 10) / 10);
