/** Something to be written to the workbook, told by a label that a person can read. */
export interface Write {
  readonly id: number;
  readonly run: () => Promise<void>;
}

export interface WriteQueue {
  /** Writes when everything before it was written. */
  readonly add: (write: Write) => void;
  /** Holds everything back until retry(). */
  readonly hold: () => void;
  /** Tries again from the write that failed, in the same order. */
  readonly retry: () => void;
  /** Takes back a write that has not been made; false when it is being made or was made. */
  readonly drop: (id: number) => boolean;
  readonly waiting: readonly Write[];
}

export interface QueueEvents {
  readonly onWritten: (write: Write) => void;
  /** The write failed; it and all behind it stay in the queue until retry() or drop(). */
  readonly onFailed: (write: Write, problem: unknown) => void;
  /** Everything was written. */
  readonly onDrained: () => void;
}

/** One write at a time, in the order in which they came; a failure holds the rest back rather than lose or reorder it. */
export function createWriteQueue({ onWritten, onFailed, onDrained }: QueueEvents): WriteQueue {
  const waiting: Write[] = [];
  let writing = false;
  let held = false;

  const work = async () => {
    if (writing || held) return;
    writing = true;
    while (waiting[0] && !held) {
      const next = waiting[0];
      try {
        await next.run();
        waiting.shift();
        onWritten(next);
      } catch (problem) {
        held = true;
        onFailed(next, problem);
      }
    }
    writing = false;
    if (waiting.length === 0) onDrained();
  };

  return {
    waiting,
    add(write) {
      waiting.push(write);
      void work();
    },
    hold() {
      held = true;
    },
    retry() {
      held = false;
      void work();
    },
    drop(id) {
      const place = waiting.findIndex((write) => write.id === id);
      if (place < 0 || (place === 0 && writing && !held)) return false;
      waiting.splice(place, 1);
      if (place === 0 && held) {
        held = false;
        void work();
      }
      return true;
    },
  };
}
