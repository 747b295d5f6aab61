import { weightedMean } from "../../core/basis/statistics";
import type { Percent } from "../../core/basis/units";
import { classNumbers } from "../../core/cruise/classNumbers";
import { estimateBy } from "../../core/cruise/plotDesign";
import { partTotals, wholeOf, type PlotTotals } from "../../core/cruise/plotTotals";
import { NO_TREES } from "./amounts";
import { spilled, type Answer } from "./answers";
import { classHeading, type ClassesBy } from "./classesTable";
import { estimated, marginAt } from "./margins";
import { readMarked } from "./marks";
import type { Cells } from "./readings";
import { speciesByName } from "./speciesByName";
import type { Tally, TallyArguments } from "./tally";
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
  return cutParts(given, confidence, units, ({ cruise: { dbh } }) => {
    const { numbers, first, last } = classNumbers(dbh, by.width / units.diameter.perOurs, by.rule);
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
  return cutParts(given, confidence, units, ({ species, speciesNames }) => ({
    heading: "Species",
    all: "All species",
    of: species,
    names: speciesNames,
    order: speciesByName(speciesNames),
  }));
}

/** One row for each part and one for all, each amount as it is before the cut, what is cut and what is left. */
function cutParts(given: Given, confidence: Percent, units: UnitSystem, partsOf: (tally: Tally) => Parts): Cells {
  const { tally, cut } = readMarked(given, units);
  const { cruise } = tally;
  const parts = partsOf(tally);
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
  if (cruise.dbh.length === 0) return spilled(header, NO_TREES);

  const halves = new Int32Array(cut.length);
  for (let line = 0; line < halves.length; line += 1)
    halves[line] = 2 * (parts.of[line] as number) + (cut[line] as number);
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
