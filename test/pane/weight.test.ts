import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { expect, it } from "vitest";

const MOST = 250_000; // bytes, gzipped: the pane with its charts

it("the pane with its charts weighs no more than 250 kB gzipped; what writes files comes only when a copy is made", async () => {
  const { outputFiles, metafile } = await build({
    entryPoints: [new URL("../../src/pane/mountPane.ts", import.meta.url).pathname],
    bundle: true,
    splitting: true,
    format: "esm",
    minify: true,
    target: "es2022",
    outdir: "out",
    write: false,
    metafile: true,
  });
  const writer = Object.entries(metafile.outputs).find(([, { entryPoint }]) =>
    entryPoint?.endsWith("portableCopy.ts"),
  )?.[0];
  expect(writer).toBeDefined();
  const weighed = outputFiles.filter(({ path }) => !path.endsWith(writer ?? ""));
  expect(weighed.length).toBeLessThan(outputFiles.length);
  const weight = weighed.reduce((sum, { contents }) => sum + gzipSync(contents).length, 0);
  expect(weight).toBeLessThanOrEqual(MOST);
});
