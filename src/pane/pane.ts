import type { WorkbookHost } from "../workbook/host";
import type { SawnBoard } from "./boards/boardLine";
import type { EntryDesk } from "./entry/entryDesk";
import type { NumberedLog } from "./logs/logLine";
import type { SolverDesk } from "./solver/solverDesk";
import type { PaneState } from "./paneState";
import type { TallyDesk } from "./tally/tallyDesk";
import type { ViewName } from "./views/viewNames";

/** What every view is given: what to show, and what it may ask for. */
export interface Pane {
  readonly host: WorkbookHost;
  /** Where trees are tallied. */
  readonly desk: TallyDesk;
  readonly logDesk: EntryDesk<NumberedLog>;
  /** Does long work in a worker. */
  readonly solver: SolverDesk;
  readonly boardDesk: EntryDesk<SawnBoard>;
  /** As it is now, not as it was when the view was drawn. */
  readonly state: PaneState;
  readonly set: (change: Partial<PaneState>) => void;
  readonly go: (view: ViewName) => void;
  /** Does some work with the workbook: shows the verb when it takes long, and the reason when it fails. True when done. */
  readonly run: (doing: string, work: () => Promise<void>) => Promise<boolean>;
  /** Reads the workbook again. */
  readonly refresh: () => Promise<void>;
  /** Moves the focus to an element by its id, once it is drawn. */
  readonly focus: (id: string) => void;
  /** Tells what was done, to a screen reader too. */
  readonly say: (sentence: string) => void;
}
