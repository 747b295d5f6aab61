import type { BoardSize } from "../../src/core/sawing/boardSize";
import { worthAcross } from "./sawingByEnumeration";

/** A section of the log: the middle, from the line that planes are measured from, and half the width and the height. */
export interface SectionOnMarks {
  readonly u: number;
  readonly v: number;
  readonly a: number;
  readonly b: number;
}

/** A log that lies on its bark; all boards run its length, and kerf and saw places are whole numbers of the step. */
export interface LogOnMarks {
  /** As it first lies, seen from the large end. */
  readonly sections: readonly SectionOnMarks[];
  readonly length: number;
  readonly sizes: readonly BoardSize[];
  readonly kerf: number;
  readonly step: number;
}

const FIT = 1e-9;
const NOTHING = -Infinity;

/**
 * A cant of any thickness at any place, both faces on marks of the scale, the pith between them somewhere along the log:
 * every pair of marks tried, by plain programmes over the marks. A board that is freed lies between two marks, less a
 * kerf; the one left on the bed is a whole number of steps thick.
 */
export function byEveryPairOfMarks(log: LogOnMarks): number {
  const upright = directionOf(log.sections, log);
  const turned = directionOf(
    log.sections.map(({ u, v, a, b }) => ({ u: 0 - v, v: u, a: b, b: a })),
    log,
  );
  const [pithLow, pithHigh] = [Math.min(...upright.pith), Math.max(...upright.pith)];
  const outside = { left: NOTHING, right: Infinity };
  const over = upright.above(outside);
  const under = upright.below(outside);
  let best = 0;
  for (let upper = 0; upper <= upright.count; upper += 1) {
    if (upright.at(upper) < pithLow - FIT) continue;
    for (let lower = 0; lower < upper; lower += 1) {
      if (upright.at(lower) > pithHigh + FIT) continue;
      const sides = { left: 0 - upright.at(upper), right: 0 - upright.at(lower) };
      const inside = turned.through(sides);
      if (inside > 0) best = Math.max(best, inside + (over[upper] as number) + (under[lower] as number));
    }
  }
  return best;
}

interface Planes {
  readonly left: number;
  readonly right: number;
}

/** The saw planes of one setting of the log, numbered by the marks from the bed up. */
function directionOf(sections: readonly SectionOnMarks[], { sizes, kerf, step, length }: LogOnMarks) {
  const bed = Math.min(...sections.map(({ v, b }) => v - b));
  const count = Math.ceil((Math.max(...sections.map(({ v, b }) => v + b)) - bed) / step);
  const at = (mark: number) => bed + mark * step;
  const thicknesses = [...new Set(sizes.map(({ thickness }) => Number(thickness)))];
  const worth = (thickness: number, lower: number, upper: number, { left, right }: Planes): number => {
    let [from, to] = [left, right];
    for (const { u, v, a, b } of sections) {
      const outer = Math.max(v - lower, upper - v);
      if (outer >= b) return 0;
      const half = a * Math.sqrt(1 - (outer / b) ** 2);
      from = Math.max(from, u - half);
      to = Math.min(to, u + half);
    }
    const ofThickness = sizes.filter((size) => size.thickness === thickness);
    return to > from ? worthAcross(ofThickness, to - from, kerf, length) : 0;
  };
  const steps = (height: number) => Math.ceil(height / step - FIT);

  /** For each mark, the most that can be sawn off above it, the first kerf on the mark. */
  const above = (sides: Planes): readonly number[] => {
    const most = new Array<number>(count + 1).fill(0);
    for (let mark = count - 1; mark >= 0; mark -= 1) {
      most[mark] = most[mark + 1] as number;
      for (const thickness of thicknesses) {
        const next = mark + steps(thickness + kerf);
        if (next > count) continue;
        const one = worth(thickness, at(mark) + kerf, at(next), sides);
        if (one > 0) most[mark] = Math.max(most[mark] as number, one + (most[next] as number));
      }
    }
    return most;
  };
  const below = (sides: Planes): readonly number[] => {
    const most = new Array<number>(count + 1).fill(0);
    for (let mark = 1; mark <= count; mark += 1) {
      most[mark] = most[mark - 1] as number;
      for (const thickness of thicknesses) {
        const next = mark - steps(thickness + kerf);
        if (next < 0) continue;
        const one = worth(thickness, at(next), at(mark) - kerf, sides);
        if (one > 0) most[mark] = Math.max(most[mark] as number, one + (most[next] as number));
      }
    }
    return most;
  };
  /** The whole line, one board left on the bed. */
  const through = (sides: Planes): number => {
    const [up, down] = [above(sides), below(sides)];
    let best = 0;
    for (const thickness of thicknesses) {
      const thick = steps(thickness);
      for (let mark = thick; mark <= count; mark += 1) {
        const stays = worth(thickness, at(mark - thick), at(mark), sides);
        if (stays > 0) best = Math.max(best, stays + (up[mark] as number) + (down[mark - thick] as number));
      }
    }
    return best;
  };
  return { at, count, pith: sections.map(({ v }) => v), above, below, through };
}
