import { apiCode, asHostProblem, missingTable } from "./hostProblems";

/** Work that is queued on Excel's objects and sent by `context.sync()`. */
export type Work<T> = (context: Excel.RequestContext) => Promise<T>;

/** Runs work in Excel; whatever Excel refuses comes back as a sentence. */
export async function excelRun<T>(work: Work<T>): Promise<T> {
  try {
    return await Excel.run(work);
  } catch (problem) {
    throw asHostProblem(problem);
  }
}

/** Runs work on one table. It is not looked for first, which would cost a round trip: Excel says when it is not there. */
export async function withTable<T>(
  name: string,
  work: (table: Excel.Table, context: Excel.RequestContext) => Promise<T>,
): Promise<T> {
  return excelRun(async (context) => {
    try {
      return await work(context.workbook.tables.getItem(name), context);
    } catch (problem) {
      throw apiCode(problem) === "ItemNotFound" ? missingTable(name) : problem;
    }
  });
}
