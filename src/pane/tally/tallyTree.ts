/** One line of a tally: the trees it stands for, as they go into a row of the Trees table. */
export interface TallyTree {
  /** Species code as it stands in the species list, or as typed when the list does not have it. */
  readonly species: string;
  /** Diameter at breast height. [in] */
  readonly dbh: number;
  /** 16-ft logs; null when they were not measured. */
  readonly logs: number | null;
  /** Total height; null when it was not measured. [ft] */
  readonly height: number | null;
  readonly count: number;
  /** Cull, in percent of the volume; null when none was given. */
  readonly cull: number | null;
  /** Level distance from the middle of the point; null where it was not taped. [ft] */
  readonly distance?: number | null;
  readonly note: string;
}

/** A species as the tally box knows it. */
export interface KnownSpecies {
  readonly code: string;
  readonly name: string;
  /** Number in the national forest inventory, where the owner gave it. */
  readonly fia?: number;
  readonly scientific?: string;
  /** Row of its table, counted from 0, and what its Check column says. */
  readonly row?: number;
  readonly check?: string;
  /** Diameter inside bark over diameter outside bark, as the sheet has it. */
  readonly barkRatio?: number;
}

/** A tree and the point that it stands on. */
export interface PlacedTree {
  readonly plot: string;
  readonly tree: TallyTree;
}
