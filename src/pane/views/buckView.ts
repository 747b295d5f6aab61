import { html, nothing } from "lit";
import { BUCKING } from "../../workbook/sheets/buckingCells";
import { PRODUCTS_SHEET } from "../../workbook/sheets/products";
import { dollars, sayCut } from "../bucking/buckSteps";
import { stemSideOf } from "../bucking/stemSide";
import { actionButton } from "../components/actionButton";
import { dataTable } from "../components/dataTable";
import { emptyState } from "../components/emptyState";
import { message } from "../components/message";
import { stemDrawing } from "../components/stemDrawing";
import { waiting } from "../components/waiting";
import { figure } from "../figures";
import type { BuckingAnswers, BuckWay } from "../job/readBucking";
import type { Pane } from "../pane";
import { cautionOn } from "./cautionOn";
import { stemFields } from "./stemFields";
import { stepped } from "./stepped";

/** One stem cut into what pays best, log by log in its side view, as the sheet Bucking has it. */
export function buckView(pane: Pane) {
  const { job, bucking } = pane.state;
  if (job === undefined || job === "none" || bucking === "none") {
    return emptyState(
      "The best way to cut a stem will be here once there is a workbook with a sheet Bucking.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  if (!bucking) return pane.state.unread ? html`` : waiting("Reading the sheet Bucking");
  const go = (sheet: string) =>
    actionButton({
      label: `Go to ${sheet}`,
      onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet, at: "A1" })),
    });
  return html`
    ${stemFields(pane, bucking)}
    ${job.invented ? message({ kind: "warning", text: "Prices: INVENTED - replace them on the sheet Products." }) : nothing}
    ${bucking.lacking ? message({ kind: "note", text: bucking.lacking }) : plan(pane, bucking)}
    <div class="actions">${go(BUCKING)} ${go(PRODUCTS_SHEET)}</div>
    ${cautionOn(pane, "Felling")} ${cautionOn(pane, "Estimate")}
  `;
}

function plan(pane: Pane, { steps, stump, units, flaws, height, ways }: BuckingAnswers) {
  const at = Math.min(pane.state.buck.step, steps.length - 1);
  const step = steps[at];
  if (!step) return nothing;
  const { distance, diameter, volume } = units;
  return html`
    ${finding(ways)}
    ${stepped({
      pane,
      id: "stem-cuts",
      label: "The logs, one by one",
      at,
      count: steps.length,
      one: "log",
      go: (to) => pane.set({ buck: { ...pane.state.buck, step: to } }),
      drawing: stemDrawing({
        side: stemSideOf(steps, height ?? undefined),
        marked: step.number,
        flaws: [...new Set(flaws.flatMap(({ from, to }) => (to === null ? [from] : [from, to])))].filter((h) => h > 0),
        name: `Side view of the stem, butt to the left, cut into ${steps.length} ${steps.length === 1 ? "log" : "logs"}, numbered from the butt`,
      }),
      said: sayCut(step, stump, units),
    })}
    <p class="hint">
      Lengths to scale; thickness drawn larger to be seen. Heights in ${distance} above the ground. Dashed: not sold.
    </p>
    ${dataTable(
      "Logs of the stem, from the butt up",
      [
        "Log",
        "Product",
        `Length, ${distance}`,
        `From, ${distance}`,
        `To, ${distance}`,
        `Small end, ${diameter}`,
        volume,
        "Value",
      ],
      steps.map((one) => [
        String(one.number),
        one.product,
        figure(one.length, 1),
        figure(one.from, 1),
        figure(one.to, 1),
        figure(one.smallEnd, 1),
        figure(one.volume, 1),
        dollars(one.value),
      ]),
      "Read as a list",
    )}
    ${dataTable(
      "Ways to cut this stem",
      ["Way", "Logs", "Value", "Below best, %"],
      ways.map(({ way, logs, value, below }) => [way, String(logs), dollars(value), figure(below, 1)]),
      "Compare with habits",
    )}
  `;
}

/** The best beside the best of the habits. */
function finding([best, ...habits]: readonly BuckWay[]) {
  if (!best) return nothing;
  const next = habits.reduce<BuckWay | undefined>(
    (most, one) => (most && most.value >= one.value ? most : one),
    undefined,
  );
  const logs = `${best.logs} ${best.logs === 1 ? "log" : "logs"}, ${dollars(best.value)}.`;
  if (!next) return html`<p class="answer">${logs}</p>`;
  const beside =
    next.below < 0.05
      ? `Cutting ${lowered(next.way)} brings as much.`
      : `The best habit, ${lowered(next.way)}, brings ${dollars(next.value)}, ${figure(next.below)} % less.`;
  return html`<p class="answer">${logs} ${beside}</p>`;
}

/** Inside a sentence. */
const lowered = (way: string) => way.charAt(0).toLowerCase() + way.slice(1);
