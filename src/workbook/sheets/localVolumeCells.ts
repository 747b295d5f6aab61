import { call } from "../formula";
import { named } from "../tables";

export const LOCAL_VOLUME = "Local volume";

export const FIT_AT = "J11";
/** The whole answer of LOCALFIT, as formulas on any sheet read it. */
export const localFitRange = `'${LOCAL_VOLUME}'!$J$11:$K$27`;

/** Whether the wood of a tree comes from the local table. */
export const byLocalTable = (speciesCode: string): string =>
  `AND(${named.localUse}="Yes",OR(${named.localSpecies}="",${named.localSpecies}=${speciesCode}))`;

/** Wood of a tree by the local table. */
export const localWood = (dbh: string, height: string): string =>
  call("LOCALVOLUME", dbh, height, localFitRange, named.units);
