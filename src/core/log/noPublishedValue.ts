import { OutOfRange } from "../basis/problem";
import { shown } from "../basis/require";
import type { LogRule, ScaledLog } from "./logRule";

/** The problem of a log that a rule's formula or table does not reach. */
export const noPublishedValue = ({ title }: LogRule, { diameter, length }: ScaledLog) =>
  new OutOfRange(`${title} as published has no value for ${shown(diameter)} in x ${shown(length)} ft.`);
