import { engineAnswer, type EngineAnswer, type EngineValue } from "./answer";
import { isMatrix, type Matrix, matrixArgument, PassedOn, scalarArgument, takesMatrix } from "./argument";
import { FunctionError, type Implementation } from "./collector";
import type { FunctionMetadata, ParameterMetadata } from "./metadata";
import type { CalledFrom, Sentences } from "./sentences";

type Errors = { error: FunctionError; row: number; column: number }[];

/**
 * A function as the engine calls it. The engine hands over raw arguments and stops for good when a call throws,
 * so everything that Excel does around a call is done here, and nothing is thrown.
 *
 * - Too few or too many arguments: #VALUE!.
 * - A left-out optional argument is null (https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-parameter-options).
 * - Repeating arguments come as one list (https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-parameter-options).
 * - A range given for a single value makes the function answer once for each of its cells.
 */
export function callable(metadata: FunctionMetadata, implementation: Implementation, sentences: Sentences) {
  const { parameters, name } = metadata;
  const repeats = parameters.at(-1)?.repeating === true;
  const least = parameters.filter((one) => !one.optional && !one.repeating).length;
  const most = repeats ? Infinity : parameters.length;
  const parameterAt = (i: number) => (i < parameters.length ? parameters[i] : parameters.at(-1)) as ParameterMetadata;

  const once = (args: readonly unknown[], errors: Errors, row: number, column: number): EngineAnswer => {
    try {
      const given: unknown[] = args.map((value, i) => {
        const parameter = parameterAt(i);
        return takesMatrix(parameter) ? matrixArgument(value) : scalarArgument(value, parameter.type);
      });
      if (repeats) given.splice(parameters.length - 1, Infinity, given.slice(parameters.length - 1));
      while (given.length < parameters.length) given.push(null);
      return engineAnswer(implementation(...given), (error, i, j) => {
        errors.push({ error, row: row + i, column: column + j });
      });
    } catch (problem) {
      if (problem instanceof PassedOn) return problem.errorText;
      if (!(problem instanceof FunctionError)) return "#VALUE!";
      errors.push({ error: problem, row, column });
      return problem.code;
    }
  };

  return function (this: CalledFrom, ...args: unknown[]): EngineAnswer {
    if (args.length < least || args.length > most) return "#VALUE!";
    const errors: Errors = [];
    const lifted = args.flatMap((value, i) => {
      if (takesMatrix(parameterAt(i)) || !isMatrix(value)) return [];
      if (value.length !== 1 || value[0]?.length !== 1) return [value];
      args[i] = value[0][0];
      return [];
    });
    const answer = lifted.length === 0 ? once(args, errors, 0, 0) : each(lifted, args, errors);
    sentences.note(this, name, errors);
    return answer;
  };

  function each(lifted: readonly Matrix[], args: readonly unknown[], errors: Errors): EngineValue[][] {
    const rows = Math.max(...lifted.map((one) => one.length));
    const columns = Math.max(...lifted.map((one) => one[0]?.length ?? 0));
    return Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (__, column) => {
        const single = args.map((value, i) =>
          !takesMatrix(parameterAt(i)) && isMatrix(value) ? cellOf(value, row, column) : value,
        );
        const answer = once(single, errors, row, column);
        return Array.isArray(answer) ? (answer[0]?.[0] ?? "") : answer;
      }),
    );
  }
}

/** A single row or column is repeated over the shape; what lies outside a smaller range is not available. */
function cellOf(range: Matrix, row: number, column: number): unknown {
  const line = range[range.length === 1 ? 0 : row];
  if (!line) return "#N/A";
  const at = line.length === 1 ? 0 : column;
  return at < line.length ? line[at] : "#N/A";
}
