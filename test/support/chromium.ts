import { chromium as playwright, type Browser } from "playwright-core";

/** Starts the browser of this machine; CHROMIUM names another one. */
export const chromium = (): Promise<Browser> =>
  playwright.launch({
    executablePath: process.env["CHROMIUM"] ?? "/usr/bin/chromium",
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
