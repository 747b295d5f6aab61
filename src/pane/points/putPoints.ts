import { plot as plotHeading, PLOTS } from "../../workbook/tables";
import { outlineSheet } from "../../workbook/sheets/outline";
import { pointListSheet } from "../../workbook/sheets/pointList";
import type { Pane } from "../pane";
import { named, placingInWords } from "./placing";
import type { PointsModel } from "./pointsModel";
import { setLayout } from "./setLayout";

/** Writes the points, the outline and the list to print; asks first when points of an earlier grid would be moved. */
export async function putPoints(pane: Pane, model: PointsModel): Promise<void> {
  const { moved } = model.placing;
  if (!model.proposed || moved.length === 0) return write(pane, model);
  pane.set({
    question: {
      text: `${named(moved)} ${moved.length === 1 ? "has its place" : "have their places"} from the grid before and ${moved.length === 1 ? "was" : "were"} not visited. Going on gives ${moved.length === 1 ? "it" : "them"} places on the new grid. Drawing again until the map looks good spoils the draw.`,
      yes: "Give new places",
      no: "Keep them",
      onYes: () => void write(pane, model),
    },
  });
  pane.focus("pane-question");
}

async function write(pane: Pane, { proposal, placing, proposed, planned }: PointsModel): Promise<void> {
  const done = await pane.run("Writing the points", async () => {
    if (proposed) {
      const { updates, appends } = placing;
      if (updates.length > 0) {
        await pane.host.updateRows(
          PLOTS,
          updates.map(({ row, east, north }) => ({
            row,
            changes: { [plotHeading.east]: east, [plotHeading.north]: north },
          })),
        );
      }
      if (appends.length > 0) {
        await pane.host.appendRows(
          PLOTS,
          appends.map(({ name, east, north }) => ({
            [plotHeading.plot]: name,
            [plotHeading.east]: east,
            [plotHeading.north]: north,
          })),
        );
      }
    }
    const rows = planned + (proposed ? placing.appends.length : 0);
    await pane.host.lay([outlineSheet(proposal.layout), pointListSheet(rows)]);
    await pane.refresh();
  });
  if (!done) return;
  const result = proposed ? placingInWords(placing).join(" ") : "The sheets Outline and Point list are written anew.";
  setLayout(pane, {
    text: "",
    reading: undefined,
    unreadable: "",
    spacing: "",
    seed: "",
    bearing: "",
    from: "",
    declination: "",
    pace: "",
    place: "",
    changed: false,
    result,
  });
  pane.say("The points are written.");
}
