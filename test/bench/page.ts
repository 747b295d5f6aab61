import { openPage } from "../browser/support/page";
import { putInto } from "../browser/support/putInto";
import type { CellTimes } from "./inPage";
import type { Ratio } from "./ratio";

/** The same rule in 10,000 cells of the embedded page: by our function, and by a native formula. Median of five. */
export async function pageRatios(): Promise<readonly Ratio[]> {
  const opened = await openPage();
  opened.page.setDefaultTimeout(300_000);
  try {
    await putInto(opened.page, new URL("./inPage.ts", import.meta.url));
    const { ours, theirs } = await opened.page.evaluate<CellTimes>("cellTimes(10000, 5)");
    return [
      {
        what: "Embedded page, 10,000 cells recalculated: LOGSCALE against the native formula of the same rule",
        ours,
        theirs,
        aim: "1.3",
      },
    ];
  } finally {
    await opened.close();
  }
}
