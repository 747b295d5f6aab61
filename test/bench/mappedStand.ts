import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { mersenne } from "pure-rand/generator/mersenne";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { squareFeetPerAcre, feet } from "../../src/core/basis/units";
import type { Cruise } from "../../src/core/cruise/cruise";
import { pointSample } from "../../src/core/cruise/methods/pointSample";
import { plotRadiusFactor } from "../../src/core/cruise/plotRadiusFactor";
import { plotTotals } from "../../src/core/cruise/plotTotals";
import { sameSize } from "../../src/core/cruise/plotSizes";
import { basalArea } from "../../src/core/tree/basalArea";

/** An invented stand whose every tree is mapped, and what points in it say, for the simulations beside this file. */

const SIDE = 1320; // ft; a square of 40 acres
export const ACRES = SIDE ** 2 / 43_560;
export const BAF = squareFeetPerAcre(10);

interface MappedTree {
  readonly east: number;
  readonly north: number;
  readonly dbh: number;
}

/** Clumps of trees about parents over a thin even stand, with thick trees few and thin ones many; all by one seed. */
function inventedStand(chance: RandomGenerator): readonly MappedTree[] {
  const even = () => uniformFloat64(chance);
  const dbh = () => 6 + Math.min(30, -5 * Math.log(1 - even()));
  const trees: MappedTree[] = [];
  const plant = (east: number, north: number) => {
    if (east >= 0 && north >= 0 && east <= SIDE && north <= SIDE) trees.push({ east, north, dbh: dbh() });
  };
  for (let i = 0; i < 45 * ACRES; i += 1) plant(even() * SIDE, even() * SIDE);
  for (let parent = 0; parent < 2 * ACRES; parent += 1) {
    const [east, north] = [even() * SIDE, even() * SIDE];
    for (let child = Math.floor(even() * 60); child > 0; child -= 1) {
      const [far, turn] = [80 * Math.sqrt(even()), 2 * Math.PI * even()];
      plant(east + far * Math.cos(turn), north + far * Math.sin(turn));
    }
  }
  return trees;
}

/** Trees by square cells as wide as the farthest tree can be, so that a point need look at nine cells only. */
function indexed(trees: readonly MappedTree[], reach: number) {
  const cells = new Map<string, MappedTree[]>();
  const cellOf = (east: number, north: number) => [Math.floor(east / reach), Math.floor(north / reach)] as const;
  for (const tree of trees) {
    const key = cellOf(tree.east, tree.north).join();
    const cell = cells.get(key);
    if (cell) cell.push(tree);
    else cells.set(key, [tree]);
  }
  const around = [-1, 0, 1].flatMap((x) => [-1, 0, 1].map((y) => [x, y] as const));
  return (east: number, north: number): readonly MappedTree[] => {
    const [x, y] = cellOf(east, north);
    return around.flatMap(([aside, along]) => cells.get(`${x + aside},${y + along}`) ?? []);
  };
}

export const stand = inventedStand(mersenne(1871));
const factor = plotRadiusFactor(BAF);
const reach = feet(factor * 36);
const near = indexed(stand, reach);
export const truth = stand.reduce((sum, { dbh }) => sum + basalArea(dbh as never), 0) / ACRES;

/** The trees that are in at a point; by the walkthrough, a tree whose far side lies outside the tract counts twice. */
function tallied(east: number, north: number, plot: number, walkthrough: boolean) {
  return near(east, north).flatMap((tree) => {
    if (Math.hypot(tree.east - east, tree.north - north) > factor * tree.dbh) return [];
    const [farEast, farNorth] = [2 * tree.east - east, 2 * tree.north - north];
    const beyond = Math.min(farEast, farNorth) < 0 || Math.max(farEast, farNorth) > SIDE;
    return [{ plot, dbh: tree.dbh, count: walkthrough && beyond ? 2 : 1 }];
  });
}

/** What each of so many random points says of an acre, through the add-in's own totals. */
export function pointsOf(chance: RandomGenerator, points: number, walkthrough: boolean): Float64Array {
  const lines = Array.from({ length: points }, (_, plot) =>
    tallied(uniformFloat64(chance) * SIDE, uniformFloat64(chance) * SIDE, plot, walkthrough),
  ).flat();
  const cruise: Cruise = {
    method: pointSample,
    size: sameSize(BAF),
    plots: points,
    plot: lines.map(({ plot }) => plot),
    dbh: lines.map(({ dbh }) => dbh),
    count: lines.map(({ count }) => count),
  };
  return plotTotals(cruise).basalArea;
}
