import { usualSettings } from "../../workbook/settings";
import { fieldTallySheet } from "../../workbook/sheets/fieldTally";
import { speciesCodes } from "../../workbook/sheets/setup";
import type { Job } from "../job/job";
import type { Pane } from "../pane";
import { layAsking } from "../plan/layAsking";
import type { PointsModel } from "./pointsModel";

/** Lays the sheet Field tally for the points and species that there are now; asks before one is replaced. */
export function layFieldTally(pane: Pane, job: Job): Promise<void> {
  const sheet = fieldTallySheet({
    points: job.plots.length,
    species: job.species,
    // Where the codes stand does not hang on what the settings are.
    speciesCells: speciesCodes({ settings: usualSettings, invented: job.invented }),
  });
  return layAsking(pane, [sheet], "Making the field tally", () =>
    pane.say("The sheet Field tally is made. Print it with the spreadsheet's own command."),
  );
}

/** The same sheet as a workbook of its own, for a tablet or a helper without the add-in. */
export async function tallyOfItsOwn(pane: Pane, job: Job, { planned }: PointsModel): Promise<void> {
  await pane.run("Making the field tally", async () => {
    // Loaded when it is asked for: it brings the writer of files along.
    const { fieldTallyFile } = await import("../../workbook/portable/fieldTallyFile");
    const file = await fieldTallyFile({
      points: planned,
      species: job.species,
      alone: {
        stand: job.stand,
        method: job.method,
        size: job.size,
        points: job.plots.map(({ value }) => value),
      },
    });
    await pane.host.openCopy(file.base64, file.fileName);
    pane.say(`${file.fileName} is made. Save it where the tablet finds it.`);
  });
}
