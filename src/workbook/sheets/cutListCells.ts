export const CUT_LIST_SHEET = "Cut list";

/** What a choice of logs goes by when the whole list can be had; also the texts of its menu. */
export const CUT_GOALS = ["Least wood", "Fewest logs"] as const;
