import { html, nothing } from "lit";
import { actionButton } from "../components/actionButton";
import { waiting } from "../components/waiting";
import { jobTitle } from "../job/jobTitle";
import { roadOf, type Step } from "../job/road";
import type { Pane } from "../pane";
import { openDemo } from "../plan/openDemo";

/** The whole job as a road of steps, each with how far it is, and one button for the next of them. */
export function homeView(pane: Pane) {
  const { job, stand, comparison, firstWords: words } = pane.state;
  if (job === undefined) return pane.state.unread ? html`${nothing}` : waiting("Reading the workbook");
  if (words === "asked" || (words === "unseen" && job === "none")) return firstWords(pane);
  const road = roadOf(job, stand, comparison);
  return html`
    ${job === "none" ? nothing : html`<p class="job">${jobTitle(job)}</p>`}
    <section class="next" aria-label="Next step">
      <p>Next: ${road.next.says}</p>
      ${actionButton({ label: road.next.label, kind: "main", onPress: () => pane.go(road.next.view) })}
    </section>
    <ol class="road">
      ${road.steps.map((step) => stepLine(pane, step))}
    </ol>
    ${job === "none" ? demoButton(pane) : nothing}
  `;
}

const stepLine = (pane: Pane, { title, state, done, view }: Step) =>
  html`<li>
    <button type="button" class="step ${done ? "done" : ""}" @click=${() => pane.go(view)}>
      <span class="step-title">${title}</span><span class="step-state">${done ? "✓ " : ""}${state}</span>
    </button>
  </li>`;

const firstWords = (pane: Pane) =>
  html`<div class="placemat">
    <p class="lead">Turn a tally into a stand estimate with its margin.</p>
    <p>Plan how many points to take, type what you measured, and see what the stand holds - and how sure you can be.</p>
    ${actionButton({ label: "Start a cruise", kind: "main", onPress: () => pane.go("plan") })} ${demoButton(pane)}
    ${actionButton({ label: "Skip", kind: "quiet", onPress: () => skip(pane) })}
  </div>`;

function skip(pane: Pane): void {
  pane.set({ firstWords: "seen" });
  pane.focus("pane-title");
}

const demoButton = (pane: Pane) => actionButton({ label: "Open the demo", onPress: () => void openDemo(pane) });
