/** One of the four quarters: to which side of the planes that the log is split along it lies in the end view. */
export interface Quarter {
  readonly isRight: boolean;
  readonly isUpper: boolean;
}

export const fourQuarters: readonly Quarter[] = [
  { isRight: true, isUpper: true },
  { isRight: true, isUpper: false },
  { isRight: false, isUpper: false },
  { isRight: false, isUpper: true },
];
