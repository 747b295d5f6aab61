import { isErrorText } from "./errorText";
import type { ParameterMetadata } from "./metadata";

export type Matrix = readonly (readonly unknown[])[];

/** An error found in an argument: it becomes the answer, as in Excel, and the function is not called. */
export class PassedOn extends Error {
  constructor(readonly errorText: string) {
    super(errorText);
  }
}

export const takesMatrix = (parameter: ParameterMetadata): boolean => parameter.dimensionality === "matrix";

export const isMatrix = (value: unknown): value is Matrix => Array.isArray(value);

/** A range as the function declared it: always rows of cells, even for one cell. */
export function matrixArgument(value: unknown): Matrix {
  if (!isMatrix(value)) return [[errorsPassedOn(value)]];
  for (const row of value) for (const cell of row) errorsPassedOn(cell);
  return value;
}

/** One value as the function declared it. A blank cell is an empty text, a left-out argument is null. */
export function scalarArgument(value: unknown, type: string | undefined): unknown {
  errorsPassedOn(value);
  if (value == null) return null;
  if (type === "string") return textOf(value);
  if (type === "number") return numberOf(value);
  if (type === "boolean") return booleanOf(value);
  return value;
}

function errorsPassedOn(cell: unknown): unknown {
  if (isErrorText(cell)) throw new PassedOn(cell);
  return cell;
}

function textOf(value: unknown): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return String(value);
}

function numberOf(value: unknown): number {
  if (value === "") return 0;
  const number = Number(value);
  if (Number.isNaN(number)) throw new PassedOn("#VALUE!");
  return number;
}

function booleanOf(value: unknown): boolean {
  if (value === "TRUE" || value === "FALSE") return value === "TRUE";
  if (typeof value === "string" && value !== "") throw new PassedOn("#VALUE!");
  return Boolean(value);
}
