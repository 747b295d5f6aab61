/** What the lines of a fitted table are called where they are set down; the sizes have their unit behind. */
export const fitLabels = {
  form: "Form",
  equation: "Equation",
  a: "a",
  b: "b",
  c: "c",
  trees: "Felled trees",
  meanVolume: "Mean volume",
  error: "Standard error of estimate",
  errorPercent: "Standard error pct of mean",
  rSquared: "R squared",
  furnivalIndex: "Furnival index",
  correction: "Correction for logarithms",
  leastDbh: "Smallest DBH",
  mostDbh: "Largest DBH",
  leastHeight: "Smallest height",
  mostHeight: "Largest height",
} as const;
