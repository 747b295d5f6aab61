/** The part of a spreadsheet's function runtime that our shells use, so that they can be called in Node. */
class FunctionError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

export const associated = new Map<string, (...args: never[]) => unknown>();

const runtime = {
  associate(
    idOrAll: string | Record<string, (...args: never[]) => unknown>,
    functionOf?: (...args: never[]) => unknown,
  ) {
    if (typeof idOrAll === "string") associated.set(idOrAll, functionOf as (...args: never[]) => unknown);
    else for (const [id, one] of Object.entries(idOrAll)) associated.set(id, one);
  },
  Error: FunctionError,
  ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
};

Object.assign(globalThis, { CustomFunctions: runtime });
