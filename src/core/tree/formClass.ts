import { InvalidInput } from "../basis/problem";
import { requirePositive, shown } from "../basis/require";
import type { Source } from "../basis/source";
import { percent, type Inches, type Percent } from "../basis/units";

/** The class for which tables are most often reprinted, and so the one taken when none is given. */
export const USUAL_FORM_CLASS = percent(78);

/**
 * Girard form class: how much of the diameter at breast height, over bark, is left inside bark at the top of the
 * first 16-foot log.
 *
 *     FC = 100 d / D
 *
 *     FC  form class                                                                [%]
 *     d   diameter inside bark at the top of the first log, 17.3 ft above ground:
 *         1 ft stump, 16 ft log, 0.3 ft trim                                        [in]
 *     D   diameter at breast height, over bark                                      [in]
 *
 * @throws InvalidInput when a diameter is not a number above 0, or when d is larger than D
 */
export function formClass(topOfFirstLog: Inches, dbh: Inches): Percent {
  requirePositive("Top of first log", topOfFirstLog);
  requirePositive("DBH", dbh);
  const found = (100 * topOfFirstLog) / dbh;
  if (found > 100) {
    throw new InvalidInput(
      `Form class should be between 0 and 100 %. You have ${shown(found)}. Are the two diameters swapped?`,
    );
  }
  return percent(found);
}

export const sources: readonly Source[] = [
  {
    author: "encyclopedia article",
    year: "n.d.",
    title: "Girard form class",
    where: "definition and worked example",
    url: "https://en.wikipedia.org/wiki/Girard_form_class?oldid=790287672",
    standing: "read",
  },
];
