import type { LogRule } from "../logRule";
import { doyle } from "./doyle";
import { internationalEighth } from "./internationalEighth";
import { internationalQuarter } from "./internationalQuarter";
import { scribner } from "./scribner";
import { scribnerDecimalC } from "./scribnerDecimalC";

/** Every log rule there is. Menus, messages and tests read this list; a new rule is named here and nowhere else. */
export const logRules: readonly LogRule[] = [
  doyle,
  scribner,
  scribnerDecimalC,
  internationalQuarter,
  internationalEighth,
];
