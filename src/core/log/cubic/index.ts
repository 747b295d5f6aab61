import { cone } from "./cone";
import type { CubicFormula } from "./cubicFormula";
import { huber } from "./huber";
import { neiloid } from "./neiloid";
import { newton } from "./newton";
import { smalian } from "./smalian";

/** Every formula for the cubic volume of a log. Menus, messages and tests read this list. */
export const cubicFormulas: readonly CubicFormula[] = [smalian, huber, newton, cone, neiloid];
