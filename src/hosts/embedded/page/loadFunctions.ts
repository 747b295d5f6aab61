import { NAMESPACE } from "../../../functions/names";
import type { Spreadsheet } from "../engine/spreadsheet";
import { functionCollector } from "../functions/collector";
import type { FunctionsFile } from "../functions/metadata";
import { registerFunctions } from "../functions/registrar";
import type { Sentences } from "../functions/sentences";

/** Brings the functions into the cells, from the same two files that Excel reads. */
export async function loadFunctions(spreadsheet: Spreadsheet, sentences: Sentences): Promise<void> {
  const { implementations, runtime } = functionCollector();
  Object.assign(globalThis, { CustomFunctions: runtime });
  const [file] = await Promise.all([functionsFile(), runScript("../functions.js")]);
  registerFunctions(spreadsheet, NAMESPACE, file, implementations, sentences);
}

async function functionsFile(): Promise<FunctionsFile> {
  const answer = await fetch("../functions.json");
  if (!answer.ok) throw new Error("The list of functions could not be read. Reload the page.");
  return (await answer.json()) as FunctionsFile;
}

function runScript(source: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = source;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error("The functions could not be loaded. Reload the page."));
    document.head.append(script);
  });
}
