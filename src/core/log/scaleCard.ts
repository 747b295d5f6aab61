import { InvalidInput } from "../basis/problem";
import type { Source } from "../basis/source";
import { shown } from "../basis/shown";
import { told } from "../basis/telling";
import { boardFeet, type Feet, type Inches } from "../basis/units";
import type { LogRule } from "./logRule";
import { noPublishedValue } from "./noPublishedValue";
import { requireLog } from "./requireLog";
import { toNearest } from "./toNearest";
import { A_HAIR } from "./wholeNumbers";

/** What a card is called where a rule is named. */
export const BUYERS_CARD = "Buyer's card";

export const scaleCardSources: readonly Source[] = [
  {
    author: "The buyer",
    year: "",
    title: "Scale card",
    where: "the table that the user pastes; its figures are not checked",
    standing: "common practice",
  },
  {
    author: "Woodlot Reckoner",
    year: "",
    title: "How a card is read here",
    where: "diameter to the nearest row, an exact half to the lower; length to the next lower column; nothing outside",
    standing: "choice of ours",
  },
];

/** A buyer's printed table. */
export interface ScaleCard {
  /** Headings of its rows, growing. [in] */
  readonly diameters: readonly Inches[];
  /** Headings of its columns, growing. [ft] */
  readonly lengths: readonly Feet[];
  /** Board feet, a row for each diameter; undefined where the card is blank. */
  readonly volumes: readonly (readonly (number | undefined)[])[];
}

/**
 * A log rule that reads a buyer's card as he does: the diameter goes to the nearest row, an exact half to the lower
 * one, the length drops to the next lower column. Nothing is filled in between, and there is no value outside: half a
 * step of diameter and a step of length beyond the headings, where the next row and column would stand.
 * A net scale is rounded to whole board feet.
 *
 * @throws InvalidInput when the headings do not grow
 */
export function cardRule({ diameters, lengths, volumes }: ScaleCard): LogRule {
  requireGrowing("diameters", diameters, "in");
  requireGrowing("lengths", lengths, "ft");

  const card: LogRule = {
    id: "card",
    title: BUYERS_CARD,
    sources: scaleCardSources,
    scale(log) {
      requireLog(log);
      const volume = volumes[nearestRow(diameters, log.diameter)]?.[lowerColumn(lengths, log.length)];
      if (volume === undefined) throw noPublishedValue(card, log);
      return boardFeet(volume);
    },
    working(log) {
      const diameter = diameters[nearestRow(diameters, log.diameter)] ?? NaN;
      const length = lengths[lowerColumn(lengths, log.length)] ?? NaN;
      return [
        {
          sum: `card at ${shown(diameter)} in and ${shown(length)} ft`,
          meaning: "Nearest row and next lower column of the card",
          value: card.scale(log),
          unit: "bf",
        },
      ];
    },
    round: (volume) => toNearest(1, volume),
  };
  return card;
}

function requireGrowing(what: string, headings: readonly number[], unit: string): void {
  headings.forEach((heading, i) => {
    const before = headings[i - 1];
    if (before === undefined || heading > before) return;
    throw new InvalidInput((telling) => {
      const [came, last] = [heading, before].map((one) => told(telling, one, unit));
      return `The ${what} of a card should grow. You have ${came} after ${last}.`;
    });
  });
}

/** Place of the last heading that is not above a value; -1 when there is none. */
function placeBelow(headings: readonly number[], value: number): number {
  let [low, high] = [0, headings.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((headings[middle] as number) <= value + A_HAIR) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** The step before the first heading and after the last is that of their neighbours; of a single one it is 1. */
const stepAfter = (headings: readonly number[], place: number): number => {
  const from = Math.min(Math.max(place, 0), headings.length - 2);
  return headings.length < 2 ? 1 : (headings[from + 1] as number) - (headings[from] as number);
};

/** -1, which no card has, outside the card. */
function nearestRow(diameters: readonly number[], diameter: number): number {
  const below = placeBelow(diameters, diameter);
  const step = stepAfter(diameters, below);
  const from = below < 0 ? (diameters[0] as number) - step : (diameters[below] as number);
  const row = diameter - from > step / 2 + A_HAIR ? below + 1 : below;
  return diameters[row] === undefined ? -1 : row;
}

function lowerColumn(lengths: readonly number[], length: number): number {
  const below = placeBelow(lengths, length);
  if (below < 0) return -1;
  const beyond = length - (lengths[below] as number) >= stepAfter(lengths, below) - A_HAIR;
  return below === lengths.length - 1 && beyond ? -1 : below;
}
