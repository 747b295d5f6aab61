import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";
import { serve } from "../../../src/hosts/embedded/serve.mjs";
import type { WoodlotPage } from "../../../src/hosts/embedded/page/hook";

declare global {
  var woodlotPage: WoodlotPage;
}

export interface OpenPage {
  readonly page: Page;
  /** Everything the page complained of, and every address it asked for. */
  readonly complaints: string[];
  readonly requests: string[];
  /** From opening the address until the page says it is ready. [ms] */
  readonly readyAfter: number;
  /** Fails when the page complained. */
  expectQuiet(): void;
  close(): Promise<void>;
}

export interface OpenOptions {
  readonly dark?: boolean;
  readonly width?: number;
  readonly height?: number;
  /** Is called before the page is opened, as for putting other files in the place of its own. */
  readonly prepare?: (page: Page) => Promise<void>;
}

const dist = process.env.WOODLOT_DIST ?? fileURLToPath(new URL("../../../dist", import.meta.url));

const FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export function launchBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: FLAGS });
}

/** Opens the built page in a fresh browser, with nothing saved from before. `npm run build` comes first. */
export async function openPage(options: OpenOptions = {}): Promise<OpenPage> {
  const { dark = false, width = 1440, height = 900, prepare } = options;
  if (!existsSync(`${dist}/embedded/index.html`)) throw new Error("There is no built page. Run `npm run build` first.");
  const { url, close } = await serve(dist, 0);
  const browser = await launchBrowser();
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme: dark ? "dark" : "light",
    acceptDownloads: true,
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on("pageerror", (problem) => complaints.push(problem.stack ?? problem.message));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("request", (request) => {
    if (!/^(?:data|blob):/.test(request.url())) requests.push(request.url());
  });
  await prepare?.(page);
  const started = Date.now();
  await page.goto(url);
  await untilReady(page).catch((problem: unknown) => complaints.push(String(problem)));
  return {
    page,
    complaints,
    requests,
    readyAfter: Date.now() - started,
    expectQuiet() {
      if (complaints.length > 0) throw new Error(`The page complained:\n${complaints.join("\n")}`);
    },
    async close() {
      await browser.close();
      await close();
    },
  };
}

export async function untilReady(page: Page): Promise<void> {
  await page.waitForSelector("body[data-ready=true]", { timeout: 60_000, state: "attached" });
}
