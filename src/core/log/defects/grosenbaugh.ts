import type { Source } from "../../basis/source";

/** Where cull percents that hold under every log rule are told. The scope and the page were read, the formulas not. */
export const grosenbaugh = (formula: string): readonly Source[] => [
  {
    author: "L. R. Grosenbaugh",
    year: "1952",
    title: "Shortcuts for Cruisers and Scalers, Occasional Paper 126, Southern Forest Experiment Station",
    where: "opening pages: cull percents, p. 14 and following, do not depend on the log rule",
    standing: "read",
  },
  {
    author: "L. R. Grosenbaugh",
    year: "1952",
    title: "Shortcuts for Cruisers and Scalers, Occasional Paper 126, Southern Forest Experiment Station",
    where: `${formula}; from memory`,
    standing: "from memory",
  },
];
