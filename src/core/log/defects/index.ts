import { crook } from "./crook";
import type { DefectKind } from "./defectKind";
import { interior } from "./interior";
import { section } from "./section";
import { sector } from "./sector";
import { sweep } from "./sweep";

/** Every kind of defect there is. Menus, messages and tests read this list. */
export const defectKinds: readonly DefectKind[] = [section, sector, sweep, crook, interior];
