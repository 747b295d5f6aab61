import { combinedVariable } from "../core/tree/local/combinedVariable";
import type { SheetPlan, TableRow } from "./plan";
import type { Settings } from "./settings";
import { board, cost, costItems, mill, plot, price, product, products, species } from "./tables";
import type { LocalVolumeContent, StemContent } from "./workbookContent";
import { workbookPlan } from "./workbookPlan";

/** What a cruise of one's own starts with beside its settings. */
export interface OwnCruise {
  readonly settings: Settings;
  /** Plots laid out, numbered from 1. */
  readonly plots: number;
  /** Parts of the tract that are cruised each by itself. */
  readonly strata?: readonly TableRow[];
  readonly species: readonly { readonly code: string; readonly name: string; readonly fia?: number }[];
}

/** The workbook of a cruise of one's own: no trees, logs or prices yet. */
export const emptyWorkbook = ({ settings, plots, strata = [], species: list }: OwnCruise): readonly SheetPlan[] =>
  workbookPlan({
    settings,
    species: list.map(({ code, name, fia }) => ({
      [species.code]: code,
      [species.name]: name,
      ...(fia !== undefined && { [species.fia]: fia }),
    })),
    plots: Array.from({ length: plots }, (_, i) => ({ [plot.plot]: i + 1 })),
    strata,
    trees: [],
    logs: [],
    boards: usualBoards,
    sawn: [],
    mill: blankLimits,
    cutList: [],
    products: usualProducts,
    localVolume: noLocalVolume,
    stem: noStem,
    prices: blankPrices,
    costs: blankCosts,
    invented: false,
  });

/** Rough sizes that small mills often cut, to start from; a choice of ours. */
export const usualBoards: readonly TableRow[] = [1, 1.25, 2].flatMap((thickness) =>
  [4, 6, 8, 10, 12].map((width) => ({
    [board.sawn]: thickness,
    [board.width]: width,
  })),
);

/**
 * What woodlots often sell, to start from: a choice of ours, without prices. Sawlogs go by International 1/4, which has
 * a value for every log that is long and thick enough.
 */
export const usualProducts: readonly TableRow[] = (
  [
    ["Sawlogs", 10, 8, 16, 2, "International 1/4"],
    ["Pulpwood", 4, 8, 8, 1, "Cords"],
    ["Firewood", 3, 4, 4, 1, "Cords"],
  ] as const
).map(([name, smallestEnd, shortest, longest, step, soldBy]) => ({
  [product.product]: name,
  [product.smallestEnd]: smallestEnd,
  [product.shortest]: shortest,
  [product.longest]: longest,
  [product.step]: step,
  [product.soldBy]: soldBy,
}));

/** No trees felled yet. */
export const noLocalVolume: LocalVolumeContent = { form: combinedVariable.title, use: null, species: null, felled: [] };

/** No tree yet; stump and trim as most leave them. [ft] */
export const noStem: StemContent = {
  species: null,
  dbh: null,
  height: null,
  logs: null,
  stump: 1,
  trim: 0.33,
  flaws: [],
};

const limit = (name: string, unit: string, comment: string): TableRow => ({
  [mill.limit]: name,
  [mill.unit]: unit,
  [mill.comment]: comment,
});

export const blankLimits: readonly TableRow[] = [
  limit("Largest diameter", "in", "Large end of the thickest log it takes"),
  limit("Longest log", "ft", ""),
  limit("Shortest log", "ft", ""),
  limit("Blade above bed", "in", "Lowest the blade can go"),
  limit("Shortest board", "ft", "Shorter pieces are not kept"),
];

export const blankPrices: readonly TableRow[] = [
  {
    [price.product]: products.standing,
    [price.unit]: "$ per MBF by the log rule",
  },
  { [price.product]: products.logs, [price.unit]: "$ per MBF by the log rule" },
  { [price.product]: products.lumber, [price.unit]: "$ per MBF of lumber" },
];

export const blankCosts: readonly TableRow[] = [
  { [cost.item]: costItems.logging, [cost.unit]: "$ per MBF by the log rule" },
  { [cost.item]: costItems.hauling, [cost.unit]: "$ per MBF by the log rule" },
  { [cost.item]: costItems.milling, [cost.unit]: "$ per MBF of lumber" },
  { [cost.item]: costItems.hours, [cost.unit]: "h per MBF of lumber" },
  {
    [cost.item]: costItems.pay,
    [cost.unit]: "$ per h",
    [cost.comment]: "0 leaves your pay in what is left over",
  },
  { [cost.item]: costItems.drying, [cost.unit]: "$ per MBF of lumber" },
];
