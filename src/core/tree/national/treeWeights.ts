import type { Choice } from "../../basis/choices";
import { pounds, type Pounds } from "../../basis/units";
import { coefficientRow } from "./coefficientRows";
import { dryWood, listed } from "./dryWood";
import type { Species } from "./species";
import { equationOf, stemEquations, type HeightTree, type Stand } from "./stemEquations";
import { stemSections, type Condition } from "./stemSections";

/** A weight that can be asked for: made ready for a species in a stand, then asked of many trees. */
export interface TreeWeight extends Choice {
  of(species: Species, stand: Stand): (tree: HeightTree) => Pounds;
  /** The same of a tree with rotten wood or a broken top. What the condition takes from branches is not known here. */
  left?(species: Species, stand: Stand): (tree: HeightTree, condition: Condition) => Pounds;
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
const stemWoodDry = {
  title: "Stem wood, dry",
  aliases: ["Stem wood"],
  of(species: Species, stand: Stand) {
    const { wood } = stemEquations(species, stand);
    return (tree: HeightTree) => dryWood(species, wood(tree));
  },
  left(species: Species, stand: Stand) {
    const equations = stemEquations(species, stand);
    // Rotten wood is lighter, but it is still there: cull does not come off the volume here.
    return (tree: HeightTree, { cull, brokenAt = tree.height }: Condition) =>
      dryWood(species, stemSections(equations, tree, { brokenAt }).standing.wood, cull);
  },
} satisfies TreeWeight;

const wetness = (species: Species) => 1 + listed(species, "greenMoisture", "green moisture") / 100;

/** The same as it is felled: every pound of dry wood, rotten or sound, holds its share of water. */
const stemWoodGreen: TreeWeight = {
  title: "Stem wood, green",
  of(species, stand) {
    const dry = stemWoodDry.of(species, stand);
    const wet = wetness(species);
    return (tree) => pounds(dry(tree) * wet);
  },
  left(species, stand) {
    const dry = stemWoodDry.left(species, stand);
    const wet = wetness(species);
    return (tree, condition) => pounds(dry(tree, condition) * wet);
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
