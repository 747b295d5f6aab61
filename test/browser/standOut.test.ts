import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { styleLooks } from "../../src/workbook/styles";
import { type OpenPage, openPage } from "./support/page";
import { put } from "./support/sheet";

describe("cells that ask for a look, in the page", () => {
  let open: OpenPage;
  beforeAll(async () => {
    open = await openPage();
  });
  afterAll(() => open.close());

  /** The ground of a cell as it is painted, a few pixels below its upper edge, above the words. */
  const ground = async (address: string) => {
    await open.page.evaluate((at) => woodlotPage.select(at), address);
    await open.page.waitForTimeout(1500);
    const { x, y } = await open.page.evaluate((at) => woodlotPage.middleOf(at), address);
    const picture = await open.page.screenshot({ clip: { x, y: y - 9, width: 1, height: 1 } });
    return open.page.evaluate(colorOf, `data:image/png;base64,${picture.toString("base64")}`);
  };

  it("are coloured while they say something, and white while they do not", async () => {
    expect(await ground("Stand!A5")).toBe("#FFFFFF");
    expect(await ground("Prices!A2")).toBe(styleLooks.Attention.fill);
    expect(await ground("Prices!H10")).toBe(styleLooks.Attention.fill);
    await put(open.page, "Prices!F10:G10", [["Invented county report", 46000]]);
    expect(await ground("Prices!H10")).toBe("#FFFFFF");
  });
});

/** The color of a picture's first pixel. */
async function colorOf(address: string): Promise<string> {
  const picture = new Image();
  picture.src = address;
  await picture.decode();
  const paper = document.createElement("canvas").getContext("2d");
  paper?.drawImage(picture, 0, 0);
  const [red = 0, green = 0, blue = 0] = paper?.getImageData(0, 0, 1, 1).data ?? [];
  return `#${[red, green, blue].map((part) => part.toString(16).padStart(2, "0")).join("")}`.toUpperCase();
}
