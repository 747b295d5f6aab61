import { InvalidInput, OutOfRange, Problem } from "../../core/basis/problem";
import { shown } from "../../core/basis/shown";
import type { Telling } from "../../core/basis/telling";
import type { Unit, UnitSystem } from "./unitSystem";

/** How a metric user is told the measures of a sentence. */
export function tellingIn({ diameter, distance, treeArea, cubic, weight, density }: UnitSystem): Telling {
  const units = new Map<string, Unit>([
    ["in", diameter],
    ["ft", distance],
    ["ft2", treeArea],
    ["ft3", cubic],
    ["lb", weight],
    ["lb/ft3", density],
  ]);
  // "in DBH" is a unit too: its first word is what is measured in.
  const first = (name: string) => name.split(" ", 1).join();
  return {
    number: (value, name) => shown(value * (units.get(first(name))?.perOurs ?? 1)),
    unit: (name) => (units.get(first(name))?.name ?? first(name)) + name.slice(first(name).length),
  };
}

/** The same work, whose problems speak in the units that the user wrote. */
export function saidIn<A extends unknown[], T>(system: UnitSystem, work: (...given: A) => T): (...given: A) => T {
  if (!system.metric) return work;
  const telling = tellingIn(system);
  return (...given) => {
    try {
      return work(...given);
    } catch (problem) {
      if (!(problem instanceof Problem)) throw problem;
      const Same = problem instanceof OutOfRange ? OutOfRange : InvalidInput;
      throw new Same(problem.messageIn(telling));
    }
  };
}
