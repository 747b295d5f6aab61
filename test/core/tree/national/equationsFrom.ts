import { cubicFeet } from "../../../../src/core/basis/units";
import type { CoefficientRow } from "../../../../src/core/tree/national/coefficientRows";
import { equationOf, type HeightTree, type StemEquations } from "../../../../src/core/tree/national/stemEquations";
import type { TableName } from "../../../support/national/packedTables";

/** The equations of a species from rows that may have been moved; the project makes its own from the rows as they are. */
export function equationsFrom(
  rowOf: (table: TableName) => CoefficientRow,
  species: StemEquations["species"],
): StemEquations {
  const volume = (table: TableName) => {
    const equation = equationOf(rowOf(table), species);
    return ({ dbh, height }: HeightTree) => cubicFeet(equation(dbh, height));
  };
  const shape = (table: TableName) => {
    const { alpha = NaN, beta = NaN } = rowOf(table);
    return { alpha, beta };
  };
  return {
    species,
    wood: volume("woodVolume"),
    bark: volume("barkVolume"),
    outside: volume("outsideVolume"),
    shapeInside: shape("insideRatio"),
    shapeOutside: shape("outsideRatio"),
  };
}
