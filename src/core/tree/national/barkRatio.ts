import type { Source } from "../../basis/source";
import { barkPercents } from "../../reference/national/barkPercents";
import { nationalBark } from "../../reference/national/sources";
import type { Species } from "./species";

let read: ReadonlyMap<number, number> | undefined;

/** Bark in percent of wood by inventory code. */
const percents = (): ReadonlyMap<number, number> =>
  (read ??= new Map(
    barkPercents.lines
      .trim()
      .split("\n")
      .flatMap((line) => {
        const [percent = "", codes = ""] = line.split(": ");
        return codes.split(" ").map((code) => [Number(code), Number(percent)] as const);
      }),
  ));

/**
 * Bark ratio of a species: diameter inside bark over diameter outside bark, taken over the whole stem.
 *
 *     k = 1 / sqrt(1 + p / 100)
 *
 *     p  bark in percent of the volume of the wood    [%]
 *
 * Areas stand to one another as the volumes do when wood and bark are equally long. An average of the species: bark
 * differs from tree to tree and is thicker toward the butt, so a ratio that one measured is better. Undefined where
 * the list has none.
 */
export function barkRatio({ code }: Species): number | undefined {
  const percent = percents().get(code);
  return percent === undefined ? undefined : 1 / Math.sqrt(1 + percent / 100);
}

export const sources: readonly Source[] = [
  nationalBark,
  {
    author: "Plain geometry",
    year: "",
    title: "Bark ratio from volumes",
    where: "areas inside and outside bark stand to one another as the volumes do",
    standing: "computed",
  },
];
