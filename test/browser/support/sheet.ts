import type { Page } from "playwright-core";

/** Adds an empty sheet through the stand-in. */
export async function addSheet(page: Page, name: string): Promise<void> {
  await page.evaluate(async (sheetName) => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.add(sheetName);
      await context.sync();
    });
  }, name);
}

/** Puts values or formulas into cells of a sheet, as an add-in does. */
export async function put(page: Page, address: string, formulas: unknown[][]): Promise<void> {
  await page.evaluate(
    async ({ sheet, at, given }) => {
      await Excel.run(async (context) => {
        context.workbook.worksheets.getItem(sheet).getRange(at).formulas = given;
        await context.sync();
      });
    },
    { sheet: address.split("!")[0] ?? "", at: address.split("!")[1] ?? "", given: formulas },
  );
}

export const read = (page: Page, address: string): Promise<(string | number | boolean)[][]> =>
  page.evaluate((at) => woodlotPage.read(at), address);

/** What one formula answers in a cell of its own. */
export async function answerOf(
  page: Page,
  cell: string,
  formula: string,
): Promise<string | number | boolean | undefined> {
  await put(page, cell, [[formula]]);
  return (await read(page, cell))[0]?.[0];
}
