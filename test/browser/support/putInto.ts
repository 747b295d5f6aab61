import { build } from "esbuild";
import type { Page } from "playwright-core";

/** Runs a module of the tests inside the page, past its policy of running only its own scripts. */
export async function putInto(page: Page, module: URL): Promise<void> {
  const { outputFiles } = await build({
    entryPoints: [module.pathname],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
  });
  await page.evaluate(outputFiles[0]?.text ?? "");
}
