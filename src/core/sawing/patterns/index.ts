import type { SawingPattern } from "../sawingPattern";
import { live } from "./live";

/** The ways a log can be opened, in the order of their menu. */
export const sawingPatterns: readonly SawingPattern[] = [live];
