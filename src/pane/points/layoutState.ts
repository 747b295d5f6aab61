import type { CornerUnit, OutlineReading } from "./outlineReading";

/** What is typed on the view Lay out points, as typed; "" follows the workbook, or what is usual. */
export interface LayoutState {
  /** Outline as it was pasted or read from a file. */
  readonly text: string;
  readonly unit: CornerUnit;
  /** The outline in the text; undefined while there is none, or it cannot be read. */
  readonly reading: OutlineReading | undefined;
  /** Why the text cannot be read; "" when it can. */
  readonly unreadable: string;
  readonly spacing: string;
  readonly seed: string;
  readonly bearing: string;
  readonly from: string;
  readonly declination: string;
  readonly pace: string;
  /** Latitude and longitude of 0, 0, where the outline was measured from a corner. */
  readonly place: string;
  /** A seed that was drawn when the pane was opened, before any map was seen. */
  readonly drawn: number;
  /** True once the grid was changed, so that the map shows what is proposed and not what stands on the sheet. */
  readonly changed: boolean;
  /** What came of the last points that were written; "" before. */
  readonly result: string;
}

export const firstLayout: LayoutState = {
  text: "",
  unit: "looks",
  reading: undefined,
  unreadable: "",
  spacing: "",
  seed: "",
  bearing: "",
  from: "",
  declination: "",
  pace: "",
  place: "",
  drawn: 1,
  changed: false,
  result: "",
};
