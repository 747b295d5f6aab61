import { OutOfRange } from "../basis/problem";
import { told } from "../basis/telling";
import type { LogRule, ScaledLog } from "./logRule";

/** The problem of a log that a rule's formula or table does not reach. */
export const noPublishedValue = ({ title }: LogRule, { diameter, length }: ScaledLog) =>
  new OutOfRange(
    (telling) =>
      `${title} as published has no value for ${told(telling, diameter, "in")} x ${told(telling, length, "ft")}.`,
  );
