import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { contract } from "../hosts/contract/contract";
import { type OpenPage, openPage } from "./support/page";
import { putInto } from "./support/putInto";

declare global {
  var runContract: (index: number) => Promise<void>;
}

/** The code that runs in Excel, on the stand-in: the same promises that are tried by hand in Excel. */
describe("the port's contract, kept by the page's spreadsheet", () => {
  let open: OpenPage;
  beforeAll(async () => {
    open = await openPage();
    await putInto(open.page, new URL("../hosts/contract/inPage.ts", import.meta.url));
  });
  afterAll(() => open.close());

  it.each(contract.map(({ name }, index) => ({ name, index })))("$name", async ({ index }) => {
    await open.page.evaluate((i) => runContract(i), index);
  });

  it("left the page without complaint", () => {
    expect(open.complaints).toEqual([]);
  });
});
