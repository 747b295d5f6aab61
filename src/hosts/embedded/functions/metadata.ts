/** What functions.json says of a parameter, as far as a caller needs it. */
export interface ParameterMetadata {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
}

export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly ParameterMetadata[];
}

/** functions.json: the one list of functions that Excel and this page both read. */
export interface FunctionsFile {
  readonly functions: readonly FunctionMetadata[];
}
