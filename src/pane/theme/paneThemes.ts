import { createDarkTheme, createLightTheme, type BrandVariants } from "@fluentui/tokens";

export type PaneTheme = "light" | "dark";

/** Shades of the pane's own green, from near black to near white; 80 is the pine of the charts. */
const pine: BrandVariants = {
  10: "#020D0C",
  20: "#051D1B",
  30: "#082B28",
  40: "#0B3733",
  50: "#0D423D",
  60: "#0F4D47",
  70: "#11544D",
  80: "#145B54",
  90: "#2B6F68",
  100: "#3F827A",
  110: "#55968E",
  120: "#55A9A9",
  130: "#7FBDB6",
  140: "#A0D2CB",
  150: "#A9E5C9",
  160: "#DDF2EC",
};

/** Series colours for species and marks, in order of rank; each set keeps 3:1 or more against its own ground. */
const lightSeries = ["#145B54", "#991905", "#64258C", "#CF8205", "#1B97FA", "#8D976B", "#0F092C"];
const darkSeries = ["#A9E5C9", "#E87F35", "#55A9A9", "#D8B1FA", "#E3FA4B", "#938AFA", "#CF9473"];

const named = (colours: readonly string[]) =>
  Object.fromEntries(colours.map((colour, place) => [`woodlotSeries${place + 1}`, colour]));

/** Fluent's tokens in the pane's colours, and a few tokens of its own whose names begin with woodlot. */
export const paneThemes: Record<PaneTheme, Record<string, string | number>> = {
  light: {
    ...createLightTheme(pine),
    ...named(lightSeries),
    woodlotGround: "#FFFFFF",
    woodlotRaised: "#F5F7F4",
    woodlotQuiet: "#5C5C5C",
    woodlotLink: "#145B54",
    woodlotError: "#991905",
    woodlotErrorGround: "#FDF1EF",
    woodlotWarning: "#6B4E00",
    woodlotWarningGround: "#FFF4CE",
    woodlotGood: "#145B54",
  },
  dark: {
    ...createDarkTheme(pine),
    ...named(darkSeries),
    colorNeutralForeground1: "#D6D6D6",
    colorBrandBackground: "#1E7F74",
    colorBrandBackgroundHover: "#1A6F65",
    colorBrandBackgroundPressed: "#145B54",
    woodlotGround: "#292929",
    woodlotRaised: "#333333",
    woodlotQuiet: "#ADADAD",
    woodlotLink: "#9CC2FF",
    woodlotError: "#FFB4A8",
    woodlotErrorGround: "#3D2B29",
    woodlotWarning: "#FFD98A",
    woodlotWarningGround: "#3B3423",
    woodlotGood: "#A9E5C9",
  },
};
