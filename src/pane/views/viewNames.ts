/** The views of the pane; each has a title for the menu and the heading. */
export const viewTitles = {
  home: "Home",
  plan: "Plan the cruise",
  points: "Lay out points",
  tally: "Tally trees",
  measure: "Measure a tree",
  species: "Species codes",
  local: "Local volume table",
  paste: "Paste a tally",
  check: "Check",
  stand: "Stand",
  cut: "What to cut",
  buck: "Buck a stem",
  logs: "Scale logs",
  rules: "Log rules",
  saw: "Saw a log",
  cutList: "Cut list",
  allLogs: "All my logs",
  boards: "Boards",
  compare: "Compare",
  share: "Share",
} as const;

export type ViewName = keyof typeof viewTitles;
