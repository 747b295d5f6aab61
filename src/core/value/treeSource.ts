import { OutOfRange } from "../basis/problem";
import { feet } from "../basis/units";
import { solidVolume, type SawLog } from "../sawing/sawLog";
import { sawnInto, type PieceSawing } from "../sawing/wanted/logSource";
import type { SourcePlan, WoodSource } from "../sawing/wanted/woodSource";
import { TREE_LOG_LENGTH, type FormClassTree } from "../tree/formClassTree";
import { treeLogs } from "../tree/treeLogs";

/**
 * A standing tree as a source of pieces: cut into its logs of 16 ft, or into longer ones of several of them where a
 * piece is longer than 16 ft, whichever is worth most. A tree outside the tables gives none.
 */
export function treeSource(names: readonly string[], tree: FormClassTree, sawing: PieceSawing): WoodSource {
  const logs = logsOrNone(tree);
  const longest = Math.max(0, ...sawing.pieces.map(({ length }) => length));
  const joined = Math.max(1, Math.ceil(longest / TREE_LOG_LENGTH));
  return {
    names,
    wood: logs.reduce((sum, log) => sum + solidVolume(log), 0),
    best(worths) {
      const upTo: SourcePlan[] = [none(sawing)];
      for (let top = 1; top <= logs.length; top += 1) {
        const ways = Array.from({ length: Math.min(joined, top) }, (_, more) => top - 1 - more).map((butt) =>
          added(upTo[butt] as SourcePlan, sawnInto(oneLog(logs.slice(butt, top)), worths, sawing)),
        );
        upTo.push(ways.reduce((best, way) => (way.worth > best.worth ? way : best)));
      }
      return upTo.at(-1) as SourcePlan;
    },
  };
}

const oneLog = (parts: readonly SawLog[]): SawLog => ({
  largeEnd: (parts[0] as SawLog).largeEnd,
  smallEnd: (parts.at(-1) as SawLog).smallEnd,
  length: feet(parts.reduce((sum, { length }) => sum + length, 0)),
});

const none = ({ pieces }: PieceSawing): SourcePlan => ({ worth: 0, gives: pieces.map(() => 0), plans: [] });

const added = (one: SourcePlan, other: SourcePlan): SourcePlan => ({
  worth: one.worth + other.worth,
  gives: one.gives.map((count, i) => count + (other.gives[i] as number)),
  plans: [...one.plans, ...other.plans],
});

function logsOrNone(tree: FormClassTree): readonly SawLog[] {
  try {
    return treeLogs(tree).map(({ smallEnd, largeEnd, length }) => ({
      smallEnd,
      // Trees that taper out of the tables upwards would else have a log thinner below than above.
      largeEnd: largeEnd < smallEnd ? smallEnd : largeEnd,
      length,
    }));
  } catch (problem) {
    if (problem instanceof OutOfRange) return [];
    throw problem;
  }
}
