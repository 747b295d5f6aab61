import { ApiError } from "./apiError";
import type { Engine } from "./engine";
import type { FindSheet } from "./places";

export type Operation = () => void | Promise<void>;

/**
 * The queue between the add-in and the grid. Nothing happens before `sync`; then the operations run in their order, and
 * the first that fails stops the rest: https://learn.microsoft.com/office/dev/add-ins/develop/application-specific-api-model
 */
export class Batch {
  private operations: Operation[] = [];
  private closed = false;
  private readonly tracked = new WeakSet<object>();
  private readonly guards = new WeakMap<object, () => boolean>();

  constructor(
    readonly engine: Engine,
    private readonly onSync: () => void,
    /** The way to a sheet, which every range and table has, though sheets are made of ranges and tables. */
    readonly worksheet: (batch: Batch, find: FindSheet) => Excel.Worksheet = noSheets,
  ) {}

  /** Objects made by a batch serve until it ends, unless they are tracked. What is asked of a null object is not done. */
  enqueue(owner: object, operation: Operation): void {
    if (this.closed && !this.tracked.has(owner)) {
      throw new ApiError(
        "InvalidObjectPath",
        "This object was made by an Excel.run that has ended, and was not tracked.",
      );
    }
    const exists = this.guards.get(owner);
    this.operations.push(exists ? () => (exists() ? operation() : undefined) : operation);
  }

  /** Tells that an object may turn out to stand for nothing. */
  guard(owner: object, exists: () => boolean): void {
    this.guards.set(owner, exists);
  }

  track(object: object): void {
    this.tracked.add(object);
  }

  untrack(object: object): void {
    this.tracked.delete(object);
  }

  async sync(): Promise<void> {
    const operations = this.operations;
    this.operations = [];
    this.onSync();
    for (const operation of operations) await operation();
  }

  open(): void {
    this.closed = false;
  }

  close(): void {
    this.closed = true;
  }
}

const noSheets = (): never => {
  throw new ApiError("GeneralException", "This batch has no sheets.");
};
