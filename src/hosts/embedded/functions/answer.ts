import { FunctionError } from "./collector";

/** What the engine takes back: single values, or rows of one length. */
export type EngineValue = string | number | boolean;
export type EngineAnswer = EngineValue | EngineValue[][];

/** Is told of each error that carries a sentence, and where in the answer it stands. */
export type Tell = (error: FunctionError, row: number, column: number) => void;

/**
 * An answer made safe for the engine, which checks nothing: no NaN, no gaps, no rows of different lengths,
 * and an error object becomes the error itself.
 */
export function engineAnswer(answer: unknown, tell: Tell): EngineAnswer {
  if (!Array.isArray(answer)) return engineValue(answer, tell, 0, 0);
  const first: unknown = answer[0];
  if (!Array.isArray(first) || first.length === 0) return "#VALUE!";
  if (answer.some((row) => !Array.isArray(row) || row.length !== first.length)) return "#VALUE!";
  if (answer.length === 1 && first.length === 1) return engineValue(first[0], tell, 0, 0);
  return answer.map((row: unknown[], i) => row.map((cell, j) => engineValue(cell, tell, i, j)));
}

function engineValue(value: unknown, tell: Tell, row: number, column: number): EngineValue {
  if (typeof value === "number") {
    if (Number.isFinite(value)) return value;
    return Number.isNaN(value) ? "#VALUE!" : "#NUM!";
  }
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (value == null) return "";
  if (value instanceof FunctionError) {
    tell(value, row, column);
    return value.code;
  }
  return "#VALUE!";
}
