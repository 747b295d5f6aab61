import type { EntryDesk } from "./entryDesk";

/** What the keys of a box act upon. */
export interface KeyedBox<E> {
  readonly desk: EntryDesk<E>;
  /** Id of the box. */
  readonly id: string;
  readonly state: { readonly text: string; readonly editing: number | undefined };
  /** What Alt+F does, where it does something. */
  readonly finish?: () => void;
  /** What Alt+H does, where it does something. */
  readonly measure?: () => void;
}

/** The keys of a box. Letters are only ever text; what acts needs Enter, Escape, an arrow or Alt. */
export function onEntryKey<E>(event: KeyboardEvent, box: KeyedBox<E>): void {
  const { desk, id, state, finish, measure } = box;
  const { text, editing } = state;
  const act = keyOf(event, event.target instanceof HTMLInputElement && event.target.id === id);
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
      if (!finish) return;
      finish();
      break;
    case "measure":
      if (!measure) return;
      measure();
      break;
    case "undo":
      desk.undo();
      break;
    case undefined:
      return;
  }
  event.preventDefault();
}

type Act = "enter" | "escape" | "earlier" | "later" | "finish" | "measure" | "undo";

function keyOf({ key, code, altKey, ctrlKey, metaKey, isComposing }: KeyboardEvent, inBox: boolean): Act | undefined {
  if (ctrlKey || metaKey || isComposing) return undefined;
  // By place on the keyboard, because Alt changes what a key types on some systems.
  if (altKey) return ({ KeyF: "finish", KeyH: "measure", KeyU: "undo" } as const)[code];
  return inBox
    ? ({ Enter: "enter", Escape: "escape", ArrowUp: "earlier", ArrowDown: "later" } as const)[key]
    : undefined;
}
