import { describe, expect, it } from "vitest";
import { felled, FELLED_TREES, named } from "../../src/workbook/tables";
import { open as openPane, servePane } from "./pane/openPane";

servePane();

async function open() {
  const { page, complaints, close } = await openPane({ book: "demo" });
  await page.evaluate(() => window.harness.pane.show("local"));
  await page.waitForSelector("figure.chart svg");
  const names = (name: string) =>
    page.evaluate((one) => window.harness.host.readNames([one]).then((read) => read[one]), name);
  const finding = async () => (await page.textContent("figcaption"))?.trim() ?? "";
  return { page, complaints, names, finding, close };
}

describe("the owner's own volume table", () => {
  it("shows every felled tree as a dot beside the equation, and how far it is off in a list", async () => {
    const { page, complaints, finding, close } = await open();
    // By the least squares of another program over the same ten trees: a = 0.12301, b = 0.002331, error 2.11 % of the mean.
    expect(await finding()).toMatch(/^V = 0\.123 \+ 0\.00233 × D² × H, give or take 2\.1\s% for one tree$/);
    expect(await page.locator("figure.chart svg circle").count()).toBe(10);
    expect(await page.locator("figure.chart svg [aria-label=line] path").count()).toBe(3);
    await page.getByText("Read as a list").click();
    expect(await page.locator("figure.chart tbody tr").count()).toBe(10);
    expect(complaints).toEqual([]);
    await close();
  });

  it("takes another form, is used in place of the national equation, and for one species or all", async () => {
    const { page, names, finding, close } = await open();
    await page.getByLabel("Form of the curve").selectOption("Powers of D and H");
    await expect.poll(finding).toMatch(/^V = [\d.]+ × D\^[\d.]+ × H\^[\d.]+, give or take/);
    expect(await names(named.localForm)).toBe("Powers of D and H");
    await page.getByLabel("Use it in place of the national equation").check();
    await expect.poll(() => names(named.localUse)).toBe("Yes");
    await page.getByLabel("For the species").selectOption("");
    await expect.poll(() => names(named.localSpecies)).toBeNull();
    await page.getByLabel("Use it in place of the national equation").uncheck();
    await expect.poll(() => names(named.localUse)).toBeNull();
    await close();
  });

  it("adds a felled tree by keyboard, says what is wrong beside its box, and fits anew", async () => {
    const { page, complaints, finding, close } = await open();
    const before = await finding();
    await page.getByRole("button", { name: "Add the tree" }).click();
    await page.getByText("Type a DBH from 1 to 80 in.").waitFor();
    await page.fill("#felled-dbh", "16");
    await page.fill("#felled-height", "70");
    await page.fill("#felled-volume", "60");
    await page.press("#felled-volume", "Enter");
    await page.getByText("Add a felled tree (11 so far)").waitFor();
    await expect.poll(finding).not.toBe(before);
    expect(await page.locator("figure.chart svg circle").count()).toBe(11);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("felled-dbh");
    const rows = await page.evaluate(
      (table) => window.harness.host.readTable(table).then((read) => read.rows),
      FELLED_TREES,
    );
    expect(rows.at(-1)).toMatchObject({
      [felled.tree]: 11,
      [felled.species]: "wo",
      [felled.dbh]: 16,
      [felled.volume]: 60,
    });
    expect(complaints).toEqual([]);
    await close();
  });
});
