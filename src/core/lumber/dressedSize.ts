import type { Choice } from "../basis/choices";
import { OutOfRange } from "../basis/problem";
import { requirePositive } from "../basis/require";
import type { Source } from "../basis/source";
import { told } from "../basis/telling";
import { inches, type Inches } from "../basis/units";
import { hardwoodThicknesses } from "../reference/hardwoodThicknesses";
import { softwoodSizes } from "../reference/softwoodSizes";

/** Whether lumber was dressed dry, at 19 % moisture or less, or green. */
export interface Seasoning extends Choice {
  readonly id: "dry" | "green";
}

export const dry: Seasoning = { id: "dry", title: "Dry" };
export const green: Seasoning = { id: "green", title: "Green" };
export const seasonings: readonly Seasoning[] = [dry, green];

/** A kind of lumber, and what is left of its nominal size once it is dressed. */
export interface LumberKind extends Choice {
  readonly sources: readonly Source[];
  /**
   * @throws InvalidInput when the size is not above 0
   * @throws OutOfRange when the printed table has no such size
   */
  dressed(nominal: Inches, seasoning: Seasoning): Inches;
}

/**
 * Boards and dimension lumber: a thickness under 5 in, or a width up to 16 in. The printed table has thicknesses and
 * widths apart, of boards and of dimension; a size that stands in more than one of its four parts has the same dressed
 * size in all of them, so a face needs no name.
 */
export const softwood: LumberKind = {
  title: "Softwood",
  sources: softwoodSizes.sources,
  dressed(nominal, { id }) {
    requirePositive("Nominal size", nominal, "in");
    const { boards, dimension } = softwoodSizes;
    const row = [...boards.thicknesses, ...boards.widths, ...dimension.thicknesses, ...dimension.widths].find(
      (one) => Math.abs(one.nominal - nominal) < A_HAIR,
    );
    if (row) return inches(row[id]);
    const timber = nominal >= 5 ? ' For a timber, 5 in or more each way, give the kind "Softwood timber".' : "";
    throw noSize("Softwood", nominal, timber);
  },
};

/**
 * Timbers: 5 in or more in their least dimension. They lose other amounts than the widths of boards do: a green 6 x 6
 * measures 5 1/2 in where a green 1 x 6 is 5 5/8 wide, a dry 7-in timber 6 1/4 where a 7-in board is 6 1/2.
 */
export const softwoodTimber: LumberKind = {
  title: "Softwood timber",
  aliases: ["Timber", "Timbers"],
  sources: softwoodSizes.sources,
  dressed(nominal, { id }) {
    requirePositive("Nominal size", nominal, "in");
    const row = softwoodSizes.timbers.find(({ from, to }) => nominal >= from && nominal <= to);
    if (!row || !Number.isInteger(nominal)) throw noSize("Softwood timber", nominal, " It has whole inches from 5 up.");
    return inches(nominal - (id === "dry" ? row.lessDry : row.lessGreen));
  },
};

/** Hardwoods are sold by rough thickness in random widths, so only a thickness has a dressed size, and only a dry one. */
export const hardwood: LumberKind = {
  title: "Hardwood",
  sources: hardwoodThicknesses.sources,
  dressed(nominal, { id }) {
    requirePositive("Nominal size", nominal, "in");
    if (id === "green") {
      throw new OutOfRange("Hardwood as published has dressed sizes for dry lumber only. You have Green.");
    }
    const row = hardwoodThicknesses.rows.find(({ rough }) => Math.abs(rough - nominal) < A_HAIR);
    if (!row)
      throw noSize("Hardwood", nominal, " It has thicknesses from 3/8 to 4 in; widths are not dressed to a size.");
    return inches(row.surfaced);
  },
};

/** Every kind of lumber that has printed dressed sizes. Menus, messages and tests read this list. */
export const lumberKinds: readonly LumberKind[] = [softwood, softwoodTimber, hardwood];

const A_HAIR = 1e-9; // in, for a third of an inch that was worked out by a formula

const noSize = (kind: string, nominal: number, advice: string) =>
  new OutOfRange((telling) => `${kind} as published has no value for ${told(telling, nominal, "in")}.${advice}`);
