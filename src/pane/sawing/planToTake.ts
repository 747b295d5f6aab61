import { sawPaperSheet, DRAWING_OVER, type SawPaper } from "../../workbook/sheets/sawPaper";
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
    const says = `End view: ${endView.boards.length} boards, numbered as they are freed. The list below has them all.`;
    const pictures =
      endView.boards.length > 0 ? [{ over: DRAWING_OVER, png: await endViewPicture(endView), says }] : [];
    const file = base64Of(await planFile(sawPaperSheet(paper), pictures));
    const plain = paper.title.replace(/[^\p{L}\p{N} ._-]/gu, "").trim();
    await pane.host.openCopy(file, `${plain}.xlsx`);
    pane.say(`${plain}.xlsx is made, one page wide, with its drawing. Open it to print it.`);
  });
}
