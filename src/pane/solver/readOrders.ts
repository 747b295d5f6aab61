import { patternFrom, millFrom } from "./readMill";
import { Problem } from "../../core/basis/problem";
import { scalingLength } from "../../core/log/scalingLength";
import { splitTaper } from "../../core/sawing/lyingLog";
import { products } from "../../core/sawing/resawn";
import { widthsNamed } from "../../core/sawing/widthsNamed";
import type { WorkbookHost } from "../../workbook/host";
import { CUT_GOALS } from "../../workbook/sheets/cutListCells";
import { board, BOARD_SIZES, CUT_LIST, log, LOGS, MILL, named, wanted } from "../../workbook/tables";
import type { CellValue, TableRow } from "../../workbook/plan";
import { number, positive, text } from "../job/cells";
import type { Job } from "../job/job";
import type { AllLogsJob, CutListJob, LogToSaw, PieceWanted, SizeWanted, TreesJob } from "./jobs";
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
    readonly logLengths: number;
  };
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
      logLengths: logs.rows.reduce((sum, row) => sum + (number(row[log.scalingLength]) ?? 0), 0),
    },
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
          : {
              kind: "allLogs",
              logs: measured.map(({ log: one }) => one),
              sizes: sizes.rows.flatMap(sizeOf),
              pattern: patternFrom(text(settings[named.pattern])),
              taper: text(settings[named.taper]) || splitTaper.title,
              kerf,
              mill: limits,
            },
  };
}

function logOf(row: TableRow, scale: Job["scale"]): readonly { readonly log: LogToSaw; readonly sold: boolean }[] {
  const smallEnd = positive(row[log.smallEnd]);
  const second = positive(row[log.second]);
  const largeEnd = positive(row[log.largeEnd]);
  const length = positive(row[log.scalingLength]) ?? scaledLength(positive(row[log.length]), scale);
  if (smallEnd === null || largeEnd === null || !length || largeEnd < smallEnd) return [];
  const sold = text(row[log.use]).toLowerCase() === "sell";
  return [{ log: { name: text(row[log.log]), smallEnd, ...(second !== null && { second }), largeEnd, length }, sold }];
}

/** As the sheet has it, where the sheet has not calculated yet; null where a log is too short to be scaled. */
function scaledLength(length: number | null, { trim, lengthStep }: Job["scale"]): number | null {
  if (length === null) return null;
  try {
    return scalingLength(length, trim, lengthStep);
  } catch (problem) {
    if (problem instanceof Problem) return null;
    throw problem;
  }
}

function pieceOf(row: TableRow, spares: number): readonly PieceWanted[] {
  const [thickness, width, length, count] = [wanted.thickness, wanted.width, wanted.length, wanted.count].map(
    (heading) => positive(row[heading]),
  );
  if (thickness == null || width == null || length == null || count == null || !Number.isInteger(count)) return [];
  const name = text(row[wanted.piece]) || `${thickness} x ${width} x ${length}`;
  return [{ name, thickness, width, length, count: Math.round(count * (1 + spares / 100)) }];
}

const volumeOf = (row: TableRow): number =>
  [wanted.thickness, wanted.width, wanted.length, wanted.count].reduce(
    (product, heading) => product * (number(row[heading]) ?? 0),
    1 / 12,
  );

/** A size for each width that a line names; none of a line that cannot be read. */
function sizeOf(row: TableRow): readonly SizeWanted[] {
  const [length, each, price] = [board.length, board.each, board.price].map((heading) => positive(row[heading]));
  // As sawn, where the sheet has not worked the thickness out yet.
  const thickness = positive(row[board.thickness]) ?? positive(row[board.sawn]);
  if (thickness == null) return [];
  const size = {
    thickness,
    product: text(row[board.product]) || (products[0]?.title ?? ""),
    ...(length != null && { length }),
    ...(each != null && { each }),
    ...(price != null && { price }),
  };
  return widthsIn(row[board.width]).map((width) => ({ ...size, width }));
}

function widthsIn(cell: CellValue | undefined): readonly number[] {
  const width = positive(cell);
  if (width !== null) return [width];
  try {
    return widthsNamed(text(cell)) ?? [];
  } catch (problem) {
    if (problem instanceof Problem) return [];
    throw problem;
  }
}
