import { describe, expect, it } from "vitest";
import { millLimits } from "../../../src/core/sawing/millLimits";
import { demoContent, demoWorkbook } from "../../../src/demo/demoWorkbook";
import { sawYield, SawingPatternName, SawingTaper } from "../../../src/functions/sawing";
import { readJob } from "../../../src/pane/job/readJob";
import { allLogsFigures } from "../../../src/pane/solver/allLogsFigures";
import { cutPlanContent } from "../../../src/pane/solver/cutPlanContent";
import type { AllLogsResult, CutListResult } from "../../../src/pane/solver/results";
import { readOrders, type SolverOrders } from "../../../src/pane/solver/readOrders";
import { runJob } from "../../../src/pane/solver/runJob";
import { answerOf, gapOf, moreIn } from "../../../src/pane/solver/sayCutList";
import { cutPlanSheet } from "../../../src/workbook/sheets/cutPlan";
import type { TableRow } from "../../../src/workbook/plan";
import { board, BOARD_SIZES, CUT_LIST, log, LOGS, plot, PLOTS, wanted } from "../../../src/workbook/tables";
import { cruiseCalculation } from "../../support/cruiseCalculation";
import { finished, newProgram } from "../../support/cutLists";
import { memoryHost } from "../../support/memoryHost";

async function demo() {
  const host = memoryHost(cruiseCalculation);
  await host.lay(demoWorkbook());
  const job = await readJob(host);
  if (!job) throw new Error("The demo has no cruise.");
  const orders = (await readOrders(host, job)) as SolverOrders;
  return { host, job, orders };
}

const run = async (order: SolverOrders["cutList" | "allLogs" | "trees"]) => {
  if (typeof order === "string") throw new Error(order);
  return finished(await runJob(order, () => Promise.resolve(newProgram)));
};

describe("the planner's jobs", () => {
  it("are read from the sheets: logs that are not sold, pieces with the spare ones, trees that may be felled", async () => {
    const { orders } = await demo();
    expect(orders.list).toMatchObject({ lines: 8, pieces: 97, spares: 10 });
    expect(orders.list.boardFeet).toBeCloseTo(933.33, 2);
    const { cutList, trees, allLogs } = orders;
    if (typeof cutList === "string" || typeof trees === "string" || typeof allLogs === "string") throw new Error();
    expect(cutList.logs).toHaveLength(demoContent.logs.filter((row) => row[log.use] === "Saw").length);
    expect(cutList.pieces.map(({ count }) => count)).toEqual([1, 4, 13, 22, 7, 22, 26, 11]); // 10 % more, rounded
    expect(allLogs.logs).toHaveLength(10);
    expect(trees.sample.sizes).toEqual(Array(14).fill(10));
    expect(trees.trees.length).toBeLessThan(132);
  });

  it("tell what is had, what is missing, and which further logs would give it", async () => {
    const { orders } = await demo();
    const result = (await run(orders.cutList)) as CutListResult;
    expect(result.missing.map(({ name }) => name)).toContain("Ridge beam");
    expect(result.boardFeet).toBeLessThanOrEqual(result.atMost);
    expect(result.gap).toBeLessThan(5);
    expect(answerOf(result)).toMatch(/^[\d,]+ of 1,\d\d\d bf, from 7 logs\.$/);
    expect(gapOf(result)).toMatch(
      /^No choice of these logs gives more than [\d,]+ bf of it: within [\d.]+ % of the best/,
    );
    expect(moreIn(result).at(-1)).toMatch(
      /^For 1 of Ridge beam: 1 log of 10 in at the small end, 30 ft long\. Your mill cannot take such a log: too long by 14 ft\.$/,
    );
    const content = cutPlanContent({ job: orders.cutList as never, result, stopped: false }, undefined, orders.list);
    const sheet = cutPlanSheet(content);
    const formulas = sheet.blocks
      .flatMap(({ cells }) => cells.flat())
      .filter((cell) => typeof cell === "object" && cell);
    expect(formulas).toHaveLength(1); // the one that says when the inputs have changed
  }, 60_000);

  it("reckon the overrun from the plans and the logs' own scale", async () => {
    const { job, orders } = await demo();
    const result = (await run(orders.allLogs)) as AllLogsResult;
    const figures = allLogsFigures(result, job);
    expect(figures.planned).toBe(10);
    expect(figures.boards + figures.sawdust + figures.slabs).toBeCloseTo(figures.wood, 6);
    for (const { scale, overrun } of figures.rules) expect(scale * (1 + overrun / 100)).toBeCloseTo(figures.boards, 6);
    const doyle = figures.rules.find(({ title }) => title === "Doyle");
    expect(doyle?.scale).toBe(871); // as the sheet Logs has it
  });

  it("take the own sizes of points, and say which point has none", async () => {
    const { host, job } = await demo();
    await host.updateRow(PLOTS, 0, { [plot.size]: 20, [plot.sizeUsed]: 20 });
    const { trees } = (await readOrders(host, job)) as SolverOrders;
    if (typeof trees === "string") throw new Error(trees);
    expect(trees.sample.sizes.slice(0, 2)).toEqual([20, 10]);
    const partOfTract = { ...job, size: 0 };
    const { trees: lacking } = (await readOrders(host, partOfTract)) as SolverOrders;
    expect(lacking).toMatch(/^Point 2 has no size: give its factor or its acres under Own size on Points/);
  });

  it("plan a log as the sheets do: oval by both readings, by length, product, price per piece, widths and taper", async () => {
    const { host, job } = await demo();
    const lines: [string, TableRow][] = [
      [BOARD_SIZES, { [board.sawn]: 1, [board.width]: "4 to 8 by 2", [board.length]: 8, [board.each]: 5 }],
      [BOARD_SIZES, { [board.sawn]: 1.25, [board.width]: 6, [board.product]: "Bevel siding", [board.price]: 900 }],
      [LOGS, { [log.log]: "O", [log.smallEnd]: 14, [log.second]: 17, [log.largeEnd]: 16, [log.length]: 16.5 }],
    ];
    const rowsOf = (table: string) => lines.filter(([name]) => name === table).map(([, row]) => row);
    const read = async (table: string) => {
      const there = await host.readTable(table);
      return rowsOf(table).length > 0 ? { ...there, rows: rowsOf(table) } : there;
    };
    const orders = await readOrders({ ...host, readTable: read }, job);
    const order = orders?.allLogs;
    if (order === undefined || typeof order === "string") throw new Error(String(order));
    const [planned] = ((await run({ ...order, taper: "Full", pattern: "Live" })) as AllLogsResult).logs;
    const boards = [
      [1, "4 to 8 by 2", 8, "", 5, null],
      [1.25, 6, null, "Bevel siding", null, 900],
    ];
    const mill = Object.entries(order.mill).map(([id, value]) => [
      millLimits.find((limit) => limit.id === id)?.title ?? "",
      value,
    ]);
    const [, asTheSheet]: unknown[][] = sawYield(
      [[14, 17]],
      [[16]],
      [[16]],
      boards,
      order.kerf,
      SawingPatternName.live,
      mill,
      0,
      SawingTaper.full,
    );
    expect(planned).toMatchObject({ second: 17, pieces: asTheSheet?.[0], boardFeet: asTheSheet?.[1] });
    expect((planned as { value?: number }).value).toBeCloseTo(asTheSheet?.[2] as number, 6);
  });

  it("give a bent log fewer boards, as the sheets do, and a cut list less of it", async () => {
    const { orders } = await demo();
    if (typeof orders.allLogs === "string" || typeof orders.cutList === "string") throw new Error();
    const bent = orders.allLogs.logs.find(({ name }) => name === "6");
    expect(bent?.sweep).toBe(1.5);
    expect(orders.cutList.logs.find(({ name }) => name === "6")).toEqual(bent);
    const straight = { ...bent, sweep: 0 } as typeof bent & object;
    const result = (await run({ ...orders.allLogs, logs: [bent as typeof straight, straight] })) as AllLogsResult;
    const [less = 0, more = 0] = result.logs.map((one) => ("boardFeet" in one ? one.boardFeet : 0));
    expect(less).toBeGreaterThan(0);
    expect(more).toBeGreaterThan(less);
  });

  it("tell what they leave out: lines of the list and logs that lack a measure, and boards that stop them", async () => {
    const { host, job } = await demo();
    await host.appendRows(CUT_LIST, [{ [wanted.piece]: "Shelf", [wanted.thickness]: 1 }, {}]);
    await host.appendRows(LOGS, [{ [log.log]: 11, [log.smallEnd]: 12, [log.length]: 10 }, {}]);
    const orders = (await readOrders(host, job)) as SolverOrders;
    expect([orders.list.unread, orders.logsLeftOut]).toEqual([1, 1]);
    await host.appendRows(BOARD_SIZES, [{ [board.sawn]: 1 }]);
    expect(((await readOrders(host, job)) as SolverOrders).allLogs).toMatch(
      /^Line 16 of the boards on the sheet Mill has no width that can be read/,
    );
  });

  it("say why a log has no plan", async () => {
    const { orders } = await demo();
    if (typeof orders.allLogs === "string") throw new Error();
    const thick = { name: "T", smallEnd: 30, largeEnd: 32, length: 12 };
    const result = (await run({ ...orders.allLogs, logs: [thick] })) as AllLogsResult;
    expect(result.logs[0]).toMatchObject({ why: "Too thick by 6 in." });
  });
});
