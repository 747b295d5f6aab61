/** No slot, or no way below. */
export const NONE = -1;

/**
 * Ways by number, in columns of plain numbers: most ways are beaten soon after they were found, and no object is made
 * for those. The columns grow as needed and serve one filling after another.
 */
export class WayColumns {
  count = 0;
  worth = new Float64Array(1024);
  lower = new Float64Array(1024);
  pieces = new Int32Array(1024);
  /** Numbers of the topmost slot and of the way below it. */
  slot = new Int32Array(1024);
  below = new Int32Array(1024);
  /** Among which ways it ends up, and at which place there. */
  part = new Int32Array(1024);
  place = new Int32Array(1024);

  /** @returns its number */
  add(worth: number, pieces: number, slot: number, lower: number, below: number): number {
    if (this.count === this.worth.length) this.grow();
    const at = this.count;
    this.worth[at] = worth;
    this.pieces[at] = pieces;
    this.slot[at] = slot;
    this.lower[at] = lower;
    this.below[at] = below;
    this.count += 1;
    return at;
  }

  private grow(): void {
    this.worth = longer(this.worth);
    this.lower = longer(this.lower);
    this.pieces = longer(this.pieces);
    this.slot = longer(this.slot);
    this.below = longer(this.below);
    this.part = longer(this.part);
    this.place = longer(this.place);
  }
}

/** The same numbers with room for as many again. */
export function longer<Column extends Float64Array | Int32Array>(column: Column): Column {
  const made = new (column.constructor as new (length: number) => Column)(2 * column.length);
  made.set(column);
  return made;
}
