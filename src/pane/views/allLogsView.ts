import { html, nothing, svg, type TemplateResult } from "lit";
import { allLogsSheet } from "../../workbook/sheets/allLogs";
import { PARTS, yieldChart, yieldFinding } from "../charts/yieldChart";
import { actionButton } from "../components/actionButton";
import { chartFigure } from "../components/chartFigure";
import { dataTable } from "../components/dataTable";
import { emptyState } from "../components/emptyState";
import { message } from "../components/message";
import { progressLine } from "../components/progressLine";
import { waiting } from "../components/waiting";
import { figure } from "../figures";
import type { Job } from "../job/job";
import type { Pane } from "../pane";
import { allLogsContent } from "../solver/allLogsContent";
import { allLogsFigures, isPlanned } from "../solver/allLogsFigures";
import type { AllLogsResult } from "../solver/results";
import type { SolverOrders } from "../solver/readOrders";
import type { Solved } from "../solver/solving";
import { cautionOn } from "./cautionOn";
import { staleNote } from "./staleNote";

/** The best plan of every log on the sheet Logs, and what they yield together beside the scale of each rule. */
export function allLogsView(pane: Pane) {
  const { job, orders, solving } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "What all your logs saw out to will be here once there are logs.",
      actionButton({ label: "Scale logs", kind: "main", onPress: () => pane.go("logs") }),
    );
  }
  if (!orders) return pane.state.unread ? html`` : waiting("Reading the logs");
  const order = orders.allLogs;
  const running = solving?.kind === "allLogs" ? solving : undefined;
  return html`
    ${
      typeof order === "string"
        ? message({ kind: "note", text: order })
        : html`<p class="hint">
            ${figure(order.logs.length)} logs with both ends and a length, ${order.pattern.toLowerCase()} sawing, kerf
            ${order.kerf} in; the boards are those of the sheet Mill.${leftOut(orders)}
          </p>`
    }
    <div class="actions">
      ${actionButton({
        label: "Plan all logs",
        kind: "main",
        disabled: typeof order === "string" || solving !== undefined,
        onPress: () => {
          if (typeof order === "string") return;
          pane.solver.start(order);
          pane.focus("stop-work");
        },
      })}
    </div>
    ${running ? progressLine({ ...running, so: soFar(pane), onStop: () => stop(pane) }) : nothing}
    ${answer(pane, job, orders)} ${cautionOn(pane, "Sawing")} ${cautionOn(pane, "Log weight")}
    ${cautionOn(pane, "Ungraded lumber")}
  `;
}

const leftOut = ({ logsLeftOut }: SolverOrders) =>
  logsLeftOut === 0
    ? ""
    : ` Left out: ${figure(logsLeftOut)} more, whose column Check on the sheet Logs says what is lacking.`;

function stop(pane: Pane): void {
  pane.solver.stop();
  pane.focus("pane-title");
}

function soFar(pane: Pane): string {
  const best = pane.solver.best();
  if (best?.kind !== "allLogs") return "";
  return `${figure(best.logs.filter(isPlanned).reduce((sum, { boardFeet }) => sum + boardFeet, 0))} bf`;
}

function answer(pane: Pane, job: Job, orders: SolverOrders): TemplateResult | typeof nothing {
  const solved = pane.state.solved.allLogs;
  if (solved?.result.kind !== "allLogs") return nothing;
  const { result } = solved;
  const figures = allLogsFigures(result, job);
  const { left } = result;
  return html`
    ${staleNote(solved, orders.allLogs)}
    ${left > 0 ? message({ kind: "warning", text: `Stopped: ${figure(left)} logs are not planned yet.` }) : nothing}
    ${
      figures.planned === 0
        ? message({ kind: "note", text: "None of these logs has a plan: the list below says why." })
        : chartFigure({
            finding: yieldFinding(figures).replaceAll(" %", "\u00a0%"),
            data: figures,
            draw: yieldChart,
            table: dataTable(
              "What becomes of the wood, and the scale of each rule",
              ["What", "Board feet", "Boards over it"],
              [
                ["Boards", figure(figures.boards), ""],
                ["Sawdust, as wood", figure(figures.sawdust), ""],
                ["Slabs and edgings, as wood", figure(figures.slabs), ""],
                ["All the wood", figure(figures.wood), ""],
                ...figures.rules.map(({ title, scale, overrun }) => [title, figure(scale), `${figure(overrun)} %`]),
              ],
            ),
          })
    }
    ${figures.planned > 0 ? legend() : nothing}
    <p class="hint">
      Boards are the best plan of sound logs, bent as the sheet Logs has them; crook, rot and mishap take from it.
      Overrun is reckoned from these plans and these logs, never from a table. The dashed line is the boards.
    </p>
    ${logTable(result)}
    <div class="actions">
      ${actionButton({ label: "Write to the sheet", name: "Write to the sheet All logs", onPress: () => void write(pane, job, solved) })}
    </div>
  `;
}

/** What the colours of the stacked bar mean, and the dashed line. */
const legend = () =>
  html`<ul class="legend">
    ${PARTS.map(
      ([what, series]) =>
        html`<li>
          <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
            ${svg`<rect width="12" height="12" fill="var(--woodlotSeries${series})" />`}</svg
          >${what}
        </li>`,
    )}
  </ul>`;

const logTable = ({ logs }: AllLogsResult) =>
  dataTable(
    "Plan of each log",
    ["Log", "Boards", "Board feet", "Lumber %", "Sawdust %", "Slab %"],
    logs.map((log) =>
      isPlanned(log)
        ? [
            log.name,
            figure(log.pieces),
            figure(log.boardFeet),
            figure(log.lumber),
            figure(log.sawdust),
            figure(log.slab),
          ]
        : [log.name, log.why, "", "", "", ""],
    ),
    "Log by log",
  );

async function write(pane: Pane, job: Job, solved: Solved): Promise<void> {
  const content = allLogsContent(solved, job);
  const done = await pane.run("Writing the sheet All logs", () => pane.host.lay([allLogsSheet(content)]));
  if (done) pane.say("The plans stand on the sheet All logs, as values with what they were worked out from.");
}
