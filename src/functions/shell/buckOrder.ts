import { InvalidInput } from "../../core/basis/problem";
import { feet, percent, type Percent } from "../../core/basis/units";
import { USUAL_FORM_CLASS } from "../../core/tree/formClass";
import { stemEquations, STUMP } from "../../core/tree/national/stemEquations";
import type { BuckOrder, Product, Stem } from "../../core/value/buckOrder";
import { formClassStem } from "../../core/value/formClassStem";
import type { Flaw } from "../../core/value/soundStretches";
import { standingStem } from "../../core/value/standingStem";
import { isLeftOut, measured, oneNumber, optionalNumber } from "./readings";
import { BadRows } from "./badRows";
import { column, filledRows, numberAt, sharedRows } from "./columns";
import { standOf, totalHeight } from "./heightTrees";
import { boundsIn, measuredDbh, single } from "./measuredIn";
import { productsIn } from "./products";
import { saidIn } from "./saidIn";
import { speciesReading } from "./speciesReading";
import { unitSystem, type UnitSystem } from "./unitSystem";

export interface BuckArguments {
  readonly species: unknown;
  readonly dbh: unknown;
  readonly height: unknown;
  readonly products: unknown;
  readonly stump_height: unknown;
  readonly trim: unknown;
  readonly cull_from: unknown;
  readonly cull_to: unknown;
  readonly division: unknown;
  readonly origin: unknown;
  readonly logs: unknown;
  readonly form_class: unknown;
  readonly units: unknown;
}

/** An order to cut a stem; without a stem while the tree is not measured. */
export interface ReadOrder {
  readonly order: Omit<BuckOrder, "stem"> & { readonly stem: Stem | undefined };
  readonly system: UnitSystem;
}

/** What is left on a log beyond the length that is bought, when nothing is said: about 4 inches. [ft] */
export const USUAL_TRIM = 0.33;
const HIGHEST = 400; // ft

/**
 * Reads what BUCKPLAN and its like are asked. A tree comes by its total height and the national equations, or by its
 * logs and the form-class tables.
 *
 * @throws InvalidInput when both are given, since the two roads are never mixed
 */
export function buckOrder(given: BuckArguments): ReadOrder {
  const system = unitSystem(given.units);
  const stem = stemOf(given, system);
  const { distance } = system;
  const usualStump = STUMP * distance.perOurs;
  const stump = oneNumber(given.stump_height, "Stump height", boundsIn(distance, 0.1, 20), usualStump);
  return {
    system,
    order: {
      stem,
      products: productsIn(given.products, system),
      stump: feet(stump / distance.perOurs),
      trim: trimOf(given.trim, system),
      flaws: flawsIn(given, system),
    },
  };
}

function stemOf(given: BuckArguments, system: UnitSystem): Stem | undefined {
  const dbh = single(measuredDbh(given.dbh, system));
  if (!isLeftOut(given.logs)) {
    if (!isLeftOut(given.height)) {
      throw new InvalidInput("Give the total height or the logs, not both: each draws the stem in its own way.");
    }
    const logs = single(measured(given.logs, "Logs", (count) => count, { unit: "logs of 16 ft", low: 0.1, high: 10 }));
    const formClass = single(
      optionalNumber<Percent>(given.form_class, "Form class", formClassOf, { unit: "%", low: 0, high: 100 }),
    );
    if (dbh === undefined || logs === undefined || formClass === undefined) return undefined;
    return saidIn(system, formClassStem)({ dbh, logs, formClass });
  }
  const stand = standOf(given.division, given.origin);
  const equations = single(speciesReading(given.species, (one) => stemEquations(one, stand)));
  const height = single(totalHeight(given.height, system));
  if (!equations || dbh === undefined || height === undefined) return undefined;
  return saidIn(system, standingStem)(equations, { dbh, height });
}

const formClassOf = (value: number): Percent => (value === 0 ? USUAL_FORM_CLASS : percent(value));

/** A trim of 0 is no trim; only what is left out is the usual one. */
const trimOf = (given: unknown, { distance }: UnitSystem) =>
  single(
    optionalNumber(
      given,
      "Trim",
      (value) => feet(value / distance.perOurs),
      boundsIn(distance, 0, 5),
      USUAL_TRIM * distance.perOurs,
    ),
  ) ?? feet(USUAL_TRIM);

/** Rows of from and to; a row without either is passed over, without its beginning it is from the ground, without its end to the tip. */
function flawsIn({ cull_from, cull_to }: BuckArguments, { distance }: UnitSystem): readonly Flaw[] {
  const [from, to] = [column(cull_from, "Cull from"), column(cull_to, "Cull to")];
  const rows = Math.min(sharedRows([from, to]), Math.max(filledRows(from), filledRows(to)));
  const bad = new BadRows("Cull row");
  const flaws: Flaw[] = [];
  const bounds = boundsIn(distance, 0.1, HIGHEST);
  const heightAt = (list: typeof from, row: number) => feet(numberAt(list, row, bounds, 0) / distance.perOurs);
  for (let row = 0; row < rows; row += 1) {
    bad.guard(row, () => {
      const [begins, ends] = [heightAt(from, row), heightAt(to, row)];
      if (begins + ends > 0) flaws.push({ from: begins, to: ends === 0 ? feet(HIGHEST) : ends });
    });
  }
  bad.settle();
  return flaws;
}

/** "bf", "ft3" or both, by what the products are measured in. */
export function volumeUnits(products: readonly Product[], { cubic }: UnitSystem): string {
  const units = new Set(products.map(({ measure }) => (measure.unit === "ft3" ? cubic.name : measure.unit)));
  return [...units].sort().join(" or ") || "bf";
}
