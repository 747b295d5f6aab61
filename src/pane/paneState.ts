import type { SawnBoard } from "./boards/boardLine";
import { firstBuck, type BuckState } from "./bucking/buckState";
import { noEntries, type EntryState } from "./entry/entryState";
import type { CutAnswers } from "./job/readCut";
import type { Comparison } from "./job/readComparison";
import type { Job } from "./job/job";
import type { LocalVolumeAnswers } from "./job/readLocalVolume";
import type { BuckingAnswers } from "./job/readBucking";
import type { ProductAnswers } from "./job/readProducts";
import type { SawingAnswers } from "./job/readSawing";
import type { StandAnswers } from "./job/readStand";
import type { Mapped } from "./job/readMapped";
import type { NumberedLog } from "./logs/logLine";
import { firstLocal, type LocalState } from "./local/felledForm";
import { firstMeasure, type MeasureForm } from "./measure/measureState";
import { emptyPaste, type PasteState } from "./paste/pasteState";
import { firstLayout, type LayoutState } from "./points/layoutState";
import { usualPlan, type PlanForm } from "./plan/planForm";
import { firstCsv, type CsvState } from "./share/csvState";
import { firstEqualBoards, type EqualBoardsForm } from "./sawing/equalBoards";
import { firstTrial, type TrialForm } from "./sawing/trial";
import type { SolverOrders } from "./solver/readOrders";
import type { SolvedJobs, Solving } from "./solver/solving";
import { firstShare, type ShareState } from "./share/shareState";
import { noFinder, type FinderState } from "./species/finderState";
import { firstRules, type RulesState } from "./rules/rulesState";
import type { PlacedTree } from "./tally/tallyTree";
import type { ViewName } from "./views/viewNames";

export interface TallyState extends EntryState<PlacedTree> {
  /** The point that is being tallied; "" until one is chosen. */
  readonly plot: string;
}

export interface BoardsState extends EntryState<SawnBoard> {
  /** The log that boards are being sawn from; "" when that is not told. */
  readonly log: string;
}

export interface CheckState {
  readonly showAccepted: boolean;
  /** The finding whose reason is being asked for. */
  readonly explaining: string;
  readonly reason: string;
}

export interface Question {
  readonly text: string;
  readonly yes: string;
  readonly no: string;
  readonly onYes: () => void;
}

export interface PaneState {
  readonly view: ViewName;
  readonly menuOpen: boolean;
  /** undefined until the workbook was read; "none" when it holds no cruise. */
  readonly job: Job | "none" | undefined;
  readonly stand: StandAnswers | undefined;
  readonly products: ProductAnswers | undefined;
  readonly comparison: Comparison | undefined;
  readonly cut: CutAnswers | undefined;
  /** The sheet Sawing; "none" when the workbook has no such sheet. */
  readonly sawing: SawingAnswers | "none" | undefined;
  /** The cut that is shown, counted from 0. */
  readonly sawStep: number;
  /** A product that is to be tried beside the boards of the sheet Mill. */
  readonly trial: TrialForm;
  /** Like boards whose settings are asked for. */
  readonly equalBoards: EqualBoardsForm;
  /** The sheet Bucking; "none" when the workbook has no such sheet. */
  readonly bucking: BuckingAnswers | "none" | undefined;
  readonly buck: BuckState;
  /** The sheet Local volume; "none" when the workbook has no such sheet. */
  readonly localVolume: LocalVolumeAnswers | "none" | undefined;
  readonly local: LocalState;
  /** Why the last thing asked for did not happen; "" when it did. */
  readonly problem: string;
  /** The jobs that the workbook has for the planner; undefined until it was read. */
  readonly orders: SolverOrders | undefined;
  /** What is being worked out beside the pane, and what was. */
  readonly solving: Solving | undefined;
  readonly solved: SolvedJobs;
  /** Why the workbook could not be read; "" once it could. */
  readonly unread: string;
  /** Views that were left at least once: their cautions are then one line each. */
  readonly seen: readonly ViewName[];
  /** A question that must be answered before something is replaced. */
  readonly question: Question | undefined;
  /** What is being done, shown once it takes long; "" when nothing is. */
  readonly busy: string;
  /** The last thing told to a screen reader. */
  readonly said: string;
  /** The first words are shown while there is no cruise, until they were seen; and when one asks for them. */
  readonly firstWords: "unseen" | "seen" | "asked";
  readonly plan: PlanForm;
  /** The outline and the places of the plots; undefined until they were read. */
  readonly mapped: Mapped | undefined;
  readonly layout: LayoutState;
  readonly measure: MeasureForm;
  /** Suggestions of species under a box. */
  readonly finder: FinderState;
  /** What is typed into the box that finds species, and the code whose species is being settled; "" for none. */
  readonly sought: string;
  readonly settling: string;
  readonly tally: TallyState;
  readonly logs: EntryState<NumberedLog>;
  readonly boards: BoardsState;
  readonly rules: RulesState;
  readonly check: CheckState;
  readonly paste: PasteState;
  readonly share: ShareState;
  readonly csv: CsvState;
}

export const firstState: PaneState = {
  view: "home",
  menuOpen: false,
  job: undefined,
  stand: undefined,
  products: undefined,
  comparison: undefined,
  cut: undefined,
  sawing: undefined,
  sawStep: 0,
  trial: firstTrial,
  equalBoards: firstEqualBoards,
  bucking: undefined,
  buck: firstBuck,
  localVolume: undefined,
  local: firstLocal,
  problem: "",
  orders: undefined,
  solving: undefined,
  solved: {},
  unread: "",
  seen: [],
  question: undefined,
  busy: "",
  said: "",
  firstWords: "unseen",
  plan: usualPlan,
  mapped: undefined,
  layout: firstLayout,
  measure: firstMeasure,
  finder: noFinder,
  sought: "",
  settling: "",
  tally: { ...noEntries, plot: "" },
  logs: noEntries,
  boards: { ...noEntries, log: "" },
  rules: firstRules,
  check: { showAccepted: false, explaining: "", reason: "" },
  paste: emptyPaste,
  share: firstShare,
  csv: firstCsv,
};
