import type { SavedTree } from "./job";

/** True of a tree that the tables do not cover: the whole stand has no volume until it is mended. One without logs only adds none. */
export const takesStandAway = ({ check }: Pick<SavedTree, "check">): boolean =>
  /the stand has (?:none|no volume)/.test(check);
