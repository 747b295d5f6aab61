import { KG_PER_LB } from "../../../core/basis/metric";
import { boardFeet } from "../../../core/basis/units";
import { lumberWeightWorking } from "../../../core/lumber/lumberWeight";
import { findWood } from "../../../core/lumber/wood";
import { moistures } from "../moistures";
import { measured, names } from "../readings";
import { unitSystem } from "../unitSystem";
import { given, outOfOurs, type Working } from "./working";

export const lumberWeight: Working = {
  title: "LUMBERWEIGHT",
  takes: 4,
  steps([volume, species, mc, units]) {
    const { metric } = unitSystem(units);
    const bf = given(measured(volume, "Board feet", boardFeet, { unit: "bf", low: 0.01, high: 1e9 }));
    const wood = findWood(given(names(species, "Species")));
    const moisture = given(moistures(mc, "Moisture content"));
    const steps = lumberWeightWorking(bf, wood, moisture === "green" ? wood.green : moisture);
    return outOfOurs(steps, "In kilograms", metric ? { name: "kg", perOurs: KG_PER_LB } : { name: "lb", perOurs: 1 });
  },
};
