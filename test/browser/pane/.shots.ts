import { startPaneServer } from "./paneServer";
import { chromium } from "../../support/chromium";
import { readdirSync, readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
const server = await startPaneServer();
for (const f of readdirSync(server.folder)) console.log(f, gzipSync(readFileSync(server.folder + "/" + f)).length);
const browser = await chromium();
const sheetOf = async (names: string[], to: string) => {
  const p = await browser.newPage({ viewport: { width: 340 * names.length, height: 800 } });
  await p.setContent(
    '<body style="margin:0;display:flex;gap:12px;align-items:flex-start;background:#888">' +
      names
        .map((n) => `<img src="data:image/png;base64,${readFileSync("/tmp/shots/" + n + ".png").toString("base64")}">`)
        .join(""),
  );
  await p.screenshot({ path: to, fullPage: true });
  await p.close();
};
const book = process.env["BOOK"] ?? "demo";
const [widths = "320", themes = "light,dark", views = "home,plan,tally,paste,check,stand,compare,share"] =
  process.argv.slice(2);
for (const theme of themes.split(","))
  for (const width of widths.split(",")) {
    const page = await browser.newPage({ viewport: { width: Number(width), height: 640 } });
    page.on("console", (m) => m.type() === "error" && console.log("console:", m.text()));
    page.on("pageerror", (e) => console.log("pageerror:", e.message, e.stack?.split("\n")[1]));
    await page.goto(server.address + "?book=" + book + "&theme=" + theme);
    await page.waitForSelector("html[data-ready]");
    for (const view of views.split(",")) {
      await page.evaluate((v) => (window as any).harness.pane.show(v), view);
      await page.waitForTimeout(view === "stand" ? 900 : 250);
      if (view === "tally") await page.fill("#tally-line", "ro 143 2.5 x2 /by fence");
      if (view === "paste")
        await page.fill(
          "#paste-text",
          "Point,Sp,DBH,Logs\n1,ro,14.3,2.5\n1,sm,twelve,1\n2,wo,16,2\n3,,,\n4,ro,143,2\n9,ro,12,1",
        );
      if (view === "check" && book === "practice") {
        await page.getByText("Show accepted").click();
        await page.getByText("Keep as is").first().click();
      }
      await page.waitForTimeout(60);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (over > 0) console.log("OVERFLOW", view, width, over);
      await page.screenshot({ path: `/tmp/shots/${view}-${theme}-${width}.png`, fullPage: true });
    }
    await page.goto(server.address + "?book=none&theme=" + theme);
    await page.waitForSelector("html[data-ready]");
    await page.screenshot({ path: `/tmp/shots/first-${theme}-${width}.png`, fullPage: true });
    await page.close();
  }
for (const t of themes.split(","))
  for (const w of widths.split(",")) {
    await sheetOf(
      ["first", "home", "tally", "check", "compare"].map((v) => `${v}-${t}-${w}`),
      `/tmp/shots/A-${t}-${w}.png`,
    );
    await sheetOf(
      ["plan", "paste", "stand", "share"].map((v) => `${v}-${t}-${w}`),
      `/tmp/shots/B-${t}-${w}.png`,
    );
  }
await browser.close();
server.stop();
