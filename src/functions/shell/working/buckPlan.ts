import { InvalidInput } from "../../../core/basis/problem";
import { buckPlanWorking } from "../../../core/value/buckPlanWorking";
import { buckOrder } from "../buckOrder";
import { measuredDbh } from "../measuredIn";
import { saidIn } from "../saidIn";
import { given, intoOurs, type Working } from "./working";

export const buckPlan: Working = {
  title: "BUCKPLAN",
  takes: 13,
  steps([species, dbh, height, products, stump, trim, from, to, division, origin, logs, formClass, units]) {
    const { order, system } = buckOrder({
      species,
      dbh,
      height,
      products,
      stump_height: stump,
      trim,
      cull_from: from,
      cull_to: to,
      division,
      origin,
      logs,
      form_class: formClass,
      units,
    });
    const diameter = given(measuredDbh(dbh, system));
    const { stem } = order;
    if (!stem) throw new InvalidInput("Species, height or logs are missing, so there is nothing to work out.");
    return [
      ...intoOurs("DBH", diameter, system.diameter, "in"),
      ...intoOurs("Top of the stem", stem.height, system.distance, "ft"),
      ...intoOurs("Stump height", order.stump, system.distance, "ft"),
      ...intoOurs("Trim", order.trim, system.distance, "ft"),
      ...saidIn(system, buckPlanWorking)({ ...order, stem }),
    ];
  },
};
