import { splitTaper } from "../../core/sawing/lyingLog";
import type { WorkbookHost } from "../../workbook/host";
import type { TableRow } from "../../workbook/plan";
import { CUT_GOALS } from "../../workbook/sheets/cutListCells";
import { BOARD_SIZES, CUT_LIST, log, LOGS, MILL, named, wanted } from "../../workbook/tables";
import { number, positive, text } from "../job/cells";
import type { Job } from "../job/job";
import type { AllLogsJob, CutListJob, TreesJob } from "./jobs";
import { inputSum } from "./inputSum";
import { logOf } from "./readLogs";
import { millFrom, patternFrom } from "./readMill";
import { pieceOf, saysPiece, volumeOf } from "./readPieces";
import { sizesFrom } from "./readSizes";
import { readTrees } from "./readTrees";

/** The planner's jobs as the workbook stands now; each as the sentence that says what is lacking where it has none. */
export interface SolverOrders {
  readonly cutList: CutListJob | string;
  readonly trees: TreesJob | string;
  readonly allLogs: AllLogsJob | string;
  /** Pieces of the list without the spare ones, and their board feet; spares in percent. */
  readonly list: {
    readonly lines: number;
    readonly pieces: number;
    readonly boardFeet: number;
    readonly spares: number;
    /** Sums of all that a plan hangs on. */
    readonly inputs: { readonly pieces: number; readonly logs: number };
    /** Lines that say something and cannot be read. */
    readonly unread: number;
  };
  /** Logs that lack a measure, or whose ends are swapped. */
  readonly logsLeftOut: number;
}

/** Reads what the planner needs. */
export async function readOrders(host: WorkbookHost, job: Job): Promise<SolverOrders | undefined> {
  const [hasList, hasSizes, hasLogs] = await Promise.all(
    [CUT_LIST, BOARD_SIZES, LOGS].map((name) => host.hasTable(name)),
  );
  if (!hasSizes || !hasLogs) return undefined;
  const [logs, mill, sizes, settings] = await Promise.all([
    host.readTable(LOGS),
    host.readTable(MILL),
    host.readTable(BOARD_SIZES),
    host.readNames([named.kerf, named.pattern, named.taper, named.classWidth]),
  ]);
  const list = hasList ? (await host.readTable(CUT_LIST)).rows : [];
  const [spares, goal] = hasList
    ? await host
        .readNames([named.spares, named.cutGoal])
        .then((of) => [number(of[named.spares]) ?? 0, text(of[named.cutGoal])] as const)
    : ([0, ""] as const);
  const kerf = positive(settings[named.kerf]);
  const limits = millFrom(mill.rows);
  const measured = logs.rows.flatMap((row) => logOf(row, job.scale));
  const boards = sizesFrom(sizes.rows);
  const pieces = list.flatMap((row) => pieceOf(row, spares));
  const common = { pieces, kerf: kerf ?? 0, mill: limits };
  const lacking =
    pieces.length === 0
      ? "The cut list has no pieces yet: type them on the sheet Cut list."
      : kerf === null
        ? "The kerf is missing on Setup."
        : "";
  return {
    list: {
      lines: pieces.length,
      pieces: list.reduce((sum, row) => sum + (number(row[wanted.count]) ?? 0), 0),
      boardFeet: list.reduce((sum, row) => sum + (pieceOf(row, 0)[0] ? volumeOf(row) : 0), 0),
      spares,
      inputs: { pieces: inputSum(CUT_LIST, list), logs: inputSum(LOGS, logs.rows) },
      unread: list.filter((row) => saysPiece(row) && pieceOf(row, 0).length === 0).length,
    },
    logsLeftOut: logs.rows.filter((row) => saysLog(row) && logOf(row, job.scale).length === 0).length,
    cutList:
      lacking ||
      (measured.filter(({ sold }) => !sold).length === 0
        ? "There are no logs to saw yet: the sheet Logs needs small end, large end and length, and a Use that is not Sell."
        : {
            kind: "cutList",
            ...common,
            logs: measured.filter(({ sold }) => !sold).map(({ log: one }) => one),
            goal: goal === CUT_GOALS[1] ? "fewest logs" : "least wood",
          }),
    trees: lacking || (await readTrees(host, job, common, number(settings[named.classWidth]) ?? 2)),
    allLogs:
      measured.length === 0
        ? "There are no logs yet: type them in the view Scale logs, with small end, large end and length."
        : kerf === null
          ? "The kerf is missing on Setup."
          : typeof boards === "string"
            ? boards
            : {
                kind: "allLogs",
                logs: measured.map(({ log: one }) => one),
                sizes: boards,
                pattern: patternFrom(text(settings[named.pattern])),
                taper: text(settings[named.taper]) || splitTaper.title,
                kerf,
                mill: limits,
                inputs: { logs: inputSum(LOGS, logs.rows), boards: inputSum(BOARD_SIZES, sizes.rows) },
              },
  };
}

const saysLog = (row: TableRow) => [log.smallEnd, log.length].some((heading) => text(row[heading]) !== "");
