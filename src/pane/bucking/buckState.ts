import type { StemForm } from "./stemForm";

export interface BuckState {
  /** What is being typed; undefined while the boxes show what the sheet has. */
  readonly form: StemForm | undefined;
  /** Problems are told once the stem was to be cut. */
  readonly tried: boolean;
  /** The log that is shown, counted from 0. */
  readonly step: number;
}

export const firstBuck: BuckState = { form: undefined, tried: false, step: 0 };
