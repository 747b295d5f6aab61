import type { LogRule } from "../logRule";
import { blodgett } from "./blodgett";
import { britishColumbia } from "./britishColumbia";
import { doyle } from "./doyle";
import { doyleScribner } from "./doyleScribner";
import { inscribedSquare } from "./inscribedSquare";
import { internationalEighth } from "./internationalEighth";
import { internationalQuarter } from "./internationalQuarter";
import { ontario } from "./ontario";
import { roy } from "./roy";
import { scribner } from "./scribner";
import { scribnerDecimalC } from "./scribnerDecimalC";
import { scribnerDoyle } from "./scribnerDoyle";
import { scribnerNorthwestFactors } from "./scribnerNorthwestFactors";
import { twoThirds } from "./twoThirds";
import { vermont } from "./vermont";

/** Every log rule there is. Messages and tests read this list; a new rule is named here and nowhere else. */
export const logRules: readonly LogRule[] = [
  doyle,
  scribner,
  scribnerDecimalC,
  internationalQuarter,
  internationalEighth,
  vermont,
  scribnerNorthwestFactors,
  doyleScribner,
  scribnerDoyle,
  ontario,
  roy,
  britishColumbia,
  blodgett,
  twoThirds,
  inscribedSquare,
];

/** The rules that menus offer; a cell may name any other one too. */
export const menuRules = logRules.filter(({ inMenus = true }) => inMenus);
