import { textOf } from "../../core/basis/choices";
import { InvalidInput } from "../../core/basis/problem";
import { cubicFeet, feet, inches, percent } from "../../core/basis/units";
import { USUAL_FORM_CLASS } from "../../core/tree/formClass";
import { findSpecies } from "../../core/tree/national/findSpecies";
import { LEAST_HEIGHT, MOST_HEIGHT, stemEquations } from "../../core/tree/national/stemEquations";
import type { Stem } from "../../core/value/buckOrder";
import { formClassStem } from "../../core/value/formClassStem";
import { standingStem } from "../../core/value/standingStem";
import { isNothing, numberAt, remembered, type Column } from "./columns";
import { standOf } from "./heightTrees";
import { boundsIn } from "./measuredIn";
import { dbhBounds } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** How the stem of one row of a tally is drawn. */
export interface StemMaker {
  /** Stems with the same key are alike. */
  readonly key: string;
  readonly make: () => Stem;
}

type Lists = Readonly<Record<"species" | "dbh" | "height" | "wood" | "logs" | "formClass", Column>>;

/** Wood that a stem may be said to hold, wide enough that only a slip falls outside. [ft3] */
const MOST_WOOD = 10_000;

interface Grown {
  readonly division: unknown;
  readonly origin: unknown;
}

/** Drawn by the national equations, as full as they have it or as the row itself says; undefined where no height is. */
export function stemsByHeight(lists: Lists, { division, origin }: Grown, units: UnitSystem) {
  const stand = standOf(division, origin);
  const equationsOf = remembered((cell: unknown) => {
    if (isNothing(cell)) throw new InvalidInput("the species is missing.");
    return stemEquations(findSpecies(textOf(cell).slice(0, 100)), stand);
  });
  return (row: number): StemMaker | undefined => {
    const tall = numberAt(lists.height, row, boundsIn(units.distance, LEAST_HEIGHT, MOST_HEIGHT), 0);
    if (tall === 0) return undefined;
    const dbh = inches(numberAt(lists.dbh, row, dbhBounds(units), 0) / units.diameter.perOurs);
    const height = feet(tall / units.distance.perOurs);
    const equations = equationsOf(lists.species.at(row));
    const said = numberAt(lists.wood, row, boundsIn(units.cubic, 0, MOST_WOOD), 0) / units.cubic.perOurs;
    const wood = said > 0 ? cubicFeet(said) : undefined;
    return {
      key: `${equations.species.code} ${dbh} ${height} ${wood}`,
      make: () => standingStem(equations, { dbh, height }, wood),
    };
  };
}

/** Drawn by form class up to the last log; undefined where no logs are. */
export function stemsByLogs(lists: Lists, units: UnitSystem) {
  return (row: number): StemMaker | undefined => {
    const logs = numberAt(lists.logs, row, { unit: "logs of 16 ft", low: 0.1, high: 10 }, 0);
    if (logs === 0) return undefined;
    const dbh = inches(numberAt(lists.dbh, row, dbhBounds(units), 0) / units.diameter.perOurs);
    const formClass = percent(numberAt(lists.formClass, row, { unit: "%", low: 0, high: 100 }, USUAL_FORM_CLASS));
    return { key: `${dbh} ${logs} ${formClass}`, make: () => formClassStem({ dbh, logs, formClass }) };
  };
}
