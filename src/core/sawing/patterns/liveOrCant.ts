import { bestOfPatterns } from "../bestOf";
import type { SawingPattern } from "../sawingPattern";
import { cant } from "./cant";
import { live } from "./live";

const compared: readonly SawingPattern[] = [live, cant];

/**
 * Live or cant sawing, whichever gets more out of the log. Not in menus: it is what pieces of a cut list are sawn by,
 * where every log is planned over and over and the wider patterns would add time and hardly ever a piece.
 *
 * @throws OutOfRange with the reason of the first pattern, when neither has a plan
 */
export const liveOrCant: SawingPattern = {
  id: "liveOrCant",
  title: "Live or cant",
  sources: compared.flatMap(({ sources }) => sources),
  plan: (job) => bestOfPatterns(compared, job),
};
