import type { SheetPlan } from "../../workbook/plan";
import type { Pane } from "../pane";

/** Lays sheets, and asks first, by name, when sheets of the same names are there and would be replaced. */
export async function layAsking(
  pane: Pane,
  sheets: readonly SheetPlan[],
  doing: string,
  done: () => void,
): Promise<void> {
  const lay = async () => {
    const went = await pane.run(doing, async () => {
      await pane.host.lay(sheets);
      await pane.refresh();
    });
    if (went) done();
  };
  let standing: readonly string[] = [];
  const looked = await pane.run("Looking at the workbook", async () => {
    const there = new Set((await pane.host.copy()).map(({ name }) => name.toLowerCase()));
    standing = sheets.map(({ name }) => name).filter((name) => there.has(name.toLowerCase()));
  });
  if (!looked) return;
  if (standing.length === 0) return lay();
  pane.set({
    question: {
      text: `This workbook already has ${listed(standing)}. Going on replaces ${standing.length === 1 ? "it" : "them"} with all that is typed there.`,
      yes: standing.length === 1 ? "Replace it" : "Replace them",
      no: standing.length === 1 ? "Keep it" : "Keep them",
      onYes: () => void lay(),
    },
  });
  pane.focus("pane-question");
}

const listed = (names: readonly string[]) =>
  names.length === 1 ? `the sheet ${names[0]}` : `the sheets ${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
