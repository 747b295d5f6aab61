import { FunctionType, IFunctionService } from "@univerjs/engine-formula";
import type { Spreadsheet } from "../engine/spreadsheet";
import { callable } from "./callable";
import type { Implementation } from "./collector";
import { EngineFunction } from "./engineFunction";
import type { FunctionMetadata, FunctionsFile } from "./metadata";
import type { Sentences } from "./sentences";

/**
 * Makes every function of functions.json callable from a cell. A function that is listed but was never handed over
 * answers #N/A, as Excel does (https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-troubleshooting).
 */
export function registerFunctions(
  { api, injector }: Spreadsheet,
  namespace: string,
  { functions }: FunctionsFile,
  implementations: ReadonlyMap<string, Implementation>,
  sentences: Sentences,
): void {
  const formula = api.getFormula();
  const service = injector.get(IFunctionService);
  for (const metadata of functions) {
    const implementation = implementations.get(metadata.id);
    const name = `${namespace}.${metadata.name}`;
    const called = implementation ? callable(metadata, implementation, sentences) : () => "#N/A";
    formula.registerFunction(name, called, { description: described(name, metadata) });
    service.registerExecutors(new EngineFunction(name, called));
  }
}

/** What the formula bar shows while one types. */
function described(functionName: string, { description = "", parameters }: FunctionMetadata) {
  return {
    functionName,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: parameters.map((one) => ({
      name: one.name,
      detail: one.description ?? "",
      example: "",
      require: one.optional ? (0 as const) : (1 as const),
      repeat: one.repeating ? (1 as const) : (0 as const),
    })),
  };
}
