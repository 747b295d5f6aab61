import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { mkdtemp, readFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { extname, join, normalize } from "node:path";
import { build } from "esbuild";

const page = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'self'; style-src 'self' 'unsafe-inline'">
<title>Woodlot Reckoner</title>
<link rel="stylesheet" href="harness.css">
<style>html, body { margin: 0; height: 100%; }</style>
</head>
<body><main id="pane"></main><script type="module" src="harness.js"></script></body>
</html>`;

const types: Readonly<Record<string, string>> = { ".js": "text/javascript", ".css": "text/css", ".html": "text/html" };

export interface PaneServer {
  readonly address: string;
  /** Folder with the bundles, to be weighed. */
  readonly folder: string;
  stop(): void;
}

/** Bundles the pane with its workbook in memory and serves it under the policy that the add-in's own page has. */
export async function startPaneServer(): Promise<PaneServer> {
  const folder = await mkdtemp(join(tmpdir(), "pane-"));
  await build({
    entryPoints: [new URL("harness.ts", import.meta.url).pathname],
    bundle: true,
    splitting: true,
    format: "esm",
    minify: true,
    target: "es2022",
    outdir: folder,
    logLevel: "error",
  });
  const server = createServer((request, response) => {
    const path = normalize(new URL(request.url ?? "/", "http://localhost").pathname);
    if (path === "/") return response.setHeader("Content-Type", "text/html").end(page);
    if (path === "/favicon.ico") return response.writeHead(204).end();
    readFile(join(folder, path)).then(
      (file) => response.setHeader("Content-Type", types[extname(path)] ?? "text/plain").end(file),
      () => response.writeHead(404).end(),
    );
    return undefined;
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    folder,
    stop: () => void server.close(),
  };
}
