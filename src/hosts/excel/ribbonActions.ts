import type { PaneHandle } from "../../pane/mountPane";
import { viewTitles, type ViewName } from "../../pane/views/viewNames";

/** The name under which a button of the ribbon asks for a view: "showTally". */
export const actionOf = (view: ViewName): string => `show${view.charAt(0).toUpperCase()}${view.slice(1)}`;

/** Lets the buttons of the ribbon open the pane at their view. */
export function associateRibbon(pane: PaneHandle): void {
  for (const view of Object.keys(viewTitles) as ViewName[]) {
    Office.actions.associate(actionOf(view), (event?: Office.AddinCommands.Event) => {
      void Office.addin.showAsTaskpane().then(() => {
        pane.show(view);
        event?.completed();
      });
    });
  }
}
