import type { Pane } from "../pane";

/** Puts a height behind what stands in the tally box, and goes back there; the line is not saved by it. */
export function putInTally(pane: Pane, mark: string): void {
  const { text } = pane.state.tally;
  pane.desk.type(`${text.trimEnd()} ${mark}`.trimStart());
  pane.go("tally");
}
