import { readFile, readdir } from "node:fs/promises";
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { tsImport } from "tsx/esm/api";
import TerserPlugin from "terser-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";

const webpack = createRequire(import.meta.url)("webpack");
const here = path.dirname(fileURLToPath(import.meta.url));
const at = (...parts) => path.join(here, ...parts);

/** The origin that manifest.xml is written for; another one is given as `--env origin=https://...`. */
const DEVELOPMENT_ORIGIN = "https://localhost:3000";

/** Two passes find what one leaves, in the language that the targets below speak. */
const SMALL = { module: true, ecma: 2020, compress: { passes: 2 } };

/** The files that are no shells: they hold no function that a cell may call. */
const NOT_SHELLS = new Set(["names.ts", "register.ts"]);

/** Emits files that no loader makes: each source names a file of dist and the way to its contents. */
class Emit {
  constructor(name, sources) {
    this.name = name;
    this.sources = sources;
  }

  apply(compiler) {
    const { Compilation, WebpackError, sources } = webpack;
    compiler.hooks.thisCompilation.tap(this.name, (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL;
      compilation.hooks.processAssets.tapPromise({ name: this.name, stage }, async () => {
        for (const { file, from, contents } of this.sources) {
          try {
            const inputs = await from();
            for (const input of inputs) compilation.fileDependencies.add(input);
            compilation.emitAsset(file, new sources.RawSource(await contents(inputs)));
          } catch (problem) {
            compilation.errors.push(new WebpackError(`${file}: ${problem.message}`));
          }
        }
      });
    });
  }
}

const shellFiles = async () => {
  const files = await readdir(at("src/functions"));
  return files.filter((file) => file.endsWith(".ts") && !NOT_SHELLS.has(file)).map((file) => at("src/functions", file));
};

/**
 * A menu of log rules in a shell names some of them, for the vendor's generator; the built one offers all that belong in
 * menus, so that a new rule is added in one place.
 */
async function offerMenuRules(enums) {
  const { logRules, menuRules } = await tsImport("./src/core/log/rules/index.ts", import.meta.url);
  const titles = new Set(logRules.map((rule) => rule.title));
  for (const menu of enums) {
    if (!menu.values.every((value) => titles.has(value.stringValue))) continue;
    const tooltips = new Map(menu.values.map((value) => [value.stringValue, value.tooltip]));
    menu.values = menuRules.map(({ id, title }) => ({
      name: id,
      stringValue: title,
      tooltip: tooltips.get(title) ?? title,
    }));
  }
}

/** functions.json as the vendor's generator reads it from the shells; any complaint of the generator fails the build. */
async function functionMetadata(files) {
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(files, false);
  if (errors.length > 0) throw new Error(errors.join("; "));
  const metadata = JSON.parse(metadataJson);
  for (const one of metadata.functions) one.description = one.description.replace(/\s+/g, " ");
  await offerMenuRules(metadata.enums ?? []);
  return `${JSON.stringify(metadata, null, 1)}\n`;
}

const copied = (file, source) => ({
  file,
  from: async () => [at(source)],
  contents: ([input]) => readFile(input),
});

const manifest = (origin) => ({
  file: "manifest.xml",
  from: async () => [at("manifest.xml")],
  contents: async ([input]) =>
    (await readFile(input, "utf8")).replaceAll(DEVELOPMENT_ORIGIN, origin.replace(/\/$/, "")),
});

const icons = [16, 32, 64, 80].map((size) =>
  copied(`assets/icon-${size}.png`, `src/hosts/excel/assets/icon-${size}.png`),
);

export default (env = {}, { mode = "production" } = {}) => {
  const origin = env.origin ?? DEVELOPMENT_ORIGIN;
  const common = {
    mode,
    context: here,
    devtool: mode === "production" ? false : "source-map",
    performance: { hints: false },
    optimization: { minimizer: [new TerserPlugin({ extractComments: false, terserOptions: SMALL })] },
    stats: "errors-warnings",
    resolve: { extensions: [".ts", ".js"] },
    module: {
      rules: [
        {
          test: /\.ts$/,
          loader: "ts-loader",
          options: { transpileOnly: true, compilerOptions: { noEmit: false } },
        },
        // Every cell waits for what these two bring: only what is in use is taken of them.
        { test: /jstat[\\/]dist[\\/]jstat\.js$/, loader: at(".config/specialFunctions.cjs") },
        { test: /pure-rand[\\/].*[\\/]mersenne\.js$/, loader: at(".config/withoutJump.cjs") },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
      ],
    },
  };

  return [
    {
      ...common,
      name: "functions",
      target: "es2020",
      entry: { functions: "./src/functions/register.ts" },
      output: { path: at("dist"), filename: "[name].js", chunkFormat: "array-push" },
      plugins: [
        new Emit("FunctionMetadata", [{ file: "functions.json", from: shellFiles, contents: functionMetadata }]),
      ],
    },
    {
      ...common,
      name: "taskpane",
      target: ["web", "es2020"],
      entry: { taskpane: "./src/hosts/excel/taskpane.ts" },
      // What is loaded later keeps a name that tells what it is.
      optimization: { chunkIds: "named", minimizer: common.optimization.minimizer },
      output: {
        path: at("dist"),
        filename: "[name].js",
        chunkFilename: "pane-[name].js",
        assetModuleFilename: "[name][ext]",
        publicPath: "auto",
      },
      plugins: [
        // The linear solver asks for these on Node only.
        new webpack.IgnorePlugin({ resourceRegExp: /^node:/ }),
        new MiniCssExtractPlugin({ filename: "[name].css" }),
        new Emit("ExcelFiles", [copied("taskpane.html", "src/hosts/excel/taskpane.html"), manifest(origin), ...icons]),
      ],
    },
    {
      ...common,
      name: "embedded",
      target: ["web", "es2020"],
      entry: { embedded: "./src/hosts/embedded/main.ts" },
      // The grid engine is large: esbuild makes it small in seconds where the default takes minutes.
      optimization: { minimizer: [new TerserPlugin({ minify: TerserPlugin.esbuildMinify, extractComments: false })] },
      output: { path: at("dist/embedded"), filename: "[name].js", chunkFilename: "[name].js", publicPath: "auto" },
      plugins: [
        new MiniCssExtractPlugin({ filename: "[name].css" }),
        new Emit("EmbeddedPage", [
          copied("index.html", "src/hosts/embedded/index.html"),
          copied("pane.html", "src/hosts/embedded/pane.html"),
          copied("pane-bridge.js", "src/hosts/embedded/pane-bridge.js"),
        ]),
      ],
    },
  ];
};
