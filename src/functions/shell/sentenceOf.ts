import { Problem } from "../../core/basis/problem";

/** What a check says, or what keeps it from being made: a check is never an error, it has to say so itself. */
export function sentenceOf(check: () => string): string {
  try {
    return check();
  } catch (problem) {
    if (problem instanceof Problem) return problem.message;
    throw problem;
  }
}
