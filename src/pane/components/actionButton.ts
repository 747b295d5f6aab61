import "@fluentui/web-components/button.js";
import { html, nothing } from "lit";

export interface ActionButtonOptions {
  /** A verb, or what the button leads to. */
  readonly label: string;
  readonly onPress: () => void;
  readonly kind?: "main" | "plain" | "quiet";
  readonly disabled?: boolean;
  /** A longer name where the label alone would not say which thing is meant, such as "Edit red oak, 14.3 in". */
  readonly name?: string;
  /** Key pressed together with Alt. */
  readonly altKey?: string;
}

const appearance = { main: "primary", plain: "outline", quiet: "subtle" } as const;

/** A button of at least 40 by 40 pixels. Its role is spelt out, because not every reader of a page looks into elements. */
export const actionButton = ({ label, onPress, kind = "plain", disabled = false, name, altKey }: ActionButtonOptions) =>
  html`<fluent-button
    class="action"
    role="button"
    appearance=${appearance[kind]}
    ?disabled=${disabled}
    aria-disabled=${disabled ? "true" : nothing}
    aria-label=${name ?? nothing}
    aria-keyshortcuts=${altKey ? `Alt+${altKey}` : nothing}
    title=${altKey ? `${label} (Alt+${altKey})` : nothing}
    @click=${onPress}
    >${label}</fluent-button
  >`;
