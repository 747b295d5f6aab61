import { excelRun } from "./excelRun";

const SETTLES_IN = 150; // ms, so that a paste of many cells is told once

/** Tells of changed cells, whoever changed them. */
export async function watchWorkbook(onChange: () => void): Promise<() => void> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const handler = await excelRun(async (context) => {
    const added = context.workbook.worksheets.onChanged.add(() => {
      clearTimeout(timer);
      timer = setTimeout(onChange, SETTLES_IN);
      return Promise.resolve();
    });
    await context.sync();
    return added;
  });
  return () => {
    clearTimeout(timer);
    // The handler goes with the pane in any case, so a workbook that is busy just now is no trouble.
    Excel.run(handler.context, async (context) => {
      handler.remove();
      await context.sync();
    }).catch(() => undefined);
  };
}
