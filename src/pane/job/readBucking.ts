import type { WorkbookHost } from "../../workbook/host";
import type { TableRow } from "../../workbook/plan";
import { flaw, named, out, STEM_FLAWS } from "../../workbook/tables";
import { stepsOf, unitsOf, type BuckStep, type BuckUnits } from "../bucking/buckSteps";
import type { StemFlaw } from "../bucking/flawLine";
import { number, positive, text } from "./cells";
import { readAnswer, type Spill } from "./spill";

/** One way of cutting, as the sheet sets it beside the best. */
export interface BuckWay {
  readonly way: string;
  readonly logs: number;
  readonly value: number;
  /** Below the best. [%] */
  readonly below: number;
}

/** What the sheet Bucking asks and says. */
export interface BuckingAnswers {
  readonly species: string;
  readonly dbh: number | null;
  readonly height: number | null;
  readonly logs: number | null;
  readonly stump: number;
  readonly flaws: readonly StemFlaw[];
  readonly units: BuckUnits;
  readonly steps: readonly BuckStep[];
  /** Why there are no steps; "" when there are. */
  readonly lacking: string;
  /** The best plan first. */
  readonly ways: readonly BuckWay[];
}

const words = {
  "#N/A":
    "The sheet Bucking shows #N/A: no product of the list fits this stem, none has a price, or the tables do not reach this tree. Select the cell there and open its flag to read which.",
  "#VALUE!":
    "The sheet Bucking shows #VALUE!: the tree, its flaws or a product cannot be used as they stand. Select the cell there and open its flag to read why.",
};

/** Reads the sheet Bucking; "none" when the workbook has no such sheet. */
export async function readBucking(host: WorkbookHost): Promise<BuckingAnswers | "none"> {
  if (!(await host.hasTable(STEM_FLAWS))) return "none";
  const [settings, flaws, plan, ways] = await Promise.all([
    host.readNames([named.stemSpecies, named.stemDbh, named.stemHeight, named.stemLogs, named.stemStump]),
    host.readTable(STEM_FLAWS),
    readAnswer(host, out.buckPlan, words),
    readAnswer(host, out.buckHabits, words),
  ]);
  const rows = rowsOf(plan);
  const steps = stepsOf(rows);
  return {
    species: text(settings[named.stemSpecies]),
    dbh: positive(settings[named.stemDbh]),
    height: positive(settings[named.stemHeight]),
    logs: positive(settings[named.stemLogs]),
    stump: positive(settings[named.stemStump]) ?? 1,
    flaws: flaws.rows.flatMap(flawOf),
    units: unitsOf(plan.kind === "rows" ? (plan.rows[0] ?? []) : []),
    steps,
    lacking: steps.length > 0 ? "" : plan.kind === "none" ? plan.because : text(rows[0]?.[0]),
    ways: rowsOf(ways).flatMap((row) => {
      const [, logs, value, , below] = row.map(number);
      return logs == null || value == null || below == null ? [] : [{ way: text(row[0]), logs, value, below }];
    }),
  };
}

const rowsOf = (spill: Spill) => (spill.kind === "rows" ? spill.rows.slice(1) : []);

function flawOf(row: TableRow): readonly StemFlaw[] {
  const [from, to] = [positive(row[flaw.from]), positive(row[flaw.to])];
  if (from === null && to === null) return [];
  return [{ what: text(row[flaw.what]).toLowerCase(), from: from ?? 0, to }];
}
