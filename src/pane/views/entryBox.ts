import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { actionButton } from "../components/actionButton";
import type { EntryDesk } from "../entry/entryDesk";
import type { EntryState } from "../entry/entryState";
import { suggestionList } from "../components/suggestionList";
import type { Suggesting } from "../species/tallySuggestions";
import type { Pane } from "../pane";

export interface EntryBoxOptions<E> {
  /** Id of the box; its echo has the same with "-echo" for "-line" at the end. */
  readonly id: string;
  readonly label: string;
  readonly placeholder: string;
  readonly hint: string;
  readonly desk: EntryDesk<E>;
  readonly state: EntryState<E>;
  /** What the entry comes to, after its words; "" for nothing. */
  readonly comesTo?: (entry: E) => string;
  /** What a half-typed line may mean; left out where nothing is suggested. */
  readonly suggesting?: Suggesting;
  /** What looks odd in it; "" for nothing. */
  readonly doubt: (entry: E) => string;
}

/** One box for a line, and below it in words what will be saved. */
export function entryBox<E>(pane: Pane, options: EntryBoxOptions<E>) {
  const { id, label, placeholder, hint, desk, state, comesTo, doubt, suggesting } = options;
  const list = `${id}-suggestions`;
  const open = suggesting !== undefined && suggesting.options.length > 0;
  const line = desk.read();
  const odd = line.kind === "entry" ? doubt(line.entry) : "";
  const sum = line.kind === "entry" && comesTo ? comesTo(line.entry) : "";
  const echo = id.replace(/line$/, "echo");
  return html`<div class="field tally-field">
    <label for=${id}>${state.editing === undefined ? label : "Change this line"}</label>
    <span class="box">
      <input
        id=${id}
        type="text"
        autocomplete="off"
        autocapitalize="none"
        spellcheck="false"
        placeholder=${placeholder}
        enterkeyhint="done"
        aria-describedby=${echo}
        role=${suggesting ? "combobox" : nothing}
        aria-autocomplete=${suggesting ? "list" : nothing}
        aria-expanded=${suggesting ? String(open) : nothing}
        aria-controls=${open ? list : nothing}
        aria-activedescendant=${open && suggesting.active >= 0 ? `${list}-${suggesting.active}` : nothing}
        data-entry
        .value=${live(state.text)}
        @input=${(event: Event) => desk.type((event.target as HTMLInputElement).value)}
      />
      ${actionButton({
        label: "Enter",
        name: "Enter this line",
        onPress: () => {
          desk.enter();
          pane.focus(id);
        },
      })}
    </span>
    ${
      suggesting
        ? suggestionList({
            id: list,
            label: "Species that this may be",
            options: suggesting.options,
            active: suggesting.active,
            onPick: (place) => {
              suggesting.pick(place);
              pane.focus(id);
            },
          })
        : nothing
    }
    <output id=${echo} class="echo echo-${line.kind}" for=${id} aria-live="polite">
      ${line.kind === "entry" ? html`= ${desk.kind.say(line.entry)}` : line.kind === "unclear" ? line.because : hint}
      ${sum ? html`<span class="sum">${sum}</span>` : nothing}
      ${odd ? html`<span class="doubt"><strong>Check:</strong> ${odd}</span>` : nothing}
    </output>
  </div>`;
}
