import { feet, inches, percent, pounds, type CubicFeet } from "../../../../src/core/basis/units";
import {
  coefficientRow,
  type CoefficientRow,
  type TableName,
} from "../../../../src/core/tree/national/coefficientRows";
import { divisionOf } from "../../../../src/core/tree/national/divisions";
import { dryWood } from "../../../../src/core/tree/national/dryWood";
import { findSpecies } from "../../../../src/core/tree/national/findSpecies";
import { naturalStand } from "../../../../src/core/tree/national/standOrigins";
import { equationOf, stemEquations, STUMP } from "../../../../src/core/tree/national/stemEquations";
import { stemSections } from "../../../../src/core/tree/national/stemSections";
import { cumulativeShare } from "../../../../src/core/tree/national/taper";
import { numberIn, published, type PublishedRow } from "../../../support/published";
import { equationsFrom } from "./equationsFrom";

export const examples = published("tree/national/workedExamples.csv");

export type Quantities = Readonly<Record<string, number>>;
export type RowOf = (table: TableName) => CoefficientRow;

/** The rows of the tables that an example is worked with. */
export function rowsOf(row: PublishedRow): RowOf {
  const [species, division] = [findSpecies(row.spcd ?? ""), divisionOf(row.division ?? "")];
  return (table) => coefficientRow(table, species, division, naturalStand);
}

/**
 * What the report's examples work out, by its own names, as this project works it out.
 * @param moved rows to take in place of those of the tables
 */
export function ourQuantities(row: PublishedRow, moved?: RowOf): Quantities {
  const species = findSpecies(row.spcd ?? "");
  const tree = { dbh: inches(numberIn(row, "dbh")), height: feet(numberIn(row, "height")) };
  const cull = percent(Number(row.cull ?? "0"));
  const broken = row["broken at"] ? { brokenAt: feet(Number(row["broken at"])) } : {};
  const stand = { division: divisionOf(row.division ?? ""), origin: naturalStand };
  const equations = moved ? equationsFrom(moved, species) : stemEquations(species, stand);
  const sections = stemSections(equations, tree, { cull, ...broken });
  const share = (height: number) => cumulativeShare(feet(height), tree.height, equations.shapeInside);
  const dry = (volume: CubicFeet) => dryWood(species, volume);
  return {
    Vtotib: sections.total.wood,
    Vtotbk: sections.total.woodAndBark - sections.total.wood,
    Vtotob: sections.total.woodAndBark,
    h_to_4in_top: sections.merchantableHeight,
    h_to_7in_top: sections.sawlogHeight,
    h_to_9in_top: sections.sawlogHeight,
    R1: share(STUMP),
    Rm: share(sections.merchantableHeight),
    Rs: share(sections.sawlogHeight),
    R_at_break: share(broken.brokenAt ?? tree.height),
    Vmerib: sections.merchantable.wood,
    Vmerob: sections.merchantable.woodAndBark,
    Vsawib: sections.sawlog.wood,
    Vsawob: sections.sawlog.woodAndBark,
    Vstumpib: sections.stump.wood,
    Vstumpob: sections.stump.woodAndBark,
    Vtopib: sections.top.wood,
    Vmissib: sections.missing.wood,
    Vtotib_sound: sections.soundWood,
    Wwood_lb: dry(sections.total.wood),
    Wwood_red_lb: dryWood(species, sections.total.wood, cull),
    AGB_predicted_lb: pounds(equationOf((moved ?? rowsOf(row))("biomass"), species)(tree.dbh, tree.height)),
  };
}

/** Bark, branches and foliage by weight need tables that are not carried here. */
export const NOT_HERE =
  /^(Wbark_lb|Wbranch_lb|.*_harmonized_lb|foliage_lb|WDSG_adj|BKSG_adj|Wmerob_lb|Wstumpob_lb|Wtop_lb|AGB_predicted_red_lb|carbon_lb)$/;

/** What rests on the bark of example 1, whose row of Table S2a is one of six with an a of three digits. */
export const restsOnShortBark = (row: PublishedRow) => row.example === "1" && /bk$|ob$/.test(row.quantity ?? "");
