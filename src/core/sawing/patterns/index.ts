import type { SawingPattern } from "../sawingPattern";
import { around } from "./around";
import { best } from "./best";
import { cant } from "./cant";
import { live } from "./live";
import { quarter } from "./quarter";

/** The ways a log can be opened, in the order of their menu. */
export const sawingPatterns: readonly SawingPattern[] = [live, cant, around, quarter, best];
