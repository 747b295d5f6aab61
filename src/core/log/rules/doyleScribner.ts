import { shown } from "../../basis/require";
import type { LogRule } from "../logRule";
import { scaledAs } from "../scaledAs";
import { toNearest } from "../toNearest";
import { doyle } from "./doyle";
import { scribner } from "./scribner";

const LAST_OF_DOYLE = 28; // in [1]

/**
 * Doyle-Scribner log rule: Doyle up to and including 28 in, Scribner above [1], and so the lower of the two for logs
 * of every size but the very largest.
 *
 * The words of the rule are kept to the letter, so a log just above 28 in scales less than one of 28 in: the Scribner
 * formula reaches Doyle's 28-in figure again at 28.4 in. By whole inches the scale never falls.
 * Which Scribner the rule means is not told; the formula is taken, and that is known from memory.
 * Rounded to the nearest whole board foot, half up, as Doyle tables are.
 *
 * @throws InvalidInput when D or L is not a number above 0
 * @throws OutOfRange when D < 4 in
 */
export const doyleScribner: LogRule = {
  id: "doyleScribner",
  title: "Doyle-Scribner (from memory)",
  aliases: ["Doyle-Scribner"],
  fromMemory: true,
  inMenus: false,
  sources: [
    {
      author: "metaglossary.com",
      year: "n.d.",
      title: "Log rule",
      where: "[1] Doyle up to and including 28 in, Scribner above",
      url: "http://metaglossary.com/define/log+rule",
      standing: "read",
    },
    ...doyle.sources,
    ...scribner.sources,
    {
      author: "Woodlot Reckoner",
      year: "",
      title: "How the rule is read here",
      where: "Scribner is taken by its formula; a diameter above 28 in by any fraction goes to Scribner",
      standing: "choice of ours",
    },
  ],

  scale: (log) => scaledAs(doyleScribner, log.diameter > LAST_OF_DOYLE ? scribner : doyle, log),

  working(log) {
    const large = log.diameter > LAST_OF_DOYLE;
    const steps = (large ? scribner : doyle).working?.(log) ?? [];
    const choice = {
      sum: `${shown(log.diameter)} in, ${large ? "above" : "up to"} ${LAST_OF_DOYLE} in`,
      meaning: `Taken by the ${large ? "Scribner" : "Doyle"} rule`,
      value: log.diameter,
      unit: "in",
    };
    return [choice, ...steps];
  },

  round: (volume) => toNearest(1, volume),
};
