import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { mersenne } from "pure-rand/generator/mersenne";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { squareFeetPerAcre, feet, percent } from "../../src/core/basis/units";
import type { Cruise } from "../../src/core/cruise/cruise";
import { estimate } from "../../src/core/cruise/estimate";
import { pointSample } from "../../src/core/cruise/methods/pointSample";
import { plotRadiusFactor } from "../../src/core/cruise/plotRadiusFactor";
import { plotTotals } from "../../src/core/cruise/plotTotals";
import { sameSize } from "../../src/core/cruise/plotSizes";
import { basalArea } from "../../src/core/tree/basalArea";

/**
 * How often the stated interval holds the truth, on an invented stand whose every tree is mapped, and what becomes
 * of it when a cruiser stops as soon as his margin looks good. Run by: npx tsx test/bench/coverage.ts
 */

const SIDE = 1320; // ft; a square of 40 acres
const ACRES = SIDE ** 2 / 43_560;
const BAF = squareFeetPerAcre(10);
const CONFIDENCE = percent(95);
const CRUISES = 4000;

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

const stand = inventedStand(mersenne(1871));
const factor = plotRadiusFactor(BAF);
const reach = feet(factor * 36);
const near = indexed(stand, reach);
const truth = stand.reduce((sum, { dbh }) => sum + basalArea(dbh as never), 0) / ACRES;

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
function pointsOf(chance: RandomGenerator, points: number, walkthrough: boolean): Float64Array {
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

const shown = (value: number, digits = 1) => value.toFixed(digits);

console.log(`Invented stand: ${stand.length} trees on ${ACRES} acres, ${shown(truth, 2)} ft2/ac; seed 1871.`);
console.log(`Points at BAF ${BAF}, ${CRUISES} cruises each, ${CONFIDENCE} % confidence.\n`);
console.log(
  "| Points | Walkthrough | Interval holds the truth % | Mean of the means, % of the truth | Mean margin % |",
);
console.log("| ---: | --- | ---: | ---: | ---: |");
for (const walkthrough of [true, false]) {
  for (const points of [5, 10, 20, 40]) {
    const chance = mersenne(points + (walkthrough ? 0 : 1000));
    let [held, sum, margins] = [0, 0, 0];
    for (let cruise = 0; cruise < CRUISES; cruise += 1) {
      const { value, low, high, marginPercent = 0 } = estimate(pointsOf(chance, points, walkthrough), CONFIDENCE);
      if (low <= truth && truth <= high) held += 1;
      sum += value;
      margins += marginPercent;
    }
    console.log(
      `| ${points} | ${walkthrough ? "yes" : "no"} | ${shown((100 * held) / CRUISES)} | ${shown((100 * sum) / CRUISES / truth, 2)} | ${shown(margins / CRUISES)} |`,
    );
  }
}

console.log("\nStopping as soon as the margin looks good, against the same number of points planned beforehand.");
console.log("| Wanted % | Points | Planned or stopped | Stated margin % | True margin % | Holds the truth % |");
console.log("| ---: | ---: | --- | ---: | ---: | ---: |");
const FIRST = 5;
const MOST = 120;
const marginAfter = (points: Float64Array, used: number) =>
  estimate(points.subarray(0, used), CONFIDENCE).marginPercent ?? Infinity;

for (const wanted of [30, 20, 15]) {
  const chance = mersenne(wanted);
  const cruises = Array.from({ length: CRUISES }, () => pointsOf(chance, MOST, true));
  const stops = cruises.map((points) => {
    let used = FIRST;
    while (used < MOST && marginAfter(points, used) > wanted) used += 1;
    return used;
  });
  const average = Math.round(stops.reduce((sum, used) => sum + used, 0) / CRUISES);
  for (const [how, used] of [
    ["stopped", stops],
    ["planned", stops.map(() => average)],
  ] as const) {
    const found = cruises.map((points, at) => estimate(points.subarray(0, used[at]), CONFIDENCE));
    const errors = found.map(({ value }) => Math.abs(value / truth - 1) * 100).sort((one, other) => one - other);
    // The margin that would have held as many cruises as the confidence says
    const real = errors[Math.floor((CONFIDENCE / 100) * CRUISES)] ?? NaN;
    const stated = found.reduce((sum, { marginPercent = 0 }) => sum + marginPercent, 0) / CRUISES;
    const held = found.filter(({ low, high }) => low <= truth && truth <= high).length;
    console.log(
      `| ${wanted} | ${average} | ${how} | ${shown(stated)} | ${shown(real)} | ${shown((100 * held) / CRUISES)} |`,
    );
  }
}
