import { SPECIES, species as heading } from "../../workbook/tables";
import type { Job } from "../job/job";
import type { Pane } from "../pane";
import { proposeCode } from "./proposeCode";
import type { FoundSpecies } from "./speciesSearch";
import type { Suggestion } from "./suggestions";

/** Row of the owner's list for a species of the national one. */
export const speciesRow = (code: string, { name, scientific, fia }: FoundSpecies) => ({
  [heading.code]: code,
  [heading.name]: name,
  [heading.fia]: fia,
  [heading.scientific]: scientific,
});

/** Takes a suggestion into the tally box; one of the national list is added to the owner's list under a short code. */
export function pickForTally(pane: Pane, job: Job, picked: Suggestion): void {
  if (picked.kind === "own") return pane.desk.type(`${picked.species.code} `);
  const { species } = picked;
  const code = proposeCode(species.name, job.species);
  pane.desk.type(`${code} `);
  pane.desk.also(async () => {
    await pane.host.appendRows(SPECIES, [speciesRow(code, species)]);
    await pane.refresh();
  });
  pane.say(`${code} now stands for ${species.name}. Change the code on the sheet Setup if you like another.`);
}
