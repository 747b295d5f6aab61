import { Problem } from "../core/basis/problem";
import { HostProblem } from "../workbook/host";

/** A problem as a sentence for the user: what happened, why, and what to do next. */
export function sentence(problem: unknown): string {
  if (problem instanceof HostProblem || problem instanceof Problem) return problem.message;
  const detail = problem instanceof Error && problem.message ? ` (${problem.message})` : "";
  return `The spreadsheet did not do what was asked${detail}. Nothing you typed is lost. Try again; if it happens twice, close and reopen the pane.`;
}
