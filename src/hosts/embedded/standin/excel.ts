import { notImplemented } from "./apiError";
import { ChangeEvents } from "./changeEvents";
import { clientObject, contexts } from "./clientObject";
import type { Engine } from "./engine";
import { namesOf } from "./names";
import { rangeOf } from "./range";
import { Batch } from "./requestContext";
import { stylesOf } from "./styles";
import { strict } from "./strict";
import { tablesOf } from "./tables";
import { worksheetOf } from "./worksheet";
import { worksheetsOf } from "./worksheets";
import { fromEngine } from "../engine/place";

/** What a test asks of the stand-in that no add-in can. */
export interface StandIn {
  readonly excel: typeof Excel;
  /** How often the add-in went to the workbook and back: each time costs a round trip in Excel. */
  readonly syncs: () => number;
}

type RunBatch = (context: Excel.RequestContext) => Promise<unknown>;

/**
 * The used part of the global Excel, on top of the grid: https://learn.microsoft.com/javascript/api/excel
 * @param openCopy receives the file that an add-in opens as a new workbook, in base64
 */
export function standInForExcel(engine: Engine, openCopy: (base64: string) => void): StandIn {
  let syncs = 0;
  const events = new ChangeEvents(engine);
  const start = () => contextOf(new Batch(engine, () => (syncs += 1), worksheetOf), events);

  const run = async (first: unknown, second?: RunBatch): Promise<unknown> => {
    const earlier = second ? batchBehind(first) : undefined;
    const batch = earlier ?? start();
    batch.open();
    try {
      const answer = await (second ?? (first as RunBatch))(contexts.get(batch) as Excel.RequestContext);
      await batch.sync();
      return answer;
    } finally {
      batch.close();
    }
  };

  const excel = strict<typeof Excel>("Excel", {
    run,
    createWorkbook: (base64) => {
      if (base64 === undefined) throw notImplemented("Excel.createWorkbook without a file");
      return Promise.resolve(openCopy(base64));
    },
    CalculationType: {
      recalculate: "Recalculate",
      full: "Full",
      fullRebuild: "FullRebuild",
    } as typeof Excel.CalculationType,
  });
  return { excel, syncs: () => syncs };
}

const batches = new WeakMap<object, Batch>();

/** Excel.run goes on with the context of an object that it is given, as for removing an event handler. */
function batchBehind(given: unknown): Batch | undefined {
  const one = (Array.isArray(given) ? given[0] : given) as object;
  return batches.get(one) ?? batches.get((one as { context: object }).context);
}

function contextOf(batch: Batch, events: ChangeEvents): Batch {
  const context = strict<Excel.RequestContext>("Excel.RequestContext", {
    workbook: workbookOf(batch, events),
    sync: (async (passed?: unknown) => {
      await batch.sync();
      return passed;
    }) as Excel.RequestContext["sync"],
    trackedObjects: strict<OfficeExtension.TrackedObjects>("OfficeExtension.TrackedObjects", {
      add: (objects) => [objects].flat().forEach((one) => batch.track(one)),
      remove: (objects) => [objects].flat().forEach((one) => batch.untrack(one)),
    }),
  });
  contexts.set(batch, context);
  batches.set(context, batch);
  return batch;
}

function workbookOf(batch: Batch, events: ChangeEvents): Excel.Workbook {
  return clientObject<Excel.Workbook>(batch, {
    kind: "Excel.Workbook",
    members: {
      worksheets: worksheetsOf(batch, events),
      tables: tablesOf(batch),
      names: namesOf(batch),
      styles: stylesOf(batch),
      application: applicationOf(batch),
      getSelectedRange: () => rangeOf(batch, () => selected(batch)),
    },
  });
}

function selected({ engine }: Batch) {
  const range = engine.cells.workbook.getActiveRange();
  const sheetId = engine.cells.workbook.getActiveSheet().getSheetId();
  if (!range) return { sheetId, row: 0, column: 0, rows: 1, columns: 1 };
  return { sheetId, ...fromEngine(range.getRange()) };
}

/** Calculation goes on by itself here, so what suspends it in Excel has nothing to do. */
function applicationOf(batch: Batch): Excel.Application {
  const application: Excel.Application = clientObject<Excel.Application>(batch, {
    kind: "Excel.Application",
    members: {
      calculate: (kind) =>
        batch.enqueue(application, () => {
          if (kind !== "Full") throw notImplemented(`Excel.Application.calculate("${kind}")`);
          batch.engine.calculation.all();
        }),
      suspendApiCalculationUntilNextSync: () => batch.enqueue(application, () => undefined),
      suspendScreenUpdatingUntilNextSync: () => batch.enqueue(application, () => undefined),
    },
  });
  return application;
}
