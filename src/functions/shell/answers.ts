import { InvalidInput, OutOfRange, Problem } from "../../core/basis/problem";
import type { Cells, Reading } from "./readings";

type Readings<T> = { readonly [K in keyof T]: Reading<T[K]> };

/** What a cell may hold when a function has answered. */
export type Answer = string | number | boolean | CustomFunctions.Error;

/**
 * Answers cell by cell: arguments of one shape, or single values beside them. A row with a blank measurement
 * answers with a blank, a row with a problem answers with that problem in its own cell only.
 */
export function eachCell<T extends object>(readings: Readings<T>, answer: (values: T) => number | string): Cells {
  const keys = Object.keys(readings) as (keyof T)[];
  const { rows, columns } = sameShape(keys.map((key) => readings[key]));
  const values = {} as T;
  const changing = keys.flatMap((key) => unlessTheSame(key, readings[key], values));

  const count = changing.length;

  const answerAt = (row: number, column: number): Answer => {
    try {
      const place = row * columns + column;
      for (let i = 0; i < count; i += 1) {
        const { key, plain, at } = changing[i] as Changing<T>;
        const number = plain === undefined ? NaN : (plain[place] as number);
        if (number === number) values[key] = number as T[keyof T];
        else {
          const value = at(row, column);
          if (value === undefined) return "";
          values[key] = value;
        }
      }
      return finite(answer(values));
    } catch (problem) {
      return asError(problem);
    }
  };

  const answers: Answer[][] = new Array<Answer[]>(rows);
  for (let row = 0; row < rows; row += 1) {
    // A column's rows are written out as they are: an array made for its length holds numbers at twice the cost.
    answers[row] =
      columns === 1 ? [answerAt(row, 0)] : Array.from({ length: columns }, (_, column) => answerAt(row, column));
  }
  return answers;
}

/** An argument that may say something else in every cell. */
interface Changing<T> {
  readonly key: keyof T;
  readonly plain: Float64Array | undefined;
  readonly at: CellOf<T[keyof T]>;
}

type CellOf<T> = (row: number, column: number) => T | undefined;

const single = ({ rows, columns }: Reading<unknown>) => rows === 1 && columns === 1;

/** A single value is read and put among the values once; a blank or a problem in its place meets every cell. */
function unlessTheSame<T>(key: keyof T, reading: Reading<T[keyof T]>, values: T): readonly Changing<T>[] {
  if (!single(reading)) return [{ key, plain: reading.plain?.(), at: reading.at }];
  try {
    const value = reading.at(0, 0);
    if (value === undefined) return [{ key, plain: undefined, at: () => undefined }];
    values[key] = value;
    return [];
  } catch (problem) {
    const fail = (): never => {
      throw problem;
    };
    return [{ key, plain: undefined, at: fail }];
  }
}

/** The shape that arguments share when single values are spread over it. */
export function sameShape(readings: readonly Reading<unknown>[]): { readonly rows: number; readonly columns: number } {
  const spread = readings.filter((one) => !single(one));
  const first = spread[0];
  if (!first) return { rows: 1, columns: 1 };
  for (const other of spread) {
    if (other.rows === first.rows && other.columns === first.columns) continue;
    return raise(
      new InvalidInput(
        `These lists need the same number of rows: ${first.what} has ${size(first)}, ${other.what} has ${size(other)}.`,
      ),
    );
  }
  return first;
}

const size = ({ rows, columns }: Reading<unknown>) => (columns === 1 ? String(rows) : `${rows} x ${columns}`);

/** A whole function's answer: a problem becomes the error that carries its sentence. */
export function answered<T>(answer: () => T): T {
  try {
    return answer();
  } catch (problem) {
    return raise(problem);
  }
}

/** Some cells of a table; a problem stands in each of them, and the rest of the table holds. */
export function answeredCells(cells: number, answer: () => readonly unknown[]): readonly unknown[] {
  try {
    return answer();
  } catch (problem) {
    return Array<unknown>(cells).fill(asError(problem));
  }
}

/** A table that spills: a header row, then rows of its width, every cell clean. */
export function spilled(header: readonly string[], rows: readonly (readonly unknown[])[]): Cells {
  return [header, ...rows].map((row) => header.map((_, column) => cleaned(row[column])));
}

function cleaned(cell: unknown): Answer {
  if (cell == null) return "";
  if (typeof cell === "number") return finite(cell);
  return cell as Answer;
}

function finite(value: number | string): number | string {
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new InvalidInput("These numbers are too large or too small to work with.");
  }
  return value;
}

function raise(problem: unknown): never {
  throw asError(problem);
}

/** The host's own error for a problem; whatever else was thrown is a bug of ours and passes through. */
export function asError(problem: unknown): CustomFunctions.Error {
  if (problem instanceof OutOfRange)
    return new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, problem.message);
  if (problem instanceof Problem)
    return new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, problem.message);
  if (problem instanceof CustomFunctions.Error) return problem;
  throw problem;
}
