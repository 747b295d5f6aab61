import type { PaneTheme } from "../../pane/theme/paneThemes";

/** The pane's theme for Office's own; undefined where Office does not tell, and the system's choice holds. */
export function paneThemeFor(background: string | undefined): PaneTheme | undefined {
  const parts = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(background ?? "");
  if (!parts) return undefined;
  const [red = 0, green = 0, blue = 0] = parts.slice(1).map((part) => parseInt(part, 16));
  // Brightness as an eye sees it, of 255: https://www.w3.org/TR/AERT/#color-contrast
  return (299 * red + 587 * green + 114 * blue) / 1000 < 128 ? "dark" : "light";
}
