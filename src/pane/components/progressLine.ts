import { html, nothing } from "lit";
import { figure } from "../figures";
import { actionButton } from "./actionButton";

export interface ProgressLineOptions {
  /** What is being done, such as "Logs planned". */
  readonly doing: string;
  readonly done: number;
  /** 0 where it is not known how many there will be. */
  readonly of: number;
  /** The best so far, in a few words; "" while there is none. */
  readonly so: string;
  readonly onStop: () => void;
}

/** Long work: a bar, a count, the best so far, and the way to stop and keep it. */
export const progressLine = ({ doing, done, of, so, onStop }: ProgressLineOptions) =>
  html`<div class="progress" role="group" aria-label="Work in progress">
    <label for="work-done"
      >${doing}${of > 0 ? `: ${figure(done)} of ${figure(of)}` : done > 0 ? `: ${figure(done)}` : " ..."}</label
    >
    <progress id="work-done" max=${of > 0 ? of : nothing} value=${of > 0 ? done : nothing}></progress>
    ${so ? html`<p class="hint">So far: ${so}</p>` : nothing}
    <span id="stop-work" tabindex="-1"
      >${actionButton({ label: "Stop", name: "Stop and keep the best so far", onPress: onStop })}</span
    >
  </div>`;
