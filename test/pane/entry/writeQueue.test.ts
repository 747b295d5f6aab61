import { describe, expect, it } from "vitest";
import { createWriteQueue, type Write } from "../../../src/pane/entry/writeQueue";

/** A queue whose writes take unlike times, and a record of what happened. */
function recorded(failing: Set<number> = new Set()) {
  const record: string[] = [];
  let drained = () => {};
  const queue = createWriteQueue({
    onWritten: ({ id }) => record.push(`written ${id}`),
    onFailed: ({ id }) => {
      record.push(`failed ${id}`);
      drained();
    },
    onDrained: () => {
      record.push("drained");
      drained();
    },
  });
  const write = (id: number): Write => ({
    id,
    run: async () => {
      record.push(`begun ${id}`);
      await new Promise((resolve) => setTimeout(resolve, id % 2 === 0 ? 0 : 5));
      if (failing.has(id)) throw new Error("refused");
    },
  });
  const quiet = () => new Promise<void>((resolve) => (drained = resolve));
  return { queue, record, write, quiet, failing };
}

describe("the queue of writes", () => {
  it("makes one write at a time, in the order in which they came", async () => {
    const { queue, record, write, quiet } = recorded();
    [1, 2, 3, 4].forEach((id) => queue.add(write(id)));
    await quiet();
    expect(record).toEqual([1, 2, 3, 4].flatMap((id) => [`begun ${id}`, `written ${id}`]).concat("drained"));
  });

  it("holds everything back behind a failure, and goes on in order once it is tried again", async () => {
    const { queue, record, write, quiet, failing } = recorded(new Set([2]));
    [1, 2, 3].forEach((id) => queue.add(write(id)));
    await quiet();
    queue.add(write(4));
    await new Promise((resolve) => setTimeout(resolve, 10));
    expect(record.filter((entry) => entry.startsWith("begun"))).toEqual(["begun 1", "begun 2"]);
    expect(queue.waiting.map(({ id }) => id)).toEqual([2, 3, 4]);

    failing.clear();
    queue.retry();
    await quiet();
    expect(record.filter((entry) => entry.startsWith("written"))).toEqual([1, 2, 3, 4].map((id) => `written ${id}`));
  });

  it("gives back a write that waits, but not one that is being made", async () => {
    const { queue, record, write, quiet } = recorded();
    [1, 2, 3].forEach((id) => queue.add(write(id)));
    expect(queue.drop(1)).toBe(false);
    expect(queue.drop(2)).toBe(true);
    await quiet();
    expect(record).not.toContain("begun 2");
    expect(record).toContain("written 3");
  });

  it("goes on with the others when the failed write is dropped", async () => {
    const { queue, record, write, quiet } = recorded(new Set([1]));
    [1, 2].forEach((id) => queue.add(write(id)));
    await quiet();
    const done = quiet();
    expect(queue.drop(1)).toBe(true);
    await done;
    expect(record.at(-2)).toBe("written 2");
  });

  it("writes nothing while it is held", async () => {
    const { queue, record, write, quiet } = recorded();
    queue.hold();
    queue.add(write(2));
    await new Promise((resolve) => setTimeout(resolve, 10));
    expect(record).toEqual([]);
    const done = quiet();
    queue.retry();
    await done;
    expect(record).toEqual(["begun 2", "written 2", "drained"]);
  });
});
