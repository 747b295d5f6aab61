import { weightedMean } from "../../core/basis/statistics";
import type { Percent } from "../../core/basis/units";
import { estimateBy } from "../../core/cruise/plotDesign";
import { partTotals, wholeOf, type PlotTotals } from "../../core/cruise/plotTotals";
import { spilled, type Answer } from "./answers";
import { readMarked } from "./marks";
import type { Cells } from "./readings";
import { classHeading, estimated, marginAt, speciesByName, type ClassesBy } from "./standTables";
import { readTally, type TallyArguments } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** A part of the stand by itself: its name, and which of its lines are cut. */
interface Parts {
  readonly heading: string;
  readonly all: string;
  /** The part of each line, counted from 0. */
  readonly of: ArrayLike<number>;
  readonly names: readonly Answer[];
  /** Places of the parts in the order in which they are shown. */
  readonly order: readonly number[];
}

type Given = TallyArguments & { readonly take: unknown };

/** Before, cut and leave of each diameter class; classes without trees between the others are kept. */
export function cutByClassTable(given: Given, by: ClassesBy, confidence: Percent, units: UnitSystem): Cells {
  return cutParts(given, confidence, units, ({ dbh }) => {
    const width = by.width / units.diameter.perOurs;
    const numbers = Int32Array.from(dbh, (diameter) => by.rule.numberOf(diameter, width));
    const first = numbers.reduce((least, one) => Math.min(least, one), Infinity);
    const last = numbers.reduce((most, one) => Math.max(most, one), -Infinity);
    const classes = Array.from({ length: Math.max(0, last - first + 1) }, (_, place) => first + place);
    return {
      heading: classHeading(by, units),
      all: "All classes",
      of: numbers.map((number) => number - first),
      names: classes.map((number) => by.rule.midpointOf(number, by.width)),
      order: classes.map((_, place) => place),
    };
  });
}

/** Before, cut and leave of each species, in the order of their names. */
export function cutBySpeciesTable(given: Given, confidence: Percent, units: UnitSystem): Cells {
  return cutParts(given, confidence, units, () => {
    const { species, speciesNames } = readTally(given, units);
    return {
      heading: "Species",
      all: "All species",
      of: species,
      names: speciesNames,
      order: speciesByName(speciesNames),
    };
  });
}

/** One row for each part and one for all, each amount as it is before the cut, what is cut and what is left. */
function cutParts(
  given: Given,
  confidence: Percent,
  units: UnitSystem,
  partsOf: (cruise: { readonly dbh: ArrayLike<number> }) => Parts,
): Cells {
  const { tally, cut } = readMarked(given, units);
  const { cruise } = tally;
  const parts = partsOf(cruise);
  const amounts = [
    `trees ${units.perLand.name}`,
    `basal area ${units.areaPerLand.name}`,
    `volume ${units.perLand.name}`,
  ];
  const [trees = "", ...others] = amounts;
  const header = [
    parts.heading,
    ...[`Before, ${trees}`, marginAt(confidence), `Cut, ${trees}`, `Leave, ${trees}`, marginAt(confidence)],
    ...others.flatMap((amount) => ["Before", "Cut", "Leave"].map((when) => `${when}, ${amount}`)),
  ];
  if (cruise.dbh.length === 0) return spilled(header, [["No trees yet"]]);

  const halves = Int32Array.from(cut, (isCut, line) => 2 * (parts.of[line] as number) + isCut);
  const totals = partTotals(cruise, halves, 2 * parts.names.length);
  const pairs = parts.names.map((_, place) => totals.slice(2 * place, 2 * place + 2) as [PlotTotals, PlotTotals]);
  const land = units.perLand.perOurs;
  const meanOf = ({ design }: PlotTotals, values: ArrayLike<number> | undefined, factor: number) =>
    values && weightedMean(values, design.weight) * factor;
  const withError = (part: PlotTotals) =>
    estimated(cruise.method, meanOf(part, part.trees, 1), land, () =>
      estimateBy(part.design, part.trees, confidence),
    ).slice(0, 2);
  const line = (name: Answer, [leave, taken]: readonly [PlotTotals, PlotTotals]) => {
    const before = wholeOf([leave, taken]);
    const all = [before, taken, leave];
    return [
      name,
      ...withError(before),
      meanOf(taken, taken.trees, land),
      ...withError(leave),
      ...all.map((part) => meanOf(part, part.basalArea, units.areaPerLand.perOurs)),
      ...all.map((part) => meanOf(part, part.volume, land)),
    ];
  };
  const whole = [0, 1].map((half) => wholeOf(pairs.map((pair) => pair[half] as PlotTotals)));
  return spilled(header, [
    ...parts.order.map((place) => line(parts.names[place] as Answer, pairs[place] as [PlotTotals, PlotTotals])),
    line(parts.all, whole as [PlotTotals, PlotTotals]),
  ]);
}
