import { sawPaperSheet, DRAWING_AT, DRAWING_SIZE, type SawPaper } from "../../workbook/sheets/sawPaper";
import type { Pane } from "../pane";
import type { EndView } from "./endView";

/** The plan with its drawing as a workbook of one sheet, laid out to print, for who cannot print from here. */
export async function planToTake(pane: Pane, paper: SawPaper, endView: EndView): Promise<void> {
  await pane.run("Making the plan to print", async () => {
    // Loaded when it is asked for: it brings the writer of files along.
    const [{ planFile }, { base64Of }, { endViewPicture }] = await Promise.all([
      import("../../workbook/portable/planFile"),
      import("../../workbook/portable/base64"),
      import("./endViewPicture"),
    ]);
    const drawing = {
      at: DRAWING_AT,
      png: endView.boards.length > 0 ? await endViewPicture(endView) : undefined,
      width: DRAWING_SIZE,
      height: DRAWING_SIZE,
      says: `End view: ${endView.boards.length} boards, numbered as they are freed. The list below has them all.`,
    };
    const { png } = drawing;
    const file = base64Of(await planFile(sawPaperSheet(paper), png ? [{ ...drawing, png }] : []));
    const plain = paper.title.replace(/[^\p{L}\p{N} ._-]/gu, "").trim();
    await pane.host.openCopy(file, `${plain}.xlsx`);
    pane.say(`${plain}.xlsx is made, one page wide, with its drawing. Open it to print it.`);
  });
}
