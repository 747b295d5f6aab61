/* global Buffer, URL, console, process */
import { spawn } from "node:child_process";
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { logErrorMessage, parseNumber } from "office-addin-cli";

const HOST = "127.0.0.1";
const FIRST_PORT = 8137;
const PORTS_TRIED = 20;

const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/x-icon",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
  ".txt": "text/plain; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
};

/** The page asks nobody but this server for anything. The grid sets styles on elements and the planner's solver is compiled code, hence the two exceptions. */
const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'self'",
].join("; ");

/**
 * Serves a folder on this computer only.
 * @param {string} root the folder
 * @param {number} [firstPort] the port to use, or the next free one after it; 0 for any
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export async function serve(root, firstPort = FIRST_PORT) {
  const server = createServer((request, response) => void answer(path.resolve(root), request, response));
  const port = await listen(server, firstPort);
  const close = () =>
    new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { url: `http://${HOST}:${port}/embedded/index.html`, close };
}

async function listen(server, firstPort) {
  const last = firstPort === 0 ? 0 : firstPort + PORTS_TRIED;
  for (let port = firstPort; port <= last; port += 1) {
    const taken = await new Promise((resolve, reject) => {
      server.once("error", (problem) => (problem.code === "EADDRINUSE" ? resolve(true) : reject(problem)));
      server.listen(port, HOST, () => resolve(false));
    });
    if (!taken) return server.address().port;
    server.removeAllListeners("listening");
  }
  throw new Error(`The ports ${firstPort} to ${last} are all taken. Name another one with --port.`);
}

async function answer(root, request, response) {
  const headers = {
    "Cache-Control": "no-cache",
    "Content-Security-Policy": POLICY,
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
  };
  const refuse = (status, text) => {
    response.writeHead(status, { ...headers, "Content-Type": TYPES[".txt"] });
    response.end(text);
  };
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(405, "Only reading is allowed here.");
  const file = fileFor(root, request.url ?? "/");
  if (!file) return refuse(403, "That lies outside the served folder.");
  try {
    const contents = await readFile(file);
    const type = TYPES[path.extname(file)] ?? "application/octet-stream";
    response.writeHead(200, { ...headers, "Content-Type": type, "Content-Length": Buffer.byteLength(contents) });
    response.end(request.method === "HEAD" ? undefined : contents);
  } catch {
    refuse(404, "There is no such file.");
  }
}

/** The file that an address names, or nothing when it leads out of the folder. */
function fileFor(root, address) {
  let wanted;
  try {
    wanted = decodeURIComponent(new URL(address, `http://${HOST}`).pathname);
  } catch {
    return undefined;
  }
  if (wanted.includes("\0") || wanted.includes("\\")) return undefined;
  const file = path.join(root, wanted === "/" ? "/embedded/index.html" : wanted.replace(/\/$/, "/index.html"));
  return file.startsWith(root + path.sep) ? file : undefined;
}

function openBrowser(url) {
  const [command, ...args] =
    process.platform === "win32"
      ? ["cmd", "/c", "start", "", url]
      : process.platform === "darwin"
        ? ["open", url]
        : ["xdg-open", url];
  if (process.platform === "linux" && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return;
  spawn(command, args, { stdio: "ignore", detached: true })
    .on("error", () => undefined)
    .unref();
}

function portGiven(args) {
  const at = args.indexOf("--port");
  if (at < 0) return FIRST_PORT;
  const asked = "--port needs a whole number from 0 to 65535.";
  const port = parseNumber(args[at + 1], asked);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) throw new Error(asked);
  return port;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    const args = process.argv.slice(2);
    const dist = fileURLToPath(new URL("../../../dist", import.meta.url));
    const { url } = await serve(dist, portGiven(args));
    console.log(`Woodlot Reckoner: ${url}\nStop with Ctrl+C.`);
    if (!args.includes("--no-open")) openBrowser(url);
  } catch (problem) {
    logErrorMessage(problem);
    process.exitCode = 1;
  }
}
