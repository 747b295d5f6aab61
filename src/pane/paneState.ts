import type { Comparison } from "./job/readComparison";
import type { Job } from "./job/job";
import type { StandAnswers } from "./job/readStand";
import { emptyPaste, type PasteState } from "./paste/pasteState";
import { usualPlan, type PlanForm } from "./plan/planForm";
import { firstShare, type ShareState } from "./share/shareState";
import type { PendingTree } from "./tally/draft";
import type { TallyTree } from "./tally/tallyTree";
import type { ViewName } from "./views/viewNames";

export interface TallyState {
  /** The point that is being tallied; "" until one is chosen. */
  readonly plot: string;
  readonly text: string;
  /** The line of the Trees table that the box changes; undefined while it adds. */
  readonly editing: number | undefined;
  readonly pending: readonly PendingTree[];
  /** Lines that are being taken out of the workbook. */
  readonly removing: readonly {
    readonly id: number;
    readonly plot: string;
    readonly tree: TallyTree;
    readonly written?: boolean;
  }[];
  /** The write that failed, and why; everything behind it waits. */
  readonly held: { readonly id: number; readonly why: string } | undefined;
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
  readonly comparison: Comparison | undefined;
  /** Why the last thing asked for did not happen; "" when it did. */
  readonly problem: string;
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
  readonly tally: TallyState;
  readonly check: CheckState;
  readonly paste: PasteState;
  readonly share: ShareState;
}

export const firstState: PaneState = {
  view: "home",
  menuOpen: false,
  job: undefined,
  stand: undefined,
  comparison: undefined,
  problem: "",
  unread: "",
  seen: [],
  question: undefined,
  busy: "",
  said: "",
  firstWords: "unseen",
  plan: usualPlan,
  tally: { plot: "", text: "", editing: undefined, pending: [], removing: [], held: undefined },
  check: { showAccepted: false, explaining: "", reason: "" },
  paste: emptyPaste,
  share: firstShare,
};
