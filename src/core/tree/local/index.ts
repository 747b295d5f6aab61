import { combinedVariable } from "./combinedVariable";
import type { LocalForm } from "./localForm";
import { powersOfBoth } from "./powersOfBoth";

/** Every shape that a local volume table can take. A new one is a file of its own and a word here. */
export const localForms: readonly LocalForm[] = [combinedVariable, powersOfBoth];
