import { HAIR } from "./hair";
import { isAsGood } from "./way";
import { longer, type WayColumns } from "./wayColumns";

/** Ways sorted by the height from which they leave the line free, each worth more than every lower one. */
export class UnbeatenWays {
  count = 0;
  free = new Float64Array(256);
  /** Their numbers. */
  way = new Int32Array(256);

  constructor(private readonly all: WayColumns) {}

  /** Takes a way in, unless a lower one is as good, and drops the higher ones that it is as good as. */
  keep(free: number, worth: number, pieces: number, slot: number, lower: number, below: number): void {
    const { all } = this;
    const at = this.countUpTo(free);
    if (at > 0) {
      const under = this.way[at - 1] as number;
      if (isAsGood(all.worth[under] as number, all.pieces[under] as number, worth, pieces)) return;
    }
    let end = at;
    while (end < this.count) {
      const over = this.way[end] as number;
      if (!isAsGood(worth, pieces, all.worth[over] as number, all.pieces[over] as number)) break;
      end += 1;
    }
    this.replace(at, end, free, all.add(worth, pieces, slot, lower, below));
  }

  private countUpTo(height: number): number {
    const { free } = this;
    let low = 0;
    let high = this.count;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((free[middle] as number) <= height + HAIR) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** One way takes the place of those from one place up to another, or is put between. */
  private replace(from: number, to: number, free: number, way: number): void {
    if (to === from) {
      if (this.count === this.free.length) {
        this.free = longer(this.free);
        this.way = longer(this.way);
      }
      for (let i = this.count; i > from; i -= 1) {
        this.free[i] = this.free[i - 1] as number;
        this.way[i] = this.way[i - 1] as number;
      }
      this.count += 1;
    } else if (to > from + 1) {
      this.free.copyWithin(from + 1, to, this.count);
      this.way.copyWithin(from + 1, to, this.count);
      this.count -= to - from - 1;
    }
    this.free[from] = free;
    this.way[from] = way;
  }
}
