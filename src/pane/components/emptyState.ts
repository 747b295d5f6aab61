import { html, nothing, type TemplateResult } from "lit";

/** What will stand here once there is something, and the one button that leads there. */
export const emptyState = (says: string, button?: TemplateResult) =>
  html`<div class="empty">
    <p>${says}</p>
    ${button ?? nothing}
  </div>`;
