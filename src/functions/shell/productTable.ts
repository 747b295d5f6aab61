import { weightedMean } from "../../core/basis/statistics";
import type { Percent } from "../../core/basis/units";
import { estimateBy } from "../../core/cruise/plotDesign";
import { plotTotals } from "../../core/cruise/plotTotals";
import type { CutTree } from "../../core/value/cutTree";
import { NO_TREES } from "./amounts";
import { spilled } from "./answers";
import type { ProductTally } from "./productTally";
import type { Cells } from "./readings";
import { estimated, marginAt } from "./margins";
import { readTally, type TallyArguments } from "./tally";
import type { UnitSystem } from "./unitSystem";

/** What the lines of a tally hold of something, one number a row. */
type Amounts = readonly number[];

/** A tally cut into products, and the share of the planned lumber that the mill gets. */
export interface RealizedTally extends ProductTally {
  readonly realized: number;
}

interface Line {
  readonly name: string;
  readonly unit: string;
  readonly volume?: Amounts;
  readonly wood?: Amounts;
  readonly value?: Amounts;
}

/**
 * Each product per acre with margins of its own: from the plots of the whole cruise, those without it as zeros. The
 * wood of the products and of what is left adds up to that of the stems, plot by plot, and so in the means too; margins
 * do not add up.
 */
export function productTable(
  given: Omit<TallyArguments, "species" | "volume">,
  tally: RealizedTally,
  confidence: Percent,
  units: UnitSystem,
): Cells {
  const { perLand, cubic } = units;
  const header = [
    "Product",
    "Unit",
    `Volume ${perLand.name}`,
    `${marginAt(confidence)}, volume`,
    `Wood ${cubic.name} ${perLand.name}`,
    `${marginAt(confidence)}, wood`,
    `Value $ ${perLand.name}`,
    `${marginAt(confidence)}, value`,
  ];
  if (!tally.trees.includes(true)) return spilled(header, NO_TREES);

  const perAcre = (amounts: Amounts | undefined, factor: number) => {
    if (!amounts) return [undefined, undefined];
    const { cruise } = readTally({ ...given, volume: amounts.map((amount) => [amount]) }, units);
    const totals = plotTotals(cruise);
    const plots = totals.volume ?? new Float64Array(cruise.plots);
    const mean = weightedMean(plots, totals.design.weight);
    return estimated(cruise.method, mean, factor * perLand.perOurs, () =>
      estimateBy(totals.design, plots, confidence),
    ).slice(0, 2);
  };
  return spilled(
    header,
    linesOf(tally, units).map(({ name, unit, volume, wood, value }) => [
      name,
      unit,
      ...perAcre(volume, unit === cubic.name ? cubic.perOurs : 1),
      ...perAcre(wood, cubic.perOurs),
      ...perAcre(value, 1),
    ]),
  );
}

function linesOf({ products, byTotalHeight, rows, trees, withLumber, realized }: RealizedTally, { cubic }: UnitSystem) {
  const each = (amount: (tree: CutTree) => number): Amounts => rows.map((tree) => (tree ? amount(tree) : 0));
  const sum = (amounts: readonly number[]) => amounts.reduce((total, one) => total + one, 0);
  const names = [...new Set(products.map(({ name }) => name))];
  const lines: Line[] = names.map((name) => {
    const its = products.flatMap((product, at) => (product.name === name ? [at] : []));
    const of = (part: "volume" | "wood" | "value") => each((tree) => sum(its.map((at) => tree[part][at] as number)));
    const unit = products.find((product) => product.name === name)?.measure.unit ?? "bf";
    return {
      name,
      unit: unit === "ft3" ? cubic.name : unit,
      volume: of("volume"),
      wood: of("wood"),
      value: of("value"),
    };
  });
  const known = byTotalHeight ? "Whole stems" : "Stems to the merchantable top";
  lines.push({ name: "Left in the woods", unit: "", wood: each(({ left }) => left) });
  lines.push({
    name: known,
    unit: "",
    wood: each(({ wood, left }) => sum(wood) + left),
    value: each(({ value }) => sum(value)),
  });
  if (withLumber) {
    lines.push({
      name: "Lumber from the logs sold by board feet",
      unit: "bf",
      volume: each(({ lumber }) => realized * lumber),
    });
  }
  if (rows.some((tree, row) => trees[row] && !tree)) {
    const missing = rows.map((tree, row) => (trees[row] && !tree ? 1 : 0));
    lines.push({ name: `Not in it: ${byTotalHeight ? "no total height" : "no logs"}`, unit: "trees", volume: missing });
  }
  return lines;
}
