import { column } from "../formula";
import { flaw, named, species, STEM_FLAWS } from "../tables";
import { productList } from "./productColumns";
import { ofSpecies } from "./speciesColumns";

const meant = ofSpecies(species.key, named.stemSpecies);

/** The owner's code stands for the code of the national list that Setup finds for it; any other word for itself. */
export const stemSpeciesMeant = `IF(${meant}="",IF(${named.stemSpecies}="","",${named.stemSpecies}),${meant})`;

const formClass = ofSpecies(species.usedFormClass, named.stemSpecies, named.formClass);

/** What BUCKPLAN and its like are asked of the stem on the sheet Bucking. @param speciesAt where its species stands */
export const stemOrder = (speciesAt: string): readonly string[] => [
  speciesAt,
  named.stemDbh,
  named.stemHeight,
  productList,
  named.stemStump,
  named.stemTrim,
  column(STEM_FLAWS, flaw.from),
  column(STEM_FLAWS, flaw.to),
  named.division,
  named.origin,
  named.stemLogs,
  formClass,
  named.units,
];
