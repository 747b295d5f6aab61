import { figure, short } from "../figures";
import type { CutListResult, MoreLogsTold, Named } from "./results";

/** "4 of Post, 12 of Rafter". */
export const saidNamed = (pieces: readonly Named[]): string =>
  pieces.map(({ name, count }) => `${figure(count)} of ${name}`).join(", ");

const logsIn = (count: number) => `${figure(count)} ${count === 1 ? "log" : "logs"}`;

/** How much of the list is had, and from what. */
export function answerOf({ boardFeet, wanted, logs, left, missing }: CutListResult): string {
  const from = `${logsIn(logs.length)}${left > 0 ? `, ${figure(left)} left over` : ""}`;
  return missing.length === 0
    ? `The whole list, ${figure(wanted)} bf, from ${from}.`
    : `${figure(boardFeet)} of ${figure(wanted)} bf, from ${from}.`;
}

/** How far the answer may be from the best there is, and of what. */
export function gapOf({ missing, gap, atMost, atLeast, wood, goal }: CutListResult): string {
  const within = `within ${gap < 0.05 ? "0.1" : figure(gap, 1)} % of the best there can be`;
  if (missing.length > 0) return `No choice of these logs gives more than ${figure(atMost)} bf of it: ${within}.`;
  return goal === "fewest logs"
    ? `No choice needs fewer than ${logsIn(atLeast)}: ${within}.`
    : `It takes ${figure(wood, 1)} ft³ of wood, and no choice takes less than ${figure(atLeast, 1)}: ${within}.`;
}

/** What would give the missing pieces, a line for each length of log. */
export const moreIn = ({ more = [] }: CutListResult): readonly string[] => more.map(moreLine);

function moreLine({ pieces, sizes }: MoreLogsTold): string {
  const [first] = sizes;
  if (!first) return `No log up to 40 in thick gives ${saidNamed(pieces)}.`;
  const choices = sizes.map(({ count, smallEnd }) => `${logsIn(count)} of ${short(smallEnd)} in`);
  const misfit = first.misfit ? ` Your mill cannot take such a log: ${lower(first.misfit)}.` : "";
  return `For ${saidNamed(pieces)}: ${either(choices)} at the small end, ${short(first.length)} ft long.${misfit}`;
}

const either = (choices: readonly string[]) =>
  choices.length < 2 ? (choices[0] ?? "") : `${choices.slice(0, -1).join(", ")} or ${choices.at(-1)}`;

const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
