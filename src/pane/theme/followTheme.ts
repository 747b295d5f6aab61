import { setTheme } from "@fluentui/web-components/theme/set-theme.js";
import { paneThemes, type PaneTheme } from "./paneThemes";

/** Dresses the pane in the theme its host asks for, or else the one the system prefers, also when that changes. */
export function followTheme(root: HTMLElement, asked: PaneTheme | undefined) {
  const prefersDark = matchMedia("(prefers-color-scheme: dark)");
  let wanted = asked;
  const dress = () => {
    const theme = wanted ?? (prefersDark.matches ? "dark" : "light");
    root.style.colorScheme = theme;
    root.dataset["theme"] = theme;
    setTheme(paneThemes[theme], root);
  };
  prefersDark.addEventListener("change", dress);
  dress();
  return {
    ask(theme: PaneTheme | undefined) {
      wanted = theme;
      dress();
    },
    stop: () => prefersDark.removeEventListener("change", dress),
  };
}
