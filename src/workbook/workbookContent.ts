import type { TableRow } from "./plan";
import type { Settings } from "./settings";

/** What fills the sheets; the sheets themselves are the same for everyone. */
export interface WorkbookContent {
  readonly settings: Settings;
  readonly species: readonly TableRow[];
  readonly plots: readonly TableRow[];
  readonly trees: readonly TableRow[];
  readonly logs: readonly TableRow[];
  /** Sizes of boards that are wanted. */
  readonly boards: readonly TableRow[];
  /** Boards that were sawn. */
  readonly sawn: readonly TableRow[];
  readonly mill: readonly TableRow[];
  /** What trees are cut into. */
  readonly products: readonly TableRow[];
  readonly prices: readonly TableRow[];
  readonly costs: readonly TableRow[];
  /** True while the figures are made up: every sheet then says so in its title. */
  readonly invented: boolean;
}
