import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { projectRoot } from "../support/sourceFiles";

const dist = path.join(projectRoot, "dist");
const gzipped = (files: readonly string[]) =>
  files.reduce((sum, file) => sum + gzipSync(readFileSync(path.join(dist, file)), { level: 9 }).length, 0);
const kilobytes = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;

/** What a user's machine has to load, gzipped: at once, with the first chart, and when a copy for a forester is made. */
export function sizes(): readonly string[] {
  const files = readdirSync(dist).filter((file) => /^(taskpane|pane-).*\.(js|css|wasm)$|\.wasm$/.test(file));
  const of = (kind: RegExp) => files.filter((file) => kind.test(file));
  const atOnce = of(/^taskpane/);
  const charts = of(/observablehq_plot|plotParts/);
  const forPlanner = of(/^pane-solver|highs|\.wasm$/);
  const forCopies = of(/hucre|portable/i);
  const known = new Set([...atOnce, ...charts, ...forPlanner, ...forCopies]);
  const asked = files.filter((file) => !known.has(file));
  return [
    `| functions.js, gzipped | ${kilobytes(gzipped(["functions.js"]))} | 60 kB |`,
    `| task pane before the first chart, gzipped | ${kilobytes(gzipped(atOnce))} | |`,
    `| task pane with its charts, gzipped | ${kilobytes(gzipped([...atOnce, ...charts]))} | 250 kB |`,
    `| what views, sheets and files load besides when they are asked for, all in all, gzipped | ${kilobytes(gzipped(asked))} | |`,
    `| what planning a cut list loads besides, gzipped | ${kilobytes(gzipped(forPlanner))} | |`,
    `| what making a copy loads besides, gzipped | ${kilobytes(gzipped(forCopies))} | |`,
  ];
}
