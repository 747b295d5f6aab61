import { shown } from "./shown";

/**
 * How measures are told in a sentence. The core computes in inches and feet; whoever gave centimetres should be
 * answered in them.
 */
export interface Telling {
  /** A measure of ours as a bare number of the user's. */
  readonly number: (value: number, unit: string) => string;
  /** What the user calls a unit of ours. */
  readonly unit: (name: string) => string;
}

/** As the core computes. */
export const inOurUnits: Telling = { number: shown, unit: (name) => name };

/** A measure with its unit: "14 in". */
export const told = ({ number, unit }: Telling, value: number, name: string): string =>
  `${number(value, name)} ${unit(name)}`;
