import { short } from "../figures";

/** Rot, a crook or a break of a stem, in feet above the ground. */
export interface StemFlaw {
  readonly what: string;
  /** 0 for the ground. */
  readonly from: number;
  /** The same as `from` where the stem is only to be cut; null for all that is above. */
  readonly to: number | null;
}

export type ReadFlaws = { readonly flaws: readonly StemFlaw[] } | { readonly problem: string };

const ONE = /^([a-z][a-z ]*?)?\s*(\d+(?:\.\d+)?)\s*(?:(?:-|to)\s*(\d+(?:\.\d+)?))?$/i;
/** Words that need no second height: at a crook or a fork the stem is cut, above a break nothing is left. */
const CUT_THERE = /^(crook|fork|bend|crotch)/i;
const UP_TO_THE_TIP = /^(broken|break|top|broken top)/i;
const HIGHEST = 400; // ft

/** Reads "rot 26-29, crook 47, broken 62"; a blank line is a sound stem. */
export function parseFlaws(line: string): ReadFlaws {
  const flaws: StemFlaw[] = [];
  for (const part of line.split(/[,;]/).map((one) => one.trim())) {
    if (part === "") continue;
    const found = ONE.exec(part);
    if (!found)
      return { problem: `"${part}" should be a word and a height, such as rot 26-29, crook 47 or broken 62.` };
    const what = (found[1] ?? "rot").trim().toLowerCase();
    const [from, to] = [Number(found[2]), found[3] === undefined ? undefined : Number(found[3])];
    if (from > HIGHEST || (to ?? 0) > HIGHEST)
      return { problem: `Heights go up to ${HIGHEST} ft. You have "${part}".` };
    if (to !== undefined && to < from) return { problem: `"${part}" ends below where it begins.` };
    if (to === undefined && from === 0) return { problem: `"${part}" needs a height above 0.` };
    if (to !== undefined) flaws.push({ what, from, to });
    else if (UP_TO_THE_TIP.test(what)) flaws.push({ what, from, to: null });
    else if (CUT_THERE.test(what)) flaws.push({ what, from, to: from });
    else return { problem: `"${part}" needs where it begins and where it ends, such as ${what} ${from}-${from + 3}.` };
  }
  return { flaws };
}

/** Flaws as one line that can be read again. */
export const writeFlaws = (flaws: readonly StemFlaw[]): string =>
  flaws
    .map(({ what, from, to }) => {
      const word = what === "" ? (to === null ? "broken" : to === from ? "crook" : "rot") : what.toLowerCase();
      if (to === null) return UP_TO_THE_TIP.test(word) ? `${word} ${short(from)}` : `broken ${short(from)}`;
      return to === from && CUT_THERE.test(word) ? `${word} ${short(from)}` : `${word} ${short(from)}-${short(to)}`;
    })
    .join(", ");

/** What will be done about them, in words. */
export const sayFlaws = (flaws: readonly StemFlaw[]): string =>
  flaws.length === 0 ? "A sound stem." : `Logs keep clear of ${flaws.map(said).join(", ")}.`;

function said({ what, from, to }: StemFlaw): string {
  if (to === null) return `all above ${short(from)} ft`;
  return to === from ? `the ${what} at ${short(from)} ft` : `the ${what} from ${short(from)} to ${short(to)} ft`;
}
