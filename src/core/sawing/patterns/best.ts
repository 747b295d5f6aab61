import { bestOfPatterns } from "../bestOf";
import type { SawingPattern } from "../sawingPattern";
import { around } from "./around";
import { cant } from "./cant";
import { live } from "./live";
import { quarter } from "./quarter";

/** Of patterns worth the same, the earlier one is followed: it needs fewer turns. */
const compared: readonly SawingPattern[] = [live, cant, around, quarter];

/**
 * Whichever pattern gets the most out of the log. So it is never below any of them.
 *
 * @throws OutOfRange with the reason of the first pattern, when none has a plan
 */
export const best: SawingPattern = {
  id: "best",
  title: "Best",
  aliases: ["Best of all", "Any"],
  sources: compared.flatMap(({ sources }) => sources),

  plan(job) {
    const chosen = bestOfPatterns(compared, job);
    return {
      ...chosen,
      isBestOf: true,
      guarantee: `The best of all patterns. ${chosen.guarantee}`,
    };
  },
};
