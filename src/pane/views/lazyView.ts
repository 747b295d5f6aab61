import type { TemplateResult } from "lit";
import { waiting } from "../components/waiting";
import type { Pane } from "../pane";

export type View = (pane: Pane) => TemplateResult;

const NOT_LOADED =
  "This view could not be loaded. Check the connection, then close and reopen the pane. Your data has not been changed.";

/** A view that is loaded when it is first opened, because it brings a library or much else along. */
export function lazyView(load: () => Promise<View>): View {
  let view: View | undefined;
  let asked = false;
  return (pane) => {
    if (view) return view(pane);
    if (!asked) {
      asked = true;
      load().then(
        (loaded) => {
          view = loaded;
          pane.set({});
        },
        () => pane.set({ problem: NOT_LOADED }),
      );
    }
    return waiting("Opening the view");
  };
}
