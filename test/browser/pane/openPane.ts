import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { viewTitles, type ViewName } from "../../../src/pane/views/viewNames";
import { launchBrowser } from "../support/page";
import type { Harness } from "./harness";
import { startPaneServer, type PaneServer } from "./paneServer";

declare global {
  interface Window {
    readonly harness: Harness;
    readonly axe: { run(options: object): Promise<AxeResults> };
  }
}

let server: PaneServer;
let browser: Browser;

/** Serves the pane by itself for the tests of a file. */
export function servePane(): void {
  beforeAll(async () => {
    [server, browser] = await Promise.all([startPaneServer(), launchBrowser()]);
  });
  afterAll(async () => {
    await browser.close();
    server.stop();
  });
}

interface Looks {
  readonly book?: "demo" | "practice" | "none";
  readonly theme?: "light" | "dark";
  readonly width?: number;
}

/** Opens the pane in a window of its own; a complaint of the page fails the test that asks for none. */
export async function open({ book = "practice", theme = "light", width = 320 }: Looks = {}) {
  const context = await browser.newContext({
    viewport: { width, height: 640 },
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (line) => line.type() === "error" && complaints.push(line.text()));
  await page.goto(`${server.address}?book=${book}&theme=${theme}`);
  await page.waitForSelector("html[data-ready]");
  return { page, complaints, close: () => context.close() };
}

/** Shows a view, filled the way it is when someone works with it. */
export async function show(page: Page, view: ViewName): Promise<void> {
  await page.evaluate((name) => window.harness.pane.show(name), view);
  await page.waitForFunction((title) => document.querySelector("h1")?.textContent === title, titleOf(view));
  await page.waitForFunction(() => !document.querySelector(".view .waiting"));
  if (view === "tally" && (await page.locator("#tally-line").count()) > 0)
    await page.fill("#tally-line", "ro 143 2.5 x2 /by the fence");
  if (view === "logs" && (await page.locator("#logs-line").count()) > 0)
    await page.fill("#logs-line", "wo 14.6 16.4 18 s1.5 d0.15 /seam");
  if (view === "boards" && (await page.locator("#boards-line").count()) > 0)
    await page.fill("#boards-line", "5/4 6 12 x4 /clear");
  if (view === "rules") await page.waitForSelector(".drawing svg");
  if (view === "paste")
    await page.fill("#paste-text", "Point,Sp,DBH,Logs\n1,ro,14.3,2.5\n1,sm,twelve,1\n3,,,\n9,ro,143,1");
  if (view === "check" && (await page.getByText("Keep as is").count()) > 0)
    await page.getByText("Keep as is").first().click();
  if (view === "cut" && (await page.locator(".job").count()) > 0) await page.waitForSelector(".empty, .side-by-side");
  if (view === "cut" && (await page.locator(".drawing").count()) > 0) await page.waitForSelector(".drawing svg");
  if (view === "stand" && (await page.locator(".drawing").count()) > 0) await page.waitForSelector(".drawing svg");
}

export const titleOf = (view: ViewName) => (view === "home" ? "Your cruise" : viewTitles[view]);

export const treeRows = (page: Page) => page.evaluate(() => window.harness.host.book.tables.get("Trees")?.rows ?? []);

/** Opens the pane in a window that follows the system's choice of colours, which a test can change. */
export async function openInSystemColors(colorScheme: "light" | "dark") {
  const context = await browser.newContext({ colorScheme });
  const page = await context.newPage();
  await page.goto(`${server.address}?book=none`);
  await page.waitForSelector("html[data-ready]");
  return { page, close: () => context.close() };
}
