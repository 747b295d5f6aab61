import { html, nothing } from "lit";
import { usualRules } from "../../core/log/ruleSelections";
import { BUYERS_CARD } from "../../core/log/scaleCard";
import { LOGS_SHEET } from "../../workbook/sheets/logs";
import { named } from "../../workbook/tables";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { emptyState } from "../components/emptyState";
import { message } from "../components/message";
import { onEntryKey } from "../entry/onEntryKey";
import { figure } from "../figures";
import type { Job } from "../job/job";
import { isShare, logDoubt } from "../logs/logDoubt";
import type { LogLine } from "../logs/logLine";
import { scaleOrWhy, sheetTotal } from "../logs/scaleFigures";
import type { MeasuredLog } from "../logs/scaledBy";
import type { Pane } from "../pane";
import { cautionOn } from "./cautionOn";
import { entryBox } from "./entryBox";
import { checked, entryKeys, entryList, heldBack } from "./entryList";
import { lacking, otherRules } from "./otherRules";

const BOX = "logs-line";

/** A scale sheet, log by log, by the buyer's rule; and what the same logs are under every other one. */
export function logsView(pane: Pane) {
  const { job, logs: state } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "The scale of your logs by the buyer's rule stands here once there is a workbook.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  const { logDesk: desk } = pane;
  const keyed = (event: KeyboardEvent) => onEntryKey(event, { desk, id: BOX, state: pane.state.logs });
  const logs = measuredLogs(pane, job);
  return html`<div class="tally" @keydown=${keyed}>
      ${entryBox(pane, {
        id: BOX,
        label: "Species, small end, length",
        placeholder: "wo 14 16 d5",
        hint: "Like wo 14 16, then the large end, s1.5 for 1.5 in of sweep, d5 for 5 % off, /note. Inches inside bark, feet with trim.",
        desk,
        state,
        comesTo: ({ log }) => scaleInWords(log, job),
        doubt: ({ log }) => logDoubt(log, job),
      })}
      ${heldBack(state, desk)} ${ruleField(pane, job)} ${total(logs, job)}
      <div class="actions tally-actions">
        ${actionButton({ label: "Undo", altKey: "U", kind: "quiet", onPress: () => undo(pane) })}
        ${actionButton({
          label: "Go to Logs",
          onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet: LOGS_SHEET, at: "A1" })),
        })}
      </div>
      ${entryList(pane, {
        id: BOX,
        label: "Last logs of the sheet",
        none: "No logs yet. Type species, inches, feet - like wo 14 16.",
        desk,
        state,
        after: ({ row }) => saidOfLog(job, row),
      })}
      ${entryKeys()}
    </div>
    ${logs.length > 0 ? otherRules(pane, logs, job) : nothing} ${cautionOn(pane, "Estimate")}
    ${cautionOn(pane, "Log weight")}`;
}

/** Every log of the sheet and those on their way to it, without those on their way out. */
function measuredLogs({ logDesk, state }: Pane, job: Job): readonly MeasuredLog[] {
  const saved = new Map(job.logs.map((one) => [one.row, one]));
  return [
    ...logDesk.lines().map(({ row, entry }) => {
      const { second = null, net = null } = saved.get(row) ?? {};
      return { ...entry.log, second, net };
    }),
    ...state.logs.pending.map(({ entry }) => entry.log),
  ].filter(({ smallEnd, length }) => smallEnd > 0 && length > 0);
}

function scaleInWords(log: LogLine, { scale }: Job): string {
  if (isShare(log)) return ""; // the doubt says all there is to say
  const scaled = scaleOrWhy(log, scale);
  if (typeof scaled === "string") return scaled;
  const { diameter, length, gross, net } = scaled;
  const off = net === gross ? "" : `, net ${figure(net)}`;
  return `Scaled as ${Number(diameter.toFixed(2))} in, ${Number(length.toFixed(2))} ft: ${figure(gross)} bf${off} by ${scale.rule}`;
}

/** The rules of menus on the small end, and the buyer's own table. */
const choices: readonly string[] = [...usualRules.rules.map(({ title }) => title), BUYERS_CARD];

const ruleField = (pane: Pane, { scale }: Job) =>
  choiceField({
    id: "logs-rule",
    label: "The buyer's rule, for this whole sheet",
    options: [
      ...(choices.includes(scale.rule) ? [] : [{ id: scale.rule, title: scale.rule }]),
      ...choices.map((title) => ({ id: title, title })),
    ],
    value: scale.rule,
    hint: conventions(scale),
    onChoose: (rule) =>
      void pane
        .run("Changing the rule", () => pane.host.writeNames({ [named.scaleRule]: rule }))
        .then((done) => (done ? pane.refresh() : undefined)),
  });

/** The rest of the buyer's conventions, in one line; they are changed on the sheet. */
const conventions = ({ diameterRounding, trim, lengthStep, longest, rounding }: Job["scale"]) =>
  [
    `Diameter: ${diameterRounding.toLowerCase()}`,
    `trim ${trim} ft`,
    `lengths in steps of ${lengthStep} ft`,
    longest === null ? "in one piece" : `in pieces of at most ${longest} ft`,
    `board feet: ${rounding.toLowerCase()}`,
  ].join("; ");

function total(logs: readonly MeasuredLog[], { scale }: Job) {
  const sheet = sheetTotal(logs, scale);
  if (!sheet) return message({ kind: "warning", text: `"${scale.rule}" is no log rule. Choose one above.` });
  return html`<p class="answer" aria-live="polite">
    Sheet: <strong>${figure(sheet.net)} bf</strong> net by ${scale.rule}, ${counted(logs.length)}${lacking(sheet)}
  </p>`;
}

const counted = (logs: number) => `${logs} ${logs === 1 ? "log" : "logs"}`;

/** Net scale and check of a log, as the sheet has them. */
function saidOfLog({ logs }: Job, row: number) {
  const saved = logs.find((one) => one.row === row);
  if (!saved) return html``;
  return html`${
    saved.net === null
      ? nothing
      : html`<span class="volume"> · gross ${figure(saved.gross ?? saved.net)}, net ${figure(saved.net)} bf</span>`
  }
  ${checked(saved.check)}`;
}

function undo(pane: Pane): void {
  pane.logDesk.undo();
  pane.focus(BOX);
}
