import { Bench } from "tinybench";

/** Two ways to the same end, timed in turn in one run, so that only their ratio matters and not the machine. */
export interface Ratio {
  readonly what: string;
  readonly ours: number;
  readonly theirs: number;
  readonly aim: string;
}

/** Median milliseconds of both ways. */
export async function ratio(what: string, aim: string, ours: () => unknown, theirs: () => unknown): Promise<Ratio> {
  const bench = new Bench({ time: 1500, warmupTime: 300 });
  bench.add("ours", ours).add("theirs", theirs);
  await bench.run();
  const median = (name: string): number => {
    const result = bench.getTask(name)?.result;
    if (!result || !("latency" in result)) throw new Error(`${what}: ${name} could not be timed`);
    return result.latency.p50;
  };
  return { what, ours: median("ours"), theirs: median("theirs"), aim };
}

export function printed({ what, ours, theirs, aim }: Ratio): string {
  const share = ours / theirs;
  const ratio = share < 0.05 ? `${share.toPrecision(1)}: ${Math.round(theirs / ours)} times as fast` : share.toFixed(2);
  return `| ${what} | ${ours.toFixed(2)} ms | ${theirs.toFixed(2)} ms | ${ratio} | ${aim} |`;
}
