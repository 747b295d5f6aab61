import { species as list } from "../../reference/national/species";

/** Groups of the national equations: softwoods come first; woodland trees have no equations of their group. */
const LAST_SOFTWOOD_GROUP = 5;
/** In the inventory's numbering the softwoods came first, before newcomers were given numbers at the end. */
const FIRST_HARDWOOD_CODE = 300;

/** A tree species as the national forest inventory lists it. */
export interface Species {
  readonly code: number;
  readonly name: string;
  /** Species group of the national equations, 1 to 10. */
  readonly group: number;
  readonly softwood: boolean;
  /** Oven-dry weight over green volume, as a specific gravity. */
  readonly woodGravity: number | undefined;
  /** Moisture of green wood. [% of dry weight] */
  readonly greenMoisture: number | undefined;
  /** Carbon in dry wood. [%] */
  readonly carbon: number | undefined;
}

let read: readonly Species[] | undefined;

/** The whole list in the order of its codes, read when it is first asked for. */
export function allSpecies(): readonly Species[] {
  read ??= list.lines.trim().split("\n").map(speciesOf);
  return read;
}

function speciesOf(line: string): Species {
  const [code = "", name = "", group = "", gravity = "", moisture = "", carbon = ""] = line.split(";");
  return {
    code: Number(code),
    name,
    group: Number(group),
    softwood: Number(code) < FIRST_HARDWOOD_CODE || Number(group) <= LAST_SOFTWOOD_GROUP,
    woodGravity: numberOrNone(gravity),
    greenMoisture: numberOrNone(moisture),
    carbon: numberOrNone(carbon),
  };
}

const numberOrNone = (text: string) => (text === "" ? undefined : Number(text));
