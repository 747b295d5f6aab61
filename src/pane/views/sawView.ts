import { html, nothing } from "lit";
import { MILL_SHEET } from "../../workbook/sheets/mill";
import { SAWING } from "../../workbook/sheets/sawing";
import { named } from "../../workbook/tables";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { emptyState } from "../components/emptyState";
import { endViewDrawing } from "../components/endViewDrawing";
import { message } from "../components/message";
import { waiting } from "../components/waiting";
import { figure } from "../figures";
import type { Job, SavedLog } from "../job/job";
import type { SawGain, SawingAnswers } from "../job/readSawing";
import { boundInWords } from "../sawing/boundInWords";
import type { Pane } from "../pane";
import { choiceTable } from "../sawing/choiceTable";
import { sawPaperOf } from "../sawing/sawPaperOf";
import { sayStep } from "../sawing/sawSteps";
import { cautionOn } from "./cautionOn";
import { cutsInWords } from "./cutsInWords";
import { printing, sawPaper } from "./sawPaper";
import { sawEqualBoards } from "./sawEqualBoards";
import { sawTrial } from "./sawTrial";
import { stepped } from "./stepped";

/** The cut list of one log, cut by cut in its end view, as the sheet Sawing has it. */
export function sawView(pane: Pane) {
  const { job, sawing } = pane.state;
  if (job === undefined || job === "none" || sawing === "none") {
    return emptyState(
      "How a log is sawn will be here once there is a workbook with a sheet Sawing.",
      actionButton({
        label: "Plan the cruise",
        kind: "main",
        onPress: () => pane.go("plan"),
      }),
    );
  }
  if (!sawing) return pane.state.unread ? html`` : waiting("Reading the sheet Sawing");
  return html`
    ${logField(pane, job, sawing)}
    ${sawing.lacking ? message({ kind: "note", text: sawing.lacking }) : plan(pane, job, sawing)}
    ${sawEqualBoards(pane, sawing)}
    <h2>On the sheets</h2>
    <p class="hint">Sawing has pattern and taper; Mill has boards, mill, grades and your speed; Setup has the kerf.</p>
    <div class="actions">${goTo(pane, SAWING, "B5")} ${goTo(pane, MILL_SHEET, "A13")}</div>
    ${cautionOn(pane, "Sawing")} ${cautionOn(pane, "Log weight")} ${cautionOn(pane, "Ungraded lumber")}
    ${sawing.lacking ? nothing : sawPaper(sawPaperOf(sawing, job.logs), sawing.endView)}
  `;
}

const goTo = (pane: Pane, sheet: string, at: string) =>
  actionButton({
    label: `Go to ${sheet}`,
    onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet, at })),
  });

function logField(pane: Pane, { logs }: Job, { log, pattern, kerf, unit }: SawingAnswers) {
  return choiceField({
    id: "saw-log",
    label: "Log to saw",
    options: [
      ...(logs.some(({ name }) => name === log)
        ? []
        : [
            {
              id: log,
              title: log === "" ? "Choose a log" : `${log}, not on the sheet Logs`,
            },
          ]),
      ...logs.filter(({ name }) => name !== "").map((one) => ({ id: one.name, title: titleOf(one) })),
    ],
    value: log,
    hint: `Pattern: ${pattern || "not given"}; kerf: ${kerf === null ? "not given" : `${kerf} ${unit}`}. Both are changed on the sheets.`,
    onChoose: (chosen) => void pick(pane, chosen),
  });
}

const titleOf = ({ name, log: { smallEnd, length } }: SavedLog) => `${name}: ${smallEnd} in, ${length} ft`;

async function pick(pane: Pane, chosen: string): Promise<void> {
  const value = chosen !== "" && Number.isFinite(Number(chosen)) ? Number(chosen) : chosen;
  const done = await pane.run("Choosing the log", () => pane.host.writeNames({ [named.pickedLog]: value }));
  if (!done) return;
  pane.set({ sawStep: 0 });
  await pane.refresh();
}

function plan(pane: Pane, job: Job, sawing: SawingAnswers) {
  const { steps, unit, endView, gained, bound, log, priced } = sawing;
  const at = Math.min(pane.state.sawStep, steps.length - 1);
  const step = steps[at];
  if (!step) return nothing;
  return html`
    ${gained ? html`<p class="answer">${inWords(gained)}</p>` : nothing}
    ${bound ? html`<p class="hint">${boundInWords(bound, priced, unit)}</p>` : nothing}
    ${stepped({
      pane,
      id: "saw-cuts",
      label: "The cuts, one by one",
      at,
      count: steps.length,
      one: "cut",
      go: (to) => pane.set({ sawStep: to }),
      drawing:
        endView.boards.length > 0
          ? endViewDrawing({
              endView,
              marked: step.boards,
              name: `End view of log ${log}, ${endView.boards.length} boards, numbered as they are freed`,
            })
          : message({ kind: "note", text: "The sheet has no end view of this log. Its cuts stand in the list." }),
      said: sayStep(step, unit),
    })}
    ${cutsInWords(`Cut list of log ${log}`, steps, unit)}
    ${choiceTable(`What the plan of log ${log} is worth`, "What it is worth, by grade", sawing.worth)}
    ${choiceTable("Boards that the plan may saw", "Boards it may saw", sawing.boards)} ${printing(pane, job, sawing)}
    ${sawTrial(pane, sawing)}
  `;
}

const inWords = ({ pieces, boardFeet, lumber, sawdust, slab }: SawGain) =>
  `${figure(pieces)} ${pieces === 1 ? "piece" : "pieces"}, ${figure(boardFeet, 1)} bf: lumber ${figure(lumber, 1)} %, sawdust ${figure(sawdust, 1)} %, slab ${figure(slab, 1)} % of the log's wood`;
