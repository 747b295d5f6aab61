import { describe, expect, it } from "vitest";
import { buckPlan } from "../../src/functions/bucking";
import { productTable } from "../../src/functions/products";
import { sawYield } from "../../src/functions/sawing";
import { stemDiameter } from "../../src/functions/taper";
import { stemVolume } from "../../src/functions/stem";

const column = (...values: unknown[]) => values.map((value) => [value]);
const cell = (value: unknown) => value as never;
type Table = (string | number)[][];

/** Invented products and prices. */
const PRODUCTS = [
  ["Sawlogs", 10, 8, 16, 2, "International 1/4", 450],
  ["Pulpwood", 4, 8, 8, 1, "Cords", 20],
  ["Fuel", 2, 4, 4, 1, "Cubic", 0.1],
];
/** Student's t at 95 % with 2 degrees of freedom, as printed tables have it. */
const T2 = 4.302653;

/** Three plots of an acre each: a white oak and a red maple, one sugar maple, and nothing. */
const trees = [
  { plot: 1, species: "white oak", dbh: 18, height: 78 },
  { plot: 1, species: "red maple", dbh: 9, height: 55 },
  { plot: 2, species: "sugar maple", dbh: 14, height: 72 },
];
const given = {
  plot: column(...trees.map(({ plot }) => plot)),
  species: column(...trees.map(({ species }) => species)),
  dbh: column(...trees.map(({ dbh }) => dbh)),
  height: column(...trees.map(({ height }) => height)),
  logs: column("", "", ""),
  plots: column(1, 2, 3),
};

function ask(change: Partial<typeof given> = {}, ...rest: unknown[]): Table {
  const { plot, species, dbh, height, logs, plots } = { ...given, ...change };
  return productTable(plot, species, dbh, height, logs, PRODUCTS, plots, "Fixed", [[1]], ...(rest as never[])) as Table;
}

const lineOf = (table: Table, name: string) => table.find(([first]) => first === name) ?? [];

/** What BUCKPLAN cuts one tree into, by product. */
function cutAlone({ species, dbh, height }: (typeof trees)[number]): Map<string, { volume: number; value: number }> {
  const [, ...logs] = buckPlan(cell(species), cell(dbh), cell(height), PRODUCTS) as Table;
  const found = new Map<string, { volume: number; value: number }>();
  for (const log of logs) {
    const [product, volume, value] = [String(log[3]), Number(log[5]), Number(log[6])];
    const before = found.get(product) ?? { volume: 0, value: 0 };
    found.set(product, { volume: before.volume + volume, value: before.value + value });
  }
  return found;
}

/** Mean of three plots and its margin, worked here. */
function estimated(plots: readonly number[]): { readonly mean: number; readonly margin: number } {
  const mean = plots.reduce((sum, one) => sum + one, 0) / 3;
  const variance = plots.reduce((sum, one) => sum + (one - mean) ** 2, 0) / 2;
  return { mean, margin: T2 * Math.sqrt(variance / 3) };
}

const perPlot = (amount: (tree: (typeof trees)[number]) => number) =>
  [1, 2, 3].map((plot) => trees.filter((tree) => tree.plot === plot).reduce((sum, tree) => sum + amount(tree), 0));

describe("PRODUCTTABLE", () => {
  const table = ask();

  it.each(["Sawlogs", "Pulpwood", "Fuel"])("%s: mean and margin of what BUCKPLAN cuts each tree into", (name) => {
    const [, , volume, margin, , , value, itsMargin] = lineOf(table, name);
    const volumes = estimated(perPlot((tree) => cutAlone(tree).get(name)?.volume ?? 0));
    const values = estimated(perPlot((tree) => cutAlone(tree).get(name)?.value ?? 0));
    expect(volumes.mean).toBeGreaterThan(0);
    expect(volume).toBeCloseTo(volumes.mean, 8);
    expect(Number(margin) / volumes.margin).toBeCloseTo(1, 6);
    expect(value).toBeCloseTo(values.mean, 8);
    expect(Number(itsMargin) / values.margin).toBeCloseTo(1, 6);
  });

  it("adds up: products and what is left are the wood of the whole stems, by STEMVOLUME", () => {
    const wood = estimated(
      perPlot(({ species, dbh, height }) =>
        Number((stemVolume(cell(species), cell(dbh), cell(height)) as number[][])[0]?.[0]),
      ),
    );
    const whole = lineOf(table, "Whole stems");
    expect(whole[4]).toBeCloseTo(wood.mean, 9);
    expect(Number(whole[5]) / wood.margin).toBeCloseTo(1, 6);
    const parts = ["Sawlogs", "Pulpwood", "Fuel", "Left in the woods"].map((name) => Number(lineOf(table, name)[4]));
    expect(parts.every((part) => part > 0)).toBe(true);
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(wood.mean, 9);
    const values = ["Sawlogs", "Pulpwood", "Fuel"].map((name) => Number(lineOf(table, name)[6]));
    expect(whole[6]).toBeCloseTo(
      values.reduce((sum, one) => sum + one, 0),
      9,
    );
  });

  it("names the units, and cords hold the wood that the same line tells", () => {
    expect(table[0]?.slice(0, 3)).toEqual(["Product", "Unit", "Volume per ac"]);
    expect(table.map(([, unit]) => unit)).toEqual(["Unit", "bf", "cord", "ft3", "", ""]);
    const [, , cords, , wood] = lineOf(table, "Pulpwood");
    expect(Number(wood) / Number(cords)).toBeCloseTo(79.36, 9); // 128 ft3, 62 percent of it wood
  });

  it("counts a doubled tree twice", () => {
    const doubled = lineOf(ask({}, "Total height", column("", "", 2)), "Sawlogs");
    const volumes = perPlot((tree) => cutAlone(tree).get("Sawlogs")?.volume ?? 0);
    expect(doubled[2]).toBeCloseTo(((volumes[0] ?? NaN) + 2 * (volumes[1] ?? NaN)) / 3, 8);
  });

  it("takes cull off every product of its tree and leaves that wood in the woods", () => {
    const culled = ask({}, "Total height", null, column(20, 20, 20));
    for (const name of ["Sawlogs", "Pulpwood", "Fuel"])
      for (const place of [2, 4, 6])
        expect(lineOf(culled, name)[place]).toBeCloseTo(0.8 * Number(lineOf(table, name)[place]), 8);
    expect(lineOf(culled, "Whole stems")[4]).toBeCloseTo(Number(lineOf(table, "Whole stems")[4]), 9);
  });

  it("tells how many trees lack the height that it goes by, instead of dropping them in silence", () => {
    const lacking = ask({ height: column(78, "", 72) });
    expect(lineOf(lacking, "Not in it: no total height").slice(1, 3)).toEqual(["trees", 1 / 3]);
    expect(table.some(([name]) => String(name).startsWith("Not in it"))).toBe(false);
  });

  it("draws the stems by logs and form class when it is told to, and mixes in no total height", () => {
    const logs = column(2, "", 1.5);
    const byLogs = ask({ logs }, "Logs");
    const [, ...oak] = buckPlan(
      cell(""),
      cell(18),
      cell(""),
      PRODUCTS,
      ...([null, null, null, null, null, null, 2] as never[]),
    ) as Table;
    const sawlogs = oak.filter((log) => log[3] === "Sawlogs").reduce((sum, log) => sum + Number(log[5]), 0);
    const alone = ask({ logs: column(2, "", "") }, "Logs");
    expect(lineOf(alone, "Sawlogs")[2]).toBeCloseTo(sawlogs / 3, 8);
    expect(lineOf(byLogs, "Not in it: no logs")[2]).toBeCloseTo(1 / 3, 9);
    expect(lineOf(byLogs, "Stems to the merchantable top")[4]).toBeGreaterThan(0);
    expect(lineOf(byLogs, "Whole stems")).toEqual([]);
  });

  it("takes the boards road: lumber from the logs sold by board feet, by the best plan of each", () => {
    const boards = [
      [1, 4, 900],
      [1, 8, 900],
    ];
    const asked = ask({}, "Total height", null, null, null, boards, 0.125, "Live");
    const realized = ask({}, "Total height", null, null, null, boards, 0.125, "Live", 85);
    const down = (diameter: unknown) => Math.floor(Number(diameter) * 10) / 10;
    const lumber = perPlot(({ species, dbh, height }) => {
      const [, ...logs] = buckPlan(cell(species), cell(dbh), cell(height), PRODUCTS) as Table;
      return logs
        .filter((log) => log[3] === "Sawlogs")
        .reduce((sum, [, from, , , small, , , length, large]) => {
          // The butt log flares below breast height, so it is sawn as thick as it is there.
          if (Number(from) < 4.5) large = diameterAtBreastHeight(species, dbh, height);
          const [, answer] = sawYield([[down(small)]], [[down(large)]], [[length]], boards, 0.125, "Live" as never);
          return sum + Number(answer?.[1]);
        }, 0);
    });
    const [, unit, volume, margin] = lineOf(asked, "Lumber from the logs sold by board feet");
    expect(unit).toBe("bf");
    expect(volume).toBeCloseTo(estimated(lumber).mean, 8);
    expect(Number(margin) / estimated(lumber).margin).toBeCloseTo(1, 6);
    const less = lineOf(realized, "Lumber from the logs sold by board feet")[2];
    expect(less).toBeCloseTo(0.85 * estimated(lumber).mean, 8);
  });

  it("says what is lacking", () => {
    const free = PRODUCTS.map((row) => [...row.slice(0, 6), ""]);
    const { plot, species, dbh, height, logs, plots } = given;
    const order = (products: unknown[][]) => () =>
      productTable(plot, species, dbh, height, logs, products, plots, "Fixed", [[1]]);
    expect(order(free)).toThrow("No product in your list has a price.");
    expect(order([["", "", "", "", "", "", ""]])).toThrow("Your list has no products yet.");
    expect(order([...PRODUCTS, ["Fuel", 6, 8, 8, 1, "Cords", 10]])).toThrow(
      '"Fuel" is sold in two units. Give each way of selling it a name of its own.',
    );
    expect(() => ask({ species: column("white oak", "", "xyzzy") })).toThrow(
      "Row 2: the species is missing. And 1 more row has a problem.",
    );
    expect(ask({ dbh: column("", "", "") }).slice(1)[0]?.[0]).toBe("No trees yet");
  });

  it("draws a stem as full as the row's own wood says: as its curve with every diameter times the root of the share", () => {
    // The first tree with 21 % more wood is 10 % thicker all along; what is sold by the wood itself grows by those 21 %.
    const [first] = trees;
    const wood = Number(
      (stemVolume(cell(first?.species), cell(first?.dbh), cell(first?.height)) as number[][])[0]?.[0],
    );
    const byWood = [["Sawlogs", 10, 16, 16, 2, "Smalian", 1]];
    const askOne = (its: unknown) =>
      productTable(
        column(1),
        column(first?.species),
        column(first?.dbh),
        column(first?.height),
        column(""),
        byWood,
        column(1, 2),
        "Fixed",
        [[1]],
        ...([...new Array<null>(15).fill(null), column(its)] as never[]),
      ) as Table;
    const [usual, fuller, blank] = [askOne(wood), askOne(1.21 * wood), askOne("")];
    expect(lineOf(blank, "Whole stems")).toEqual(lineOf(askOne(null), "Whole stems"));
    expect(lineOf(usual, "Whole stems")[4]).toBeCloseTo(wood / 2, 9);
    expect(lineOf(fuller, "Whole stems")[4]).toBeCloseTo((1.21 * wood) / 2, 9);
    // Logs of 16 ft down to 10 in of the fuller stem are those down to 10 / 1.1 in of the usual one.
    const [, ...logs] = buckPlan(cell(first?.species), cell(first?.dbh), cell(first?.height), [
      ["Sawlogs", 10 / 1.1, 16, 16, 2, "Smalian", 1],
    ]) as Table;
    const sawn = logs.reduce((sum, log) => sum + Number(log[5]), 0);
    expect(lineOf(fuller, "Sawlogs")[2]).toBeCloseTo((1.21 * sawn) / 2, 9);
  });

  it("says that a margin does not apply where every tree was tallied", () => {
    const { plot, species, dbh, height, logs } = given;
    const all = productTable(plot, species, dbh, height, logs, PRODUCTS, column(1, 2), "All", column(10, 12)) as Table;
    expect(lineOf(all, "Sawlogs")[3]).toBe("not applicable");
  });

  it("answers in metric what it answers in feet", () => {
    const metric = productTable(
      given.plot,
      given.species,
      column(...trees.map(({ dbh }) => 2.54 * dbh)),
      column(...trees.map(({ height }) => 0.3048 * height)),
      given.logs,
      PRODUCTS.map(([name, end, shortest, longest, step, rule, price]) => [
        name,
        2.54 * Number(end),
        0.3048 * Number(shortest),
        0.3048 * Number(longest),
        0.3048 * Number(step),
        rule,
        rule === "Cubic" ? Number(price) / 0.3048 ** 3 : price,
      ]),
      given.plots,
      "Fixed",
      [[0.40468564224]],
      ...([...new Array<null>(16).fill(null), "metric"] as never[]),
    ) as Table;
    const perHectare = 1 / 0.40468564224;
    expect(lineOf(metric, "Sawlogs")[2]).toBeCloseTo(Number(lineOf(table, "Sawlogs")[2]) * perHectare, 6);
    expect(lineOf(metric, "Fuel")[2]).toBeCloseTo(Number(lineOf(table, "Fuel")[2]) * perHectare * 0.3048 ** 3, 8);
    expect(lineOf(metric, "Whole stems")[4]).toBeCloseTo(
      Number(lineOf(table, "Whole stems")[4]) * perHectare * 0.3048 ** 3,
      8,
    );
    expect(lineOf(metric, "Whole stems")[6]).toBeCloseTo(Number(lineOf(table, "Whole stems")[6]) * perHectare, 6);
  });
});

function diameterAtBreastHeight(species: string, dbh: number, height: number): number {
  return Number(stemDiameter([[species]], [[dbh]], [[height]], [[4.5]])[0]?.[0]);
}

it("PRODUCTTABLE passes over rows without a tree, also at the end of a list and in a whole column", () => {
  const last = ask({ dbh: column(18, 9, "") });
  expect(lineOf(last, "Whole stems")[4]).toBeGreaterThan(0);
  const long = (cells: unknown[][]) => [...cells, ...column(...new Array<null>(500).fill(null))];
  const { plot, species, dbh, height, logs, plots } = given;
  const whole = productTable(long(plot), long(species), long(dbh), long(height), long(logs), PRODUCTS, plots, "Fixed", [
    [1],
  ]);
  expect(whole).toEqual(ask());
});
