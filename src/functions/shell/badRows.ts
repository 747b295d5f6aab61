import { InvalidInput, Problem } from "../../core/basis/problem";

/** Gathers what is wrong with the rows of a table, so that one sentence names the first and counts the others. */
export class BadRows {
  private readonly rows = new Set<number>();
  private firstRow = Infinity;
  private sentence = "";

  /** @param lead what the sentence calls a row */
  constructor(private readonly lead = "Row") {}

  get found(): boolean {
    return this.rows.size > 0;
  }

  /** Keeps the first problem of each row. @param row counted from 0; the sentence counts from 1 */
  add(row: number, sentence: string): void {
    if (row < this.firstRow) {
      this.firstRow = row;
      this.sentence = `${this.lead} ${row + 1}: ${sentence}`;
    }
    this.rows.add(row);
  }

  /** Does the work on one row; a problem is kept, a bug of ours passes through. */
  guard(row: number, work: () => void): void {
    try {
      work();
    } catch (problem) {
      this.keep(row, problem);
    }
  }

  /** What guard does with what was thrown, for a long loop that would not make a function for each row. */
  keep(row: number, problem: unknown): void {
    if (!(problem instanceof Problem)) throw problem;
    this.add(row, problem.message);
  }

  /** @throws InvalidInput when a row was bad */
  settle(): void {
    if (!this.found) return;
    const others = this.rows.size - 1;
    const rest =
      others === 0 ? "" : others === 1 ? " And 1 more row has a problem." : ` And ${others} more rows have problems.`;
    throw new InvalidInput(this.sentence + rest);
  }
}
