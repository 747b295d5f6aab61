import { html, nothing } from "lit";

export interface SuggestionListOptions {
  /** Id of the list; its options have the same with their number behind it. */
  readonly id: string;
  readonly label: string;
  readonly options: readonly string[];
  /** The one chosen by the keys; -1 for none. */
  readonly active: number;
  readonly onPick: (place: number) => void;
}

/** Suggestions under a box. The box keeps the focus; the keys choose, or a press. */
export const suggestionList = ({ id, label, options, active, onPick }: SuggestionListOptions) =>
  options.length === 0
    ? nothing
    : html`<ul id=${id} class="suggestions" role="listbox" aria-label=${label}>
        ${options.map(
          (option, place) =>
            html`<li
              id="${id}-${place}"
              role="option"
              aria-selected=${place === active ? "true" : "false"}
              @mousedown=${(event: Event) => event.preventDefault()}
              @click=${() => onPick(place)}
            >
              ${option}
            </li>`,
        )}
      </ul>`;

/** What a key does to a list of suggestions; undefined when it is not for the list. */
export function suggestionKey(
  key: string,
  { active, count }: { readonly active: number; readonly count: number },
): number | "pick" | "close" | undefined {
  if (count === 0) return undefined;
  if (key === "ArrowDown") return (active + 1) % count;
  if (key === "ArrowUp") return active <= 0 ? count - 1 : active - 1;
  if (key === "Enter" && active >= 0) return "pick";
  return key === "Escape" ? "close" : undefined;
}
