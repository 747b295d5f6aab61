import { type Changed, reportChanges } from "./changes";
import { contexts } from "./clientObject";
import type { Engine } from "./engine";
import type { Batch } from "./requestContext";
import { strict } from "./strict";

type Handler = (event: Excel.WorksheetChangedEventArgs) => Promise<unknown>;
type Handlers = OfficeExtension.EventHandlers<Excel.WorksheetChangedEventArgs>;

/** https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-events: a handler is added, and removed, by the next sync. */
export class ChangeEvents {
  private readonly listening = new Set<Handler>();

  constructor(engine: Engine) {
    reportChanges(engine, (changes) => this.tell(changes));
  }

  handlers(batch: Batch, owner: object): Handlers {
    return strict<Handlers>("Excel.WorksheetCollection.onChanged", {
      add: (handler) => {
        batch.enqueue(owner, () => void this.listening.add(handler));
        const result = strict<OfficeExtension.EventHandlerResult<Excel.WorksheetChangedEventArgs>>(
          "OfficeExtension.EventHandlerResult",
          {
            context: contexts.get(batch) as Excel.RequestContext,
            remove: () => batch.enqueue(result, () => void this.listening.delete(handler)),
          },
        );
        batch.track(result);
        return result;
      },
    });
  }

  private tell(changes: readonly Changed[]): void {
    for (const handler of [...this.listening]) {
      for (const { sheetId, address } of changes) void handler(changedEvent(sheetId, address));
    }
  }
}

const changedEvent = (worksheetId: string, address: string): Excel.WorksheetChangedEventArgs =>
  strict<Excel.WorksheetChangedEventArgs>("Excel.WorksheetChangedEventArgs", {
    type: "WorksheetChanged",
    changeType: "RangeEdited",
    source: "Local",
    worksheetId,
    address,
  });
