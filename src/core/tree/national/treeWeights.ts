import type { Choice } from "../../basis/choices";
import { pounds, type Pounds } from "../../basis/units";
import { coefficientRow } from "./coefficientRows";
import { dryWood, listed } from "./dryWood";
import type { Species } from "./species";
import { equationOf, stemEquations, type HeightTree, type Stand } from "./stemEquations";

/** A weight that can be asked for: made ready for a species in a stand, then asked of many trees. */
export interface TreeWeight extends Choice {
  of(species: Species, stand: Stand): (tree: HeightTree) => Pounds;
}

/**
 * Stem, bark and branches above ground, oven-dry, without foliage. By its own equation, and so not the sum of parts.
 */
export const aboveGroundDry: TreeWeight = {
  title: "Above ground, dry",
  aliases: ["Above ground", "Biomass"],
  of(species, { division, origin }) {
    const equation = equationOf(coefficientRow("biomass", species, division, origin), species);
    return ({ dbh, height }) => pounds(equation(dbh, height));
  },
};

/** Wood of the whole stem: volume times density, before the report's sharing out of the whole over its parts. */
const stemWoodDry: TreeWeight = {
  title: "Stem wood, dry",
  aliases: ["Stem wood"],
  of(species, stand) {
    const { wood } = stemEquations(species, stand);
    return (tree) => dryWood(species, wood(tree));
  },
};

/** The same as it is felled: every pound of dry wood holds its share of water. */
const stemWoodGreen: TreeWeight = {
  title: "Stem wood, green",
  of(species, stand) {
    const dry = stemWoodDry.of(species, stand);
    const wet = 1 + listed(species, "greenMoisture", "green moisture") / 100;
    return (tree) => pounds(dry(tree) * wet);
  },
};

/** Carbon in what stands above ground. */
const carbon: TreeWeight = {
  title: "Carbon",
  aliases: ["Carbon above ground"],
  of(species, stand) {
    const dry = aboveGroundDry.of(species, stand);
    const share = listed(species, "carbon", "carbon content") / 100;
    return (tree) => pounds(dry(tree) * share);
  },
};

export const treeWeights: readonly TreeWeight[] = [aboveGroundDry, stemWoodDry, stemWoodGreen, carbon];
