import type { Inches } from "../basis/units";
import { designOf, type Cruise } from "../cruise/cruise";

/** The trees of a cruise that may be felled, and into how many logs each is cut. */
export interface StandingStems {
  /** Trees that may be felled, with their plots; trees that are kept are left out of it, their plots are not. */
  readonly cruise: Cruise;
  /** Logs of 16 ft of each line; 0 where there are none. */
  readonly logs: ArrayLike<number>;
}

/** Trees that are sawn alike. */
export interface Kind {
  readonly key: string;
  readonly dbh: number;
  readonly logs: number;
  perAcre: number;
}

export const keyOf = ({ cruise, logs }: StandingStems, line: number) =>
  `${Math.round(cruise.dbh[line] as number)} ${logs[line] as number}`;

/** Trees per acre by the inch and the number of logs, added over the plots. */
export function kindsOf(order: StandingStems): readonly Kind[] {
  const kinds = new Map<string, Kind>();
  const { weight } = designOf(order.cruise);
  for (let line = 0; line < order.cruise.dbh.length; line += 1) {
    const key = keyOf(order, line);
    const kind = kinds.get(key) ?? {
      key,
      dbh: Math.round(order.cruise.dbh[line] as number),
      logs: order.logs[line] as number,
      perAcre: 0,
    };
    kind.perAcre += standsFor(order, line) * (weight?.[order.cruise.plot[line] as number] ?? 1);
    kinds.set(key, kind);
  }
  return [...kinds.values()].sort((a, b) => a.dbh - b.dbh || a.logs - b.logs);
}

function standsFor({ cruise }: StandingStems, line: number): number {
  const dbh = cruise.dbh[line] as Inches;
  const plot = cruise.plot[line] as number;
  return (cruise.count[line] as number) * cruise.method.treesPerAcre(dbh, cruise.size.ofTree(plot, dbh));
}

/** What an acre has of something, as every plot has it. */
export function perPlot(order: StandingStems, ofTree: (line: number) => number): Float64Array {
  const totals = new Float64Array(order.cruise.plots);
  for (let line = 0; line < order.cruise.dbh.length; line += 1) {
    const plot = order.cruise.plot[line] as number;
    totals[plot] = (totals[plot] as number) + standsFor(order, line) * ofTree(line);
  }
  return totals;
}
