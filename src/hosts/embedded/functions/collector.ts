export type Implementation = (...args: unknown[]) => unknown;

/** An error that a function throws or returns, with the sentence that a person reads. */
export class FunctionError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

/**
 * What functions.js finds as the global CustomFunctions: it hands over its functions by id.
 * Codes as in https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-errors
 */
export function functionCollector() {
  const implementations = new Map<string, Implementation>();
  const runtime = {
    associate(idOrAll: string | Record<string, Implementation>, implementation?: Implementation) {
      if (typeof idOrAll !== "string") for (const [id, one] of Object.entries(idOrAll)) implementations.set(id, one);
      else if (implementation) implementations.set(idOrAll, implementation);
    },
    Error: FunctionError,
    ErrorCode: {
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      divisionByZero: "#DIV/0!",
      invalidNumber: "#NUM!",
      nullReference: "#NULL!",
      invalidName: "#NAME?",
      invalidReference: "#REF!",
    },
  };
  return { implementations, runtime };
}
