/** Runs inside the embedded page: the same rule in many cells, by our function and by a native formula, in turn. */
async function fill(name: string, rows: number, formula: (row: number) => string): Promise<void> {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add(name);
    sheet.getRange(`A1:B${rows}`).values = Array.from({ length: rows }, (_, i) => [8 + (i % 30), 16]);
    await context.sync();
    sheet.getRange(`C1:C${rows}`).formulas = Array.from({ length: rows }, (_, i) => [formula(i + 1)]);
    await context.sync();
  });
}

async function recalculation(name: string, rows: number, shift: number): Promise<number> {
  const started = performance.now();
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(name);
    sheet.getRange(`A1:A${rows}`).values = Array.from({ length: rows }, (_, i) => [8 + ((i + shift) % 30)]);
    await context.sync();
  });
  await woodlotPage.settled();
  return performance.now() - started;
}

const middle = (times: number[]): number => times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;

export interface CellTimes {
  readonly ours: number;
  readonly theirs: number;
}

async function cellTimes(rows: number, runs: number): Promise<CellTimes> {
  await fill("Native", rows, (row) => `=((A${row}-4)^2*B${row})/16`);
  await fill("Ours", rows, (row) => `=WOODLOT.LOGSCALE(A${row},B${row},"Doyle",0,"None")`);
  const native: number[] = [];
  const own: number[] = [];
  for (let run = 1; run <= runs; run += 1) {
    native.push(await recalculation("Native", rows, run));
    own.push(await recalculation("Ours", rows, run));
  }
  return { ours: middle(own), theirs: middle(native) };
}

Object.assign(globalThis, { cellTimes });
