import { createRequire } from "node:module";
import { gzipSync } from "node:zlib";
import { build, type Metafile, type Plugin } from "esbuild";
import { expect, it } from "vitest";

const MOST = 250_000; // bytes, gzipped: the pane with its charts

/** The build takes only a part of jStat: the same loader weighs it here. */
const specialFunctions = createRequire(import.meta.url)("../../.config/specialFunctions.cjs") as (this: {
  readonly resourcePath: string;
  readonly addDependency: (file: string) => void;
}) => string;
const asBuilt: Plugin = {
  name: "as built",
  setup(pluginBuild) {
    pluginBuild.onLoad({ filter: /jstat[\\/]dist[\\/]jstat\.js$/ }, ({ path }) => ({
      contents: specialFunctions.call({ resourcePath: path, addDependency: () => undefined }),
      loader: "js",
    }));
  },
};

/** Loaded only when one opens such a view, builds a workbook, or asks for a copy, a file or the reading of one. */
const ASKED_FOR = [
  "demoWorkbook.ts",
  "emptyWorkbook.ts",
  "buckView.ts",
  "pasteView.ts",
  "pointsView.ts",
  "measureView.ts",
  "speciesView.ts",
  "speciesSearch.ts",
  "cutListView.ts",
  "allLogsView.ts",
  "cutView.ts",
  "sawView.ts",
  "planFile.ts",
  "endViewPicture.ts",
  "portableCopy.ts",
  "fieldTallyFile.ts",
  "oneSheetFile.ts",
  "readGeoFile.ts",
  "csv.ts",
];

it("the pane with its charts weighs no more than 250 kB gzipped; what writes and reads files comes only when it is asked for", async () => {
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
    plugins: [asBuilt],
  });
  const entry = Object.entries(metafile.outputs).find(([, { entryPoint }]) => entryPoint?.endsWith("mountPane.ts"));
  const loaded = loadedFrom(entry?.[0] ?? "", metafile);
  for (const name of ASKED_FOR) {
    const output = Object.entries(metafile.outputs).find(([, { entryPoint }]) => entryPoint?.endsWith(name));
    expect(output, name).toBeDefined();
    expect(loaded.has(output?.[0] ?? ""), name).toBe(false);
  }
  const weighed = outputFiles.filter(
    ({ path }) => [...loaded].some((output) => path.endsWith(output)) || path.endsWith(".css"),
  );
  expect(weighed.length).toBeLessThan(outputFiles.length);
  const weight = weighed.reduce((sum, { contents }) => sum + gzipSync(contents).length, 0);
  expect(weight).toBeGreaterThan(MOST / 2);
  expect(weight).toBeLessThanOrEqual(MOST);
});

/** Everything that is loaded with a file, at once or for a chart, but not what has to be asked for. */
function loadedFrom(output: string, { outputs }: Metafile, known = new Set<string>()): ReadonlySet<string> {
  if (known.has(output)) return known;
  known.add(output);
  for (const { path } of outputs[output]?.imports ?? []) {
    const asked = ASKED_FOR.some((name) => outputs[path]?.entryPoint?.endsWith(name));
    if (!asked && outputs[path]) loadedFrom(path, { inputs: {}, outputs }, known);
  }
  return known;
}
