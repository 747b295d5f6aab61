import type { Choice } from "../basis/choices";

/** What the patterns are called, in the order of their menu, for those who only name them. */
export const patternNames = [
  { title: "Live", aliases: ["Live sawing", "Through and through"] },
  { title: "Cant", aliases: ["Cant sawing"] },
  { title: "Around", aliases: ["Sawing around", "For grade"] },
  { title: "Quarter", aliases: ["Quarter sawing", "Quartersawn", "Quarter sawn"] },
  { title: "Best", aliases: ["Best of all", "Any"] },
] as const satisfies readonly Choice[];
