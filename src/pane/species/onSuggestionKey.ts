import { suggestionKey } from "../components/suggestionList";
import type { Suggesting } from "./tallySuggestions";

/** Lets the keys act on a list of suggestions; true when one did, so that the box need not. */
export function onSuggestionKey(event: KeyboardEvent, box: string, found: Suggesting): boolean {
  const { target, key, altKey, ctrlKey, metaKey, isComposing } = event;
  if (!(target instanceof HTMLInputElement) || target.id !== box) return false;
  if (altKey || ctrlKey || metaKey || isComposing) return false;
  const act = suggestionKey(key, { active: found.active, count: found.options.length });
  if (act === undefined) return false;
  if (act === "pick") found.pick(found.active);
  else if (act === "close") found.close();
  else found.choose(act);
  event.preventDefault();
  event.stopPropagation();
  return true;
}
