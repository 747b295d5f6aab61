import office from "office-addin-prettier-config";

/** The vendor's options, with the longer line that formulas and their comments need. */
export default { ...office, printWidth: 120, trailingComma: "all" };
