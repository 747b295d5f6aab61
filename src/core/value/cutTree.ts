import { OutOfRange } from "../basis/problem";
import type { Source } from "../basis/source";
import { feet, type Feet } from "../basis/units";
import type { SawLog } from "../sawing/sawLog";
import type { Product, Stem } from "./buckOrder";
import { buckPlan, sources as bestCut } from "./buckPlan";

/** What one stem of a tally is cut into. */
export interface CutTree {
  /** By product, in the order of their list: in the product's own unit, wood [ft3], and value [$]. */
  readonly volume: readonly number[];
  readonly wood: readonly number[];
  readonly value: readonly number[];
  /** Wood of the stem that went into no product: stump, trim, tops. [ft3] */
  readonly left: number;
  /** Lumber from the logs that are sold by board feet [bf]; 0 where it was not asked for. */
  readonly lumber: number;
}

export interface CuttingOrder {
  readonly products: readonly Product[];
  readonly stump: Feet;
  readonly trim: Feet;
  /** Lumber that a log saws out to. [bf] */
  readonly lumberOf?: (log: SawLog) => number;
}

/** Below this a stem flares; the log at the butt is sawn as thick as the stem is here. [ft] */
const BREAST_HEIGHT = 4.5;

/**
 * Cuts a stem into what pays best and adds up what there is of each product. A stem that nothing fits stays whole.
 *
 * @param from where the stem begins that is known: the ground, or the stump of the form-class tables
 */
export function cutTree(stem: Stem, from: Feet, { products, stump, trim, lumberOf }: CuttingOrder): CutTree {
  const [volume, wood, value] = [0, 1, 2].map(() => new Array<number>(products.length).fill(0)) as [
    number[],
    number[],
    number[],
  ];
  let left = stem.woodBetween(from, stem.height);
  let lumber = 0;
  for (const log of logsOf(stem, { products, stump, trim })) {
    const at = products.indexOf(log.product);
    const woodOfLog = stem.woodBetween(log.from, feet(log.from + log.length));
    volume[at] = (volume[at] as number) + log.volume;
    wood[at] = (wood[at] as number) + woodOfLog;
    value[at] = (value[at] as number) + log.value;
    left -= woodOfLog;
    if (lumberOf && log.product.measure.unit === "bf") {
      const largeEnd = stem.diameterAt(feet(Math.max(log.from, Math.min(BREAST_HEIGHT, log.to))));
      lumber += lumberOf({ smallEnd: log.smallEnd, largeEnd, length: log.length });
    }
  }
  return { volume, wood, value, left, lumber };
}

function logsOf(stem: Stem, order: Pick<CuttingOrder, "products" | "stump" | "trim">) {
  try {
    return buckPlan({ ...order, stem });
  } catch (problem) {
    if (problem instanceof OutOfRange) return [];
    throw problem;
  }
}

export const sources: readonly Source[] = [
  ...bestCut,
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "A tally cut into products",
    where:
      "every stem cut by itself into what pays best; cull takes the same share of every product of its tree; wood by a local table keeps the form that the national equations have",
    standing: "choice of ours",
  },
];
