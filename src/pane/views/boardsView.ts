import { html, nothing } from "lit";
import { BOARDS_SHEET } from "../../workbook/sheets/boards";
import { boardDoubt } from "../boards/boardDoubt";
import { boardFeetOf, tallyBySize } from "../boards/boardFigures";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { dataTable } from "../components/dataTable";
import { emptyState } from "../components/emptyState";
import { estimateLines } from "../components/estimateLine";
import { section } from "../components/section";
import { onEntryKey } from "../entry/onEntryKey";
import { figure } from "../figures";
import type { Job } from "../job/job";
import type { Pane } from "../pane";
import { cautionOn } from "./cautionOn";
import { entryBox } from "./entryBox";
import { checked, entryKeys, entryList, heldBack } from "./entryList";

const BOX = "boards-line";

/** Boards as they come off the mill, and their tally by size. */
export function boardsView(pane: Pane) {
  const { job, stand, boards: state } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "A tally of your boards stands here once there is a workbook.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  const { boardDesk: desk } = pane;
  const keyed = (event: KeyboardEvent) => onEntryKey(event, { desk, id: BOX, state: pane.state.boards });
  const parts = tallyBySize([
    ...desk.lines().map(({ entry }) => entry.board),
    ...state.pending.map(({ entry }) => entry.board),
  ]);
  const all = (what: "pieces" | "boardFeet") => parts.reduce((sum, part) => sum + part[what], 0);
  return html`<div class="tally" @keydown=${keyed}>
      ${entryBox(pane, {
        id: BOX,
        label: "Thickness, width, length",
        placeholder: "5/4 6 12 x4",
        hint: "Like 1 8 12, then x4 for four, /note. In, in, ft; 5/4 and 1 1/4 are 1.25.",
        desk,
        state,
        comesTo: ({ board }) => `${figure(boardFeetOf(board), 1)} bf as given`,
        doubt: ({ board }) => boardDoubt(board),
      })}
      ${heldBack(state, desk)}
      <p class="answer" aria-live="polite">
        <strong>${figure(all("boardFeet"))} bf</strong> in ${figure(all("pieces"))}
        ${all("pieces") === 1 ? "board" : "boards"}, of the measures as given
      </p>
      ${fromLog(pane, job)}
      <div class="actions tally-actions">
        ${actionButton({ label: "Undo", altKey: "U", kind: "quiet", onPress: () => undo(pane) })}
        ${actionButton({
          label: "Go to Boards",
          onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet: BOARDS_SHEET, at: "A1" })),
        })}
      </div>
      ${entryList(pane, {
        id: BOX,
        label: "Last boards of the sheet",
        none: "No boards yet. Type inches, inches, feet - like 1 8 12.",
        desk,
        state,
        after: ({ row }) => html`${checked(job.boards.find((one) => one.row === row)?.check ?? "")}`,
      })}
      ${entryKeys()}
    </div>
    ${
      parts.length > 0
        ? section(
            "Tally by size",
            dataTable(
              "Pieces and board feet by size, of the measures as given",
              ["Size, in x in x ft", "Pieces", "Board feet"],
              [...parts]
                .sort((one, other) => other.boardFeet - one.boardFeet)
                .map(({ name, pieces, boardFeet }) => [name, figure(pieces), figure(boardFeet, 1)]),
            ),
          )
        : nothing
    }
    ${
      stand?.tractLumber
        ? section(
            "Standing trees",
            estimateLines([
              { title: "Lumber the harvest should saw out to", unit: "bf", estimated: stand.tractLumber },
            ]),
          )
        : nothing
    }
    ${cautionOn(pane, "Ungraded lumber")}`;
}

const fromLog = (pane: Pane, { logs }: Job) =>
  choiceField({
    id: "boards-log",
    label: "Sawn from",
    options: [
      { id: "", title: "no log named" },
      ...logs.filter(({ name }) => name !== "").map(({ name }) => ({ id: name, title: `log ${name}` })),
    ],
    value: pane.state.boards.log,
    onChoose: (log) => {
      pane.set({ boards: { ...pane.state.boards, log } });
      pane.focus(BOX);
    },
  });

function undo(pane: Pane): void {
  pane.boardDesk.undo();
  pane.focus(BOX);
}
