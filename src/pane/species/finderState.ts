/** Which of some suggestions is chosen by the keys, and whether their list was closed; both go with one text. */
export interface FinderState {
  readonly text: string;
  /** -1 while none is chosen. */
  readonly active: number;
  readonly closed: boolean;
}

export const noFinder: FinderState = { text: "", active: -1, closed: false };

/** As it is for a text: what was chosen or closed for another one no longer holds. */
export const finderFor = (state: FinderState, text: string): FinderState =>
  state.text === text ? state : { text, active: -1, closed: false };
