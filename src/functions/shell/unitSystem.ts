import { chosen, type Choice } from "../../core/basis/choices";
import {
  CM_PER_INCH,
  HA_PER_ACRE,
  KG_PER_LB,
  M2_PER_FT2,
  M2_PER_HA_PER_FT2_PER_ACRE,
  M3_PER_FT3,
  M_PER_FOOT,
} from "../../core/basis/metric";
import { asCells } from "./readings";

/**
 * How the argument `units` reads and writes measures. The core computes in the sources' own imperial units;
 * a factor tells how many of the user's units make one of ours.
 */
export interface UnitSystem extends Choice {
  readonly metric: boolean;
  readonly diameter: Unit;
  readonly distance: Unit;
  readonly area: Unit;
  readonly treeArea: Unit;
  readonly cubic: Unit;
  readonly weight: Unit;
  readonly density: Unit;
  readonly areaPerLand: Unit;
  readonly perLand: Unit;
}

export interface Unit {
  readonly name: string;
  readonly perOurs: number;
}

const imperial: UnitSystem = {
  title: "imperial",
  metric: false,
  diameter: { name: "in", perOurs: 1 },
  distance: { name: "ft", perOurs: 1 },
  area: { name: "ac", perOurs: 1 },
  treeArea: { name: "ft2", perOurs: 1 },
  cubic: { name: "ft3", perOurs: 1 },
  weight: { name: "lb", perOurs: 1 },
  density: { name: "lb/ft3", perOurs: 1 },
  areaPerLand: { name: "ft2/ac", perOurs: 1 },
  perLand: { name: "per ac", perOurs: 1 },
};

const metric: UnitSystem = {
  title: "metric",
  metric: true,
  diameter: { name: "cm", perOurs: CM_PER_INCH },
  distance: { name: "m", perOurs: M_PER_FOOT },
  area: { name: "ha", perOurs: HA_PER_ACRE },
  treeArea: { name: "m2", perOurs: M2_PER_FT2 },
  cubic: { name: "m3", perOurs: M3_PER_FT3 },
  weight: { name: "kg", perOurs: KG_PER_LB },
  density: { name: "kg/m3", perOurs: KG_PER_LB / M3_PER_FT3 },
  areaPerLand: { name: "m2/ha", perOurs: M2_PER_HA_PER_FT2_PER_ACRE },
  perLand: { name: "per ha", perOurs: 1 / HA_PER_ACRE },
};

/** The unit system that the argument `units` names; left out or blank means imperial. */
export function unitSystem(given: unknown): UnitSystem {
  const cell: unknown = asCells(given)[0]?.[0];
  if (cell == null || cell === "" || cell === 0) return imperial;
  return chosen("Units", cell, [imperial, metric]);
}
