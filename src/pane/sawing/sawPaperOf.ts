import { RELEASED } from "../../core/reference/release";
import type { CellValue } from "../../workbook/plan";
import type { SawPaper } from "../../workbook/sheets/sawPaper";
import { figure, short } from "../figures";
import type { SavedLog } from "../job/job";
import type { SawGain, SawingAnswers } from "../job/readSawing";
import { settingSaid } from "./sawSteps";

/** The plan of the picked log as it goes on paper. */
export function sawPaperOf(sawing: SawingAnswers, logs: readonly SavedLog[]): SawPaper {
  const { log, steps, unit, gained, bound, pattern, kerf, taper, sweep } = sawing;
  const saved = logs.find(({ name }) => name === log);
  const onScale = steps.some(({ shown }) => shown !== "");
  return {
    title: `Plan of log ${log}`,
    facts: [
      ...(saved ? logFacts(saved, unit) : []),
      `${pattern} sawing, kerf ${kerf === null ? "not given" : `${short(kerf)} ${unit}`}`,
      `Taper: ${taper.toLowerCase()}${sweep === null || sweep === 0 ? "" : `; sweep ${short(sweep)} ${unit}`}`,
      ...(gained ? ["", ...gainFacts(gained)] : []),
      ...(bound ? [`${figure(bound.gives, 1)} % of what area and kerf allow`] : []),
      "",
      "Heights are of the blade above the bed.",
      "Numbers are of boards, in the order they come.",
    ],
    headings: [
      "Step",
      "Turn",
      onScale ? "Set the head to, on the scale" : `Set the head to, ${unit}`,
      "Frees, in x in x ft".replaceAll("in", unit).replace("ft", unit === "cm" ? "m" : "ft"),
      "Board",
      "Board feet",
    ],
    cuts: steps.map((step): readonly CellValue[] => [
      String(step.number),
      step.turn === "none" ? "" : step.turn,
      settingSaid(step),
      step.frees,
      step.boards.join(", "),
      step.boardFeet === null ? "" : figure(step.boardFeet, 1),
    ]),
    stamp: `Values from the sheet Sawing, made with the version of ${RELEASED.date}.`,
  };
}

const logFacts = ({ log: { smallEnd, largeEnd, length }, second }: SavedLog, unit: string) => [
  `Small end ${short(smallEnd)}${second == null ? "" : ` and ${short(second)}`} ${unit}, large end ${largeEnd === null ? "not given" : `${short(largeEnd)} ${unit}`}`,
  `${short(length)} ${unit === "cm" ? "m" : "ft"} from end to end`,
];

const gainFacts = ({ pieces, boardFeet, lumber, sawdust, slab }: SawGain) => [
  `${figure(pieces)} ${pieces === 1 ? "piece" : "pieces"}, ${figure(boardFeet, 1)} board feet`,
  `Lumber ${figure(lumber, 1)} %, sawdust ${figure(sawdust, 1)} %, slab ${figure(slab, 1)} %`,
];
