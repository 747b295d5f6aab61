import type { FelledTree } from "../../core/tree/local/localForm";
import { BadRows } from "./badRows";
import { column, isNothing, numberAt, sharedRows } from "./columns";
import { boundsIn } from "./measuredIn";
import type { UnitSystem } from "./unitSystem";

interface FelledColumns {
  readonly dbh: unknown;
  readonly height: unknown;
  readonly volume: unknown;
}

/** The felled trees, in the user's own units; a row without all three measures is passed over. */
export function felledTrees(given: FelledColumns, { diameter, distance }: UnitSystem): readonly FelledTree[] {
  const [dbh, height, volume] = [
    column(given.dbh, "DBH"),
    column(given.height, "Height"),
    column(given.volume, "Volume"),
  ];
  const [thick, tall] = [boundsIn(diameter, 1, 80), boundsIn(distance, 1, 400)];
  const bad = new BadRows("Tree");
  const trees: FelledTree[] = [];
  for (let row = 0, rows = sharedRows([dbh, height, volume]); row < rows; row += 1) {
    if ([dbh, height, volume].some((list) => isNothing(list.at(row)))) continue;
    bad.guard(row, () => {
      trees.push({
        dbh: numberAt(dbh, row, thick, 0),
        height: numberAt(height, row, tall, 0),
        volume: numberAt(volume, row, { unit: "", low: 1e-6, high: 1e6 }, 0),
      });
    });
  }
  bad.settle();
  return trees;
}
