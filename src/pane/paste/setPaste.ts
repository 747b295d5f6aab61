import type { Pane } from "../pane";
import type { PasteState } from "./pasteState";

/** Changes a part of what the paste view holds. */
export const setPaste = (pane: Pane, change: Partial<PasteState>): void =>
  pane.set({ paste: { ...pane.state.paste, ...change } });
