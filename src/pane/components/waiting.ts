import "@fluentui/web-components/spinner.js";
import { html } from "lit";

/** A spinner with a verb: what is being done, not that something is. */
export const waiting = (doing: string) =>
  html`<div class="waiting" role="status">
    <fluent-spinner size="tiny" aria-hidden="true"></fluent-spinner>${doing} ...
  </div>`;
