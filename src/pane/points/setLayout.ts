import type { Pane } from "../pane";
import { sentence } from "../sentence";
import type { LayoutState } from "./layoutState";
import type { CornerUnit } from "./outlineReading";
import { readOutline } from "./readOutline";

/** Changes a part of what the view Lay out points holds. */
export const setLayout = (pane: Pane, change: Partial<LayoutState>): void =>
  pane.set({ layout: { ...pane.state.layout, ...change } });

/** Takes an outline that was pasted or read from a file; what was typed meanwhile wins over what is read late. */
export async function setOutline(pane: Pane, text: string, unit: CornerUnit): Promise<void> {
  setLayout(pane, { text, unit, changed: true, result: "", reading: undefined, unreadable: "" });
  if (text.trim() === "") return;
  const read = await readOutline(text, unit).then(
    (reading) => ({ reading, unreadable: "" }),
    (problem: unknown) => ({ reading: undefined, unreadable: sentence(problem) }),
  );
  const { layout } = pane.state;
  if (layout.text === text && layout.unit === unit) setLayout(pane, read);
}
