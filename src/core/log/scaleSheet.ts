import { boardFeet, percent, type BoardFeet, type Percent } from "../basis/units";
import type { Rounder } from "./diameterRounding";
import { grossScale, NO_LIMIT } from "./grossScale";
import type { FelledLog, LogRule } from "./logRule";
import { netScale } from "./netScale";
import { asTheRuleDoes } from "./scaleRounding";

/** One line of a scale sheet. */
export interface SheetLog extends FelledLog {
  /** Number of its species, counted from 0. */
  readonly species: number;
  /** For defect. [%] */
  readonly deduction: Percent;
}

/** What a scale sheet says of one species, or of all of them. */
export interface SheetLine {
  readonly logs: number;
  readonly gross: BoardFeet;
  readonly net: BoardFeet;
  /** Of the gross scale; undefined where that is 0. */
  readonly defect: Percent | undefined;
}

/** Adds up a sheet under one rule and the buyer's conventions, log by log. */
export class ScaleSheet {
  private readonly count: number[] = [];
  private readonly gross: number[] = [];
  private readonly net: number[] = [];

  constructor(
    private readonly rule: LogRule,
    private readonly rounding = asTheRuleDoes,
    private readonly longest = NO_LIMIT,
    private readonly toWhole?: Rounder,
  ) {}

  /** @throws InvalidInput and OutOfRange as grossScale and netScale do; the log is then not added */
  add(log: SheetLog): void {
    const gross = grossScale(this.rule, log, this.rounding, this.longest, this.toWhole);
    const net = netScale(this.rule, gross, log.deduction, this.rounding);
    this.count[log.species] = (this.count[log.species] ?? 0) + 1;
    this.gross[log.species] = (this.gross[log.species] ?? 0) + gross;
    this.net[log.species] = (this.net[log.species] ?? 0) + net;
  }

  of(species: number): SheetLine {
    return lineOf(this.count[species] ?? 0, this.gross[species] ?? 0, this.net[species] ?? 0);
  }

  get total(): SheetLine {
    return lineOf(summed(this.count), summed(this.gross), summed(this.net));
  }
}

const summed = (amounts: readonly number[]) => amounts.reduce((sum, one) => sum + one, 0);

const lineOf = (logs: number, gross: number, net: number): SheetLine => ({
  logs,
  gross: boardFeet(gross),
  net: boardFeet(net),
  defect: gross === 0 ? undefined : percent((100 * (gross - net)) / gross),
});
