import { expect, it } from "vitest";
import { openPage } from "./support/page";
import { answerOf, read } from "./support/sheet";

it("the totals of the tract beside the products are what TRACTTOTAL makes of their lines", async () => {
  const opened = await openPage();
  const { page } = opened;
  const lines = await read(page, "Products!J10:Q16");
  const totals = await read(page, "Products!S10:V16");
  let compared = 0;
  for (const [at, line] of lines.entries()) {
    for (const [column, beside] of [
      [2, 0],
      [6, 2],
    ] as const) {
      if (typeof line[column] !== "number" || typeof line[column + 1] !== "number") {
        expect(totals[at]?.[beside + 1]).toBe("");
        continue;
      }
      const call = `WOODLOT.TRACTTOTAL(${line[column]},${line[column + 1]},Acres,Acres_Margin)`;
      expect(totals[at]?.[beside]).toBeCloseTo(Number(await answerOf(page, "Products!Z1", `=INDEX(${call},1,1)`)), 4);
      expect(totals[at]?.[beside + 1]).toBeCloseTo(
        Number(await answerOf(page, "Products!Z1", `=INDEX(${call},1,2)`)),
        4,
      );
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(3);
  await opened.close();
});
