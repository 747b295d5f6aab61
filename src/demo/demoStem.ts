import { flaw } from "../workbook/tables";
import type { StemContent } from "../workbook/workbookContent";

/** An invented white oak, to be cut into what the woodlot sells. */
export const demoStem: StemContent = {
  species: "wo",
  dbh: 21.5,
  height: 84,
  logs: null,
  stump: 1,
  trim: 0.33,
  flaws: [
    { [flaw.from]: 26, [flaw.to]: 29, [flaw.what]: "Rot" },
    { [flaw.from]: 47, [flaw.to]: 47, [flaw.what]: "Crook" },
  ],
};
