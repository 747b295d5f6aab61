import { feet, inches } from "../../core/basis/units";
import type { SawLog } from "../../core/sawing/sawLog";
import type { Choice, ChoiceOrder } from "../../core/sawing/wanted/choice";
import { chooseLogs } from "../../core/sawing/wanted/chooseLogs";
import type { NewLinearProgram } from "../../core/sawing/wanted/linearProgram";
import { logSource, type PieceSawing } from "../../core/sawing/wanted/logSource";
import { moreLogs, type MoreLogsFor } from "../../core/sawing/wanted/moreLogs";
import type { CutListJob, LogToSaw, PieceWanted } from "./jobs";
import type { CutListResult, JobProgress, MoreLogsTold, Named } from "./results";

/** Taper of logs that are thought of, where the yard has none to go by; a choice of ours, 2 in on 16 ft. [in per ft] */
const USUAL_TAPER = 0.125;

/** An end with two readings is oval, and the other end as oval as it, as the sheets have it. */
export const sawLogOf = ({ smallEnd, second, largeEnd, length, sweep }: LogToSaw): SawLog => ({
  smallEnd: inches(smallEnd),
  largeEnd: inches(largeEnd),
  length: feet(length),
  ...(sweep !== undefined && { sweep: inches(sweep) }),
  ...(second !== undefined && {
    smallEndAcross: inches(second),
    largeEndAcross: inches((largeEnd * second) / smallEnd),
  }),
});

export const pieceSawing = (job: Pick<CutListJob, "pieces" | "kerf" | "mill">): PieceSawing => ({
  pieces: job.pieces.map(({ thickness, width, length }) => ({
    thickness: inches(thickness),
    width: inches(width),
    length: feet(length),
  })),
  kerf: inches(job.kerf),
  mill: job.mill,
});

/** Finds the logs for a cut list, then how many more of what size would give the rest. */
export function* runCutList(job: CutListJob, newProgram: NewLinearProgram): Generator<JobProgress, CutListResult> {
  const sawing = pieceSawing(job);
  const groups = alike(job.logs);
  const order: ChoiceOrder = {
    sources: groups.map((logs) =>
      logSource(
        logs.map(({ name }) => name),
        sawLogOf(logs[0] as LogToSaw),
        sawing,
      ),
    ),
    pieces: sawing.pieces,
    counts: job.pieces.map(({ count }) => count),
    kerf: job.kerf,
    goal: job.goal,
  };
  const told = (choice: Choice, more?: readonly MoreLogsTold[]) => resultOf(job, groups, choice, more);
  const search = chooseLogs(order, newProgram);
  let choice: Choice | undefined;
  while (!choice) {
    const step = search.next();
    if (step.done) choice = step.value;
    else {
      const { round, done, of, best } = step.value;
      yield { doing: `Round ${round}: kinds of logs tried`, done, of, best: () => told(best) };
    }
  }
  const chosen = choice;
  const sizes = moreLogs(chosen.missing, sawing, taperOf(job.logs), newProgram);
  for (;;) {
    const step = sizes.next();
    if (step.done)
      return told(
        chosen,
        step.value.map((one) => moreOf(job, chosen, one)),
      );
    yield { doing: "Looking for logs that would give the rest", done: 0, of: 0, best: () => told(chosen) };
  }
}

/** Logs of the same measures that the mill can take, together; in the order of the yard. */
function alike(logs: readonly LogToSaw[]): readonly (readonly LogToSaw[])[] {
  const groups = new Map<string, LogToSaw[]>();
  for (const log of logs) {
    const key = `${log.smallEnd} ${log.second ?? ""} ${log.largeEnd} ${log.length} ${log.sweep ?? ""}`;
    groups.set(key, [...(groups.get(key) ?? []), log]);
  }
  return [...groups.values()];
}

function resultOf(
  job: CutListJob,
  groups: readonly (readonly LogToSaw[])[],
  choice: Choice,
  more: readonly MoreLogsTold[] | undefined,
): CutListResult {
  const next = groups.map(() => 0);
  const { taken, gives, missing, boardFeet, wanted, atMost, wood, atLeast, gap } = choice;
  const logs = taken.map(({ source }, i) => {
    const place = next[source] as number;
    next[source] = place + 1;
    const counts = gives[i] ?? [];
    return {
      ...(groups[source]?.[place] as LogToSaw),
      pieces: named(job.pieces, counts),
      boardFeet: volumeOf(job, counts),
    };
  });
  return {
    kind: "cutList",
    logs: logs.sort((one, other) => job.logs.findIndex(same(one)) - job.logs.findIndex(same(other))),
    left: job.logs.length - taken.length,
    missing: named(job.pieces, missing),
    boardFeet,
    wanted,
    atMost,
    wood,
    atLeast,
    gap,
    goal: job.goal,
    more,
  };
}

const same = (log: LogToSaw) => (other: LogToSaw) => log.name === other.name;

const named = (pieces: readonly PieceWanted[], counts: readonly number[]): readonly Named[] =>
  pieces.flatMap(({ name }, i) => ((counts[i] ?? 0) > 0 ? [{ name, count: counts[i] as number }] : []));

const volumeOf = ({ pieces }: CutListJob, counts: readonly number[]) =>
  pieces.reduce(
    (sum, { thickness, width, length }, i) => sum + ((counts[i] ?? 0) * thickness * width * length) / 12,
    0,
  );

function moreOf(job: CutListJob, { missing }: Choice, { pieces, sizes }: MoreLogsFor): MoreLogsTold {
  return {
    pieces: named(
      job.pieces,
      missing.map((count, i) => (pieces.includes(i) ? count : 0)),
    ),
    sizes: sizes.map(({ log, ...rest }) => ({ smallEnd: log.smallEnd, length: log.length, ...rest })),
  };
}

/** The middle taper of the yard. */
function taperOf(logs: readonly LogToSaw[]): number {
  const tapers = logs.map(({ smallEnd, largeEnd, length }) => (largeEnd - smallEnd) / length).sort((a, b) => a - b);
  return tapers[tapers.length >> 1] ?? USUAL_TAPER;
}
