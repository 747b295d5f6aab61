import { call, column } from "../formula";
import { named, plot, PLOTS, tree, TREES } from "../tables";
import { counting, sizes, weighting } from "./designArguments";

/** Species by how much they are of the stand. */
export const importance = `=${call(
  "IMPORTANCEVALUE",
  column(TREES, tree.plot),
  column(TREES, tree.species),
  counting(tree.dbh),
  column(PLOTS, plot.counted),
  named.method,
  sizes,
  column(TREES, tree.count),
  ...weighting,
  named.units,
)}`;
