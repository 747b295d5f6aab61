import { html, nothing, type TemplateResult } from "lit";
import { CUT_LIST_SHEET } from "../../workbook/sheets/cutListCells";
import { cutPlanSheet } from "../../workbook/sheets/cutPlan";
import { actionButton } from "../components/actionButton";
import { dataTable } from "../components/dataTable";
import { emptyState } from "../components/emptyState";
import { message } from "../components/message";
import { progressLine } from "../components/progressLine";
import { section } from "../components/section";
import { waiting } from "../components/waiting";
import { figure } from "../figures";
import type { Pane } from "../pane";
import type { CutListResult } from "../solver/results";
import { cutPlanContent } from "../solver/cutPlanContent";
import type { SolverOrders } from "../solver/readOrders";
import { answerOf, gapOf, moreIn, saidNamed } from "../solver/sayCutList";
import type { Solved } from "../solver/solving";
import { cautionOn } from "./cautionOn";
import { staleNote } from "./staleNote";
import { treesAnswer } from "./treesAnswer";

/** Which logs of the yard, or how many standing trees, give the pieces of the sheet Cut list. */
export function cutListView(pane: Pane) {
  const { job, orders, solving } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "What your logs give of a building's pieces will be here once there is a workbook.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  if (!orders) return pane.state.unread ? html`` : waiting("Reading the cut list");
  const running = solving?.kind === "cutList" || solving?.kind === "trees" ? solving : undefined;
  return html`
    <p class="answer">${listIn(orders)}</p>
    ${lacking(orders.cutList)} ${unread(orders)}
    <div class="actions">
      ${starter(pane, "Find the logs", orders.cutList, "main")}
      ${starter(pane, "How many trees?", orders.trees, "plain")} ${go(pane, "Go to Cut list")}
    </div>
    ${typeof orders.trees === "string" && orders.trees !== orders.cutList ? html`<p class="hint">${orders.trees}</p>` : nothing}
    ${running ? progressLine({ ...running, so: soFar(pane), onStop: () => stop(pane) }) : nothing}
    ${cutListAnswer(pane, orders)} ${treesAnswer(pane)} ${cautionOn(pane, "Ungraded lumber")}
    ${cautionOn(pane, "Sawing")} ${cautionOn(pane, "Log weight")}
  `;
}

const listIn = ({ list: { lines, pieces, boardFeet, spares } }: SolverOrders) =>
  lines === 0
    ? "No pieces on the cut list yet."
    : `${figure(pieces)} pieces on ${figure(lines)} lines, ${figure(boardFeet)} bf${spares > 0 ? `, and ${figure(spares)} % to spare` : ""}.`;

const lacking = (order: SolverOrders["cutList"]) =>
  typeof order === "string" ? message({ kind: "note", text: order }) : nothing;

const unread = ({ list: { unread: lines } }: SolverOrders) =>
  lines === 0
    ? nothing
    : message({
        kind: "warning",
        text: `${figure(lines)} ${lines === 1 ? "line is" : "lines are"} left out: the column Check on the sheet Cut list says why.`,
      });

function starter(pane: Pane, label: string, order: SolverOrders["cutList" | "trees"], kind: "main" | "plain") {
  return actionButton({
    label,
    kind,
    disabled: typeof order === "string" || pane.state.solving !== undefined,
    onPress: () => {
      if (typeof order === "string") return;
      pane.solver.start(order);
      pane.focus("stop-work");
    },
  });
}

function stop(pane: Pane): void {
  pane.solver.stop();
  pane.focus("pane-title");
}

const go = (pane: Pane, label: string) =>
  actionButton({
    label,
    onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet: CUT_LIST_SHEET, at: "A12" })),
  });

/** What the running search has found, in a few words. */
function soFar(pane: Pane): string {
  const best = pane.solver.best();
  return best?.kind === "cutList" ? answerOf(best) : "";
}

function cutListAnswer(pane: Pane, orders: SolverOrders): TemplateResult | typeof nothing {
  const solved = pane.state.solved.cutList;
  if (solved?.result.kind !== "cutList") return nothing;
  const { result } = solved;
  return section(
    "From the logs in the yard",
    html`${staleNote(solved, orders.cutList)}
      <p class="answer"><strong>${answerOf(result)}</strong></p>
      <p class="hint">${gapOf(result)}${solved.stopped ? " The search was stopped before its end." : ""}</p>
      ${result.missing.length > 0 ? missingPart(result) : nothing} ${logTable(result)}
      <div class="actions">
        ${actionButton({ label: "Write to the sheet", name: "Write to the sheet Cut plan", onPress: () => void write(pane, solved) })}
      </div>`,
  );
}

const missingPart = (result: CutListResult) =>
  html`${message({ kind: "warning", text: `Still missing: ${saidNamed(result.missing)}.` })}
  ${
    result.more === undefined
      ? nothing
      : html`<ul class="more-logs">
          ${moreIn(result).map((line) => html`<li>${line}</li>`)}
        </ul>`
  }`;

const logTable = ({ logs }: CutListResult) =>
  dataTable(
    "Which log gives which pieces",
    ["Log", "Small end, in", "Length, ft", "Pieces", "Board feet"],
    logs.map(({ name, smallEnd, length, pieces, boardFeet }) => [
      name,
      String(smallEnd),
      String(length),
      saidNamed(pieces),
      figure(boardFeet, 1),
    ]),
    "Which log gives which pieces",
  );

async function write(pane: Pane, solved: Solved): Promise<void> {
  const { trees } = pane.state.solved;
  const { orders } = pane.state;
  if (!orders) return;
  const content = cutPlanContent(solved, trees, orders.list);
  const done = await pane.run("Writing the sheet Cut plan", () => pane.host.lay([cutPlanSheet(content)]));
  if (done) pane.say("The plan stands on the sheet Cut plan, as values with what they were worked out from.");
}
