import fc from "fast-check";
import { best } from "../../src/core/sawing/patterns/best";
import { sawingPatterns } from "../../src/core/sawing/patterns";
import { diameterAt } from "../../src/core/sawing/sawLog";
import type { SawPlan } from "../../src/core/sawing/sawingPattern";
import type { BestPlan } from "../../src/core/sawing/sawPlan";
import { sawYield } from "../../src/core/sawing/sawYield";
import { sticksOut } from "../support/logWood";
import { boardsOf } from "../support/sawing";
import { anOrder, apart, corners, planBy, type Order } from "../support/sawOrders";
import { aShapedOrder, planOfShaped, shapeOf, type ShapedOrder } from "../support/shapedOrders";

/**
 * Plans thousands of random logs by every pattern and looks for a plan that breaks what every plan must hold:
 * `npx tsx test/bench/randomLogs.ts [how many logs] [how many oval, swept, along the bark or on a scale] [seed]`. The tests
 * hold the same on some hundred logs at every run.
 */
const many = Number(process.argv[2] ?? 10_000);
const manyShaped = Number(process.argv[3] ?? 2_000);
const seed = Number(process.argv[4] ?? 20261124);
const NONE = 1e-6;

const tried = new Map<string, number>();
const broken: string[] = [];
function hold(property: string, isHeld: boolean, order: Order | ShapedOrder, pattern: string): void {
  tried.set(property, (tried.get(property) ?? 0) + 1);
  if (!isHeld) broken.push(`${property}; ${pattern}; ${JSON.stringify(order)}`);
}

const worth = (plan: SawPlan | undefined) => plan?.worth ?? 0;

/** What the plan of any log must hold by itself. */
function holdAlways(plan: BestPlan, order: Order | ShapedOrder, pattern: string): void {
  const boards = boardsOf(plan);
  const told = (property: string, isHeld: boolean) => hold(property, isHeld, order, pattern);
  told(
    "No two boards closer than a kerf",
    boards.every((one, i) => boards.slice(i + 1).every((to) => apart(one.outline, to.outline) >= order.kerf - NONE)),
  );
  told(
    "No cut through a board, nor below where the blade can go",
    plan.cuts.every(
      ({ kerfIn, headReading }) =>
        headReading >= order.bladeAboveBed - NONE && boards.every(({ outline }) => apart(kerfIn, outline) >= -NONE),
    ),
  );
  const { lumber, sawdust, slab, boardFeet } = sawYield(plan);
  told("Shares that add to 100 %", Math.abs(lumber + sawdust + slab - 100) < NONE);
  told("Each share above 0", Math.min(lumber, sawdust, slab) > 0);
  told("Worth as its boards add up", Math.abs(boardFeet - plan.worth) < NONE);
  told("No more than area and kerf allow", plan.worth <= plan.most.boardFeet);
}

/** What that of a round and straight log must hold besides. */
function holdPlain(plan: BestPlan, order: Order, pattern: string): void {
  const boards = boardsOf(plan);
  const told = (property: string, isHeld: boolean) => hold(property, isHeld, order, pattern);
  if (order.waneAllowed === 0) {
    told(
      "Every board inside the log at its own end",
      boards.every((one) => Math.max(...corners(one.outline)) <= diameterAt(plan.log, one.piece.length) / 2 + NONE),
    );
  }
  told(
    "Every flitch through the throat of the saw",
    plan.flitches.every((one) => one === plan.lastOnBed || one.flitch.thickness <= order.throat),
  );
}

/** And what that of a log of any other shape, or on a scale. */
function holdShaped(plan: BestPlan, order: ShapedOrder, pattern: string): void {
  const told = (property: string, isHeld: boolean) => hold(property, isHeld, order, pattern);
  const shape = shapeOf(plan);
  const unseen = (2 * order.sweep) / 256 / order.smallEnd; // between two sections that are looked at
  told(
    "Every board in the wood all along it, oval, swept or along the bark",
    boardsOf(plan).every(({ outline, piece }) => sticksOut(shape, outline, piece.length) <= unseen + NONE),
  );
  const { scaleStep } = order;
  if (scaleStep === undefined) return;
  told(
    "Every setting on a mark of the scale",
    plan.cuts.every(
      ({ headReading }) => Math.abs(headReading / scaleStep - Math.round(headReading / scaleStep)) < NONE,
    ),
  );
  told(
    "No board thinner than wanted",
    plan.flitches.every(({ flitch }) => flitch.thickness >= flitch.listed - NONE),
  );
}

let plans = 0;
for (const [at, order] of fc.sample(anOrder, { numRuns: many, seed }).entries()) {
  const found = sawingPatterns.map((pattern) => planBy(pattern, order));
  found.forEach((plan, i) => {
    if (!plan) return;
    plans += 1;
    holdAlways(plan, order, sawingPatterns[i]?.title ?? "");
    holdPlain(plan, order, sawingPatterns[i]?.title ?? "");
  });
  const most = found[sawingPatterns.indexOf(best)];
  hold(
    "The best never below any pattern, so never below live",
    found.every((one) => worth(most) >= worth(one) - NONE),
    order,
    best.title,
  );

  // What takes a second plan is tried of one pattern for each log, by turns.
  const turn = at % sawingPatterns.length;
  const pattern = sawingPatterns[turn] as (typeof sawingPatterns)[number];
  const first = found[turn];
  const told = (property: string, isHeld: boolean) => hold(property, isHeld, order, pattern.title);
  told("The same plan when planned again", JSON.stringify(planBy(pattern, order)) === JSON.stringify(first));
  const turned = planBy(pattern, { ...order, sizes: [...order.sizes].reverse() });
  told("Worth the same whatever the list is sorted by", Math.abs(worth(turned) - worth(first)) < NONE);
  told(
    "No poorer where more wane may show",
    worth(planBy(pattern, { ...order, waneAllowed: 50 })) >= worth(first) - NONE,
  );
  const sizes = [...order.sizes, { thickness: 1.5, width: 5 }];
  told("No poorer with one size more", worth(planBy(pattern, { ...order, sizes })) >= worth(first) - NONE);
}

for (const order of fc.sample(aShapedOrder, { numRuns: manyShaped, seed })) {
  const found = sawingPatterns.map((pattern) => planOfShaped(pattern, order));
  found.forEach((plan, i) => {
    if (!plan) return;
    plans += 1;
    holdAlways(plan, order, sawingPatterns[i]?.title ?? "");
    holdShaped(plan, order, sawingPatterns[i]?.title ?? "");
  });
  const most = found[sawingPatterns.indexOf(best)];
  const isBest = found.every((one) => worth(most) >= worth(one) - NONE);
  hold("The best never below any pattern, oval, swept, along the bark or on a scale", isBest, order, best.title);
}

console.log(`${many} random logs and ${manyShaped} of other shapes or on a scale, seed ${seed}: ${plans} plans.\n`);
console.log("| Property | Plans tried |\n| --- | ---: |");
for (const [property, times] of tried) console.log(`| ${property} | ${times} |`);
console.log(`\nBroken: ${broken.length}.`);
for (const one of broken.slice(0, 10)) console.log(`* ${one}`);
process.exitCode = broken.length > 0 ? 1 : 0;
