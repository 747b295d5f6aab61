import type { Pane } from "../pane";
import type { SpeciesSearch } from "./suggestions";

let search: SpeciesSearch | undefined;
let asked = false;

/** The search through the national list; it is loaded when it is first asked for, and until then there is none. */
export function nationalSearch(pane: Pick<Pane, "set">): SpeciesSearch | undefined {
  if (!asked) {
    asked = true;
    import(/* webpackChunkName: "species-search" */ "./speciesSearch").then(
      ({ searchSpecies }) => {
        search = searchSpecies;
        pane.set({});
      },
      () => {
        asked = false; // without a connection the owner's own list still serves; the next letter asks again
      },
    );
  }
  return search;
}
