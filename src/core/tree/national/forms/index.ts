import { byGravity } from "./byGravity";
import { continuouslyVariable } from "./continuouslyVariable";
import { modifiedWiley } from "./modifiedWiley";
import { schumacherHall } from "./schumacherHall";
import { segmented } from "./segmented";
import type { VolumeForm } from "./volumeForm";

/** Every form that the national tables use. A new one is a file of its own and a word here. */
export const volumeForms: readonly VolumeForm[] = [
  schumacherHall,
  segmented,
  continuouslyVariable,
  modifiedWiley,
  byGravity,
];
