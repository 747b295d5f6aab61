import { html, nothing, type TemplateResult } from "lit";
import { actionButton } from "../components/actionButton";
import { message } from "../components/message";
import { waiting } from "../components/waiting";
import type { Pane } from "../pane";
import type { Question } from "../paneState";
import { viewTitles, type ViewName } from "./viewNames";

/** What stands around every view: the way back, where one is, the menu, and what went wrong or is being done. */
export function frame(pane: Pane, view: TemplateResult): TemplateResult {
  const { state } = pane;
  const home = state.view === "home";
  return html`
    <header class="frame">
      ${
        home
          ? html`<p class="mark" aria-hidden="true">Woodlot</p>`
          : actionButton({ label: "‹ Back", kind: "quiet", name: "Back to Home", onPress: () => pane.go("home") })
      }
      <fluent-button
        id="pane-menu"
        role="button"
        class="action menu-button"
        appearance="subtle"
        aria-expanded=${state.menuOpen ? "true" : "false"}
        aria-controls="pane-menu-list"
        @click=${() => pane.set({ menuOpen: !state.menuOpen })}
        ><span>Menu&nbsp;<span aria-hidden="true">▾</span></span></fluent-button
      >
    </header>
    ${state.menuOpen ? menu(pane) : nothing}
    <div class="view">
      <h1 id="pane-title" tabindex="-1">${home ? "Your cruise" : viewTitles[state.view]}</h1>
      ${state.busy ? waiting(state.busy) : nothing}
      ${state.problem ? message({ kind: "problem", text: state.problem }) : nothing}
      ${state.unread && state.unread !== state.problem ? unread(pane, state.unread) : nothing}
      ${state.question ? asked(pane, state.question) : nothing}
      <p class="said" role="status">${state.said}</p>
      ${view}
    </div>
  `;
}

const unread = (pane: Pane, text: string) => {
  const again = actionButton({ label: "Read again", onPress: () => void pane.refresh() });
  return message({ kind: "problem", text, actions: [again] });
};

/** A question before something is replaced; the answer that changes nothing comes first. */
const asked = (pane: Pane, { text, yes, no, onYes }: Question) => {
  const close = () => pane.set({ question: undefined });
  return html`<div
    class="message message-warning"
    role="alertdialog"
    aria-label="Before you go on"
    aria-describedby="pane-question"
  >
    <p id="pane-question" tabindex="-1">${text}</p>
    <div class="actions">
      ${actionButton({ label: no, onPress: close })}
      ${actionButton({
        label: yes,
        onPress: () => {
          close();
          onYes();
        },
      })}
    </div>
  </div>`;
};

const menu = (pane: Pane) =>
  html`<nav id="pane-menu-list" class="menu" aria-label="Views">
    <ul>
      ${(Object.keys(viewTitles) as ViewName[]).map(
        (name) =>
          html`<li>
            <button
              type="button"
              aria-current=${name === pane.state.view ? "page" : nothing}
              @click=${() => pane.go(name)}
            >
              ${viewTitles[name]}
            </button>
          </li>`,
      )}
      <li>
        <button
          type="button"
          @click=${() => {
            pane.go("home");
            pane.set({ firstWords: "asked" });
          }}
        >
          First words again
        </button>
      </li>
    </ul>
  </nav>`;
