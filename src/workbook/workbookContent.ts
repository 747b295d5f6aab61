import type { TableRow } from "./plan";
import type { PointLayout } from "./pointLayout";
import type { Settings } from "./settings";

/** What fills the sheets; the sheets themselves are the same for everyone. */
export interface WorkbookContent {
  readonly settings: Settings;
  readonly species: readonly TableRow[];
  readonly plots: readonly TableRow[];
  /** How the plots lie on the tract; left out while they are not laid out. */
  readonly layout?: PointLayout;
  /** Parts of the tract that are cruised each by itself; left out where the tract is one. */
  readonly strata?: readonly TableRow[];
  readonly trees: readonly TableRow[];
  readonly logs: readonly TableRow[];
  /** Sizes of boards that are wanted. */
  readonly boards: readonly TableRow[];
  /** Boards that were sawn. */
  readonly sawn: readonly TableRow[];
  readonly mill: readonly TableRow[];
  /** A stack of like boards on the sheet Sawing; left out while there is none. */
  readonly equalBoards?: EqualBoardsContent;
  /** Pieces of a building that are wanted. */
  readonly cutList: readonly TableRow[];
  /** What trees are cut into. */
  readonly products: readonly TableRow[];
  readonly localVolume: LocalVolumeContent;
  /** The stem on the sheet Bucking. */
  readonly stem: StemContent;
  readonly prices: readonly TableRow[];
  readonly costs: readonly TableRow[];
  /** True while the figures are made up: every sheet then says so in its title. */
  readonly invented: boolean;
}

/** Like boards that are sawn from an opened face down. */
export interface EqualBoardsContent {
  /** Of the blade above the bed when the face was opened. [in] */
  readonly start: number;
  /** [in] */
  readonly thickness: number;
  readonly boards: number;
}

/** A stem to be cut, by its total height or by its logs. */
export interface StemContent {
  readonly species: string | null;
  /** [in] */
  readonly dbh: number | null;
  /** [ft] */
  readonly height: number | null;
  /** Of 16 ft. */
  readonly logs: number | null;
  /** [ft] */
  readonly stump: number;
  readonly trim: number;
  /** Rot, crooks and breaks. */
  readonly flaws: readonly TableRow[];
}

/** A volume table of one's own, and whether the tally uses it. */
export interface LocalVolumeContent {
  readonly form: string;
  readonly use: "Yes" | null;
  /** The owner's code of the species that it is for; null for every species. */
  readonly species: string | null;
  readonly felled: readonly TableRow[];
}
