import type { Pane } from "../pane";

/** The keys of the tally box. Letters are only ever text; what acts needs Enter, Escape, an arrow or Alt. */
export function onTallyKey(event: KeyboardEvent, { desk, state }: Pick<Pane, "desk" | "state">): void {
  const act = keyOf(event, event.target instanceof HTMLInputElement && event.target.id === "tally-line");
  const { text, editing } = state.tally;
  switch (act) {
    case "enter":
      desk.enter();
      break;
    case "escape":
      if (text === "" && editing === undefined) return;
      desk.clear();
      break;
    case "earlier":
    case "later":
      if (!desk.step(act)) return;
      break;
    case "finish":
      desk.finish({ empty: false });
      break;
    case "undo":
      desk.undo();
      break;
    case undefined:
      return;
  }
  event.preventDefault();
}

type Act = "enter" | "escape" | "earlier" | "later" | "finish" | "undo";

function keyOf({ key, code, altKey, ctrlKey, metaKey, isComposing }: KeyboardEvent, inBox: boolean): Act | undefined {
  if (ctrlKey || metaKey || isComposing) return undefined;
  // By place on the keyboard, because Alt changes what a key types on some systems.
  if (altKey) return ({ KeyF: "finish", KeyU: "undo" } as const)[code];
  return inBox
    ? ({ Enter: "enter", Escape: "escape", ArrowUp: "earlier", ArrowDown: "later" } as const)[key]
    : undefined;
}
