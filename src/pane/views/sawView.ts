import { html, nothing } from "lit";
import { SAWING } from "../../workbook/sheets/sawing";
import { named } from "../../workbook/tables";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { dataTable } from "../components/dataTable";
import { emptyState } from "../components/emptyState";
import { endViewDrawing } from "../components/endViewDrawing";
import { message } from "../components/message";
import { waiting } from "../components/waiting";
import { figure } from "../figures";
import type { Job, SavedLog } from "../job/job";
import type { SawGain, SawingAnswers } from "../job/readSawing";
import type { Pane } from "../pane";
import { choiceTable } from "../sawing/choiceTable";
import { sawPaperOf } from "../sawing/sawPaperOf";
import { sayStep, settingSaid } from "../sawing/sawSteps";
import { cautionOn } from "./cautionOn";
import { printing, sawPaper } from "./sawPaper";
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
    <div class="actions">
      ${actionButton({
        label: "Go to Sawing",
        onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet: SAWING, at: "B5" })),
      })}
    </div>
    ${cautionOn(pane, "Sawing")} ${cautionOn(pane, "Log weight")} ${cautionOn(pane, "Ungraded lumber")}
    ${sawing.lacking ? nothing : sawPaper(sawPaperOf(sawing, job.logs), sawing.endView)}
  `;
}

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
  const { steps, unit, endView, gained, log } = sawing;
  const at = Math.min(pane.state.sawStep, steps.length - 1);
  const step = steps[at];
  if (!step) return nothing;
  return html`
    ${gained ? html`<p class="answer">${inWords(gained)}</p>` : nothing}
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
    ${dataTable(
      `Cut list of log ${log}`,
      ["Cut", "Turn", `Head reading, ${unit}`, "Frees", "Board", "Board feet"],
      steps.map((one) => [
        String(one.number),
        one.turn,
        settingSaid(one),
        one.frees,
        one.boards.join(", "),
        one.boardFeet === null ? "" : figure(one.boardFeet, 1),
      ]),
      "Read as a list",
    )}
    ${choiceTable(`What if log ${log} were sawn otherwise`, "What if: other kerfs, one product more", sawing.whatIf)}
    ${choiceTable(`What the plan of log ${log} is worth`, "What it is worth, by grade", sawing.worth)}
    <p class="hint">Products to try stand on the sheet Sawing, to the right; grades and your speed on Mill.</p>
    ${printing(pane, job, sawing)}
  `;
}

const inWords = ({ pieces, boardFeet, lumber, sawdust, slab }: SawGain) =>
  `${figure(pieces)} ${pieces === 1 ? "piece" : "pieces"}, ${figure(boardFeet, 1)} bf: lumber ${figure(lumber, 1)} %, sawdust ${figure(sawdust, 1)} %, slab ${figure(slab, 1)} % of the log's wood`;
