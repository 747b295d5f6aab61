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
  const files = readdirSync(dist).filter((file) => /^(taskpane|pane-).*\.(js|css)$/.test(file));
  const forPlanner = readdirSync(dist).filter((file) => /^pane-(solver|.*highs).*\.js$|\.wasm$/.test(file));
  const forCopies = files.filter((file) => /hucre|portable/i.test(file));
  const forViews = files.filter((file) =>
    /pasteView|pointsView|cutListView|allLogsView|papaparse|readGeoFile|togeojson|polygon|pure-rand/.test(file),
  );
  const later = new Set([...forCopies, ...forViews, ...forPlanner]);
  const pane = files.filter((file) => !later.has(file));
  return [
    `| functions.js, gzipped | ${kilobytes(gzipped(["functions.js"]))} | 60 kB |`,
    `| task pane before the first chart, gzipped | ${kilobytes(gzipped(pane.filter((file) => file.startsWith("taskpane"))))} | |`,
    `| task pane with its charts, gzipped | ${kilobytes(gzipped(pane))} | 250 kB |`,
    `| what laying out points, pasting, files of outlines and the views of the planner load besides, gzipped | ${kilobytes(gzipped(forViews))} | |`,
    `| what planning a cut list loads besides, gzipped | ${kilobytes(gzipped(forPlanner))} | |`,
    `| what making a copy loads besides, gzipped | ${kilobytes(gzipped(forCopies))} | |`,
  ];
}
