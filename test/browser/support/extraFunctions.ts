import type { Page, Route } from "playwright-core";
import type { FunctionMetadata, FunctionsFile } from "../../../src/hosts/embedded/functions/metadata";

/** A function that only a test has. Its body is the text of a function that sees the global CustomFunctions. */
export interface ExtraFunction extends Omit<FunctionMetadata, "id"> {
  readonly body: string;
}

/** Adds functions to the list and to the script that the page reads, so that they go the way of all others. */
export async function addFunctions(page: Page, extra: readonly ExtraFunction[]): Promise<void> {
  const metadata = extra.map(({ name, parameters }) => ({ id: name, name, parameters }));
  const script = extra
    .map(({ name, body }) => `CustomFunctions.associate(${JSON.stringify(name)}, ${body});`)
    .join("\n");
  const changed = (change: (text: string) => string) => async (route: Route) => {
    const answer = await route.fetch();
    await route.fulfill({ response: answer, body: change(await answer.text()) });
  };
  await page.route(
    "**/functions.json",
    changed((text) => {
      const file = JSON.parse(text) as FunctionsFile;
      return JSON.stringify({ ...file, functions: [...file.functions, ...metadata] });
    }),
  );
  await page.route(
    "**/functions.js",
    changed((text) => `${text}\n${script}`),
  );
}
