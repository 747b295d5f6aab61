import type { WorkbookHost } from "../../workbook/host";
import type { CellValue } from "../../workbook/plan";
import { out } from "../../workbook/tables";
import { readAnswer, type Spill } from "./spill";

/** The stand, what is cut of it, or what is left, per acre. */
export interface CutLine {
  readonly stand: string;
  readonly trees: number;
  /** [ft2] */
  readonly basalArea: number;
  /** [in]; null where there are no trees. */
  readonly diameter: number | null;
  readonly volume: number | null;
  readonly share: number | null;
}

/** A diameter class or a species before the cut, and what is cut and left of it. */
export interface CutPart {
  readonly name: string;
  readonly before: number;
  readonly beforeMargin: number | null;
  readonly cut: number;
  readonly leave: number;
  readonly leaveMargin: number | null;
  /** Basal area before, cut and left. [ft2/ac] */
  readonly areas: readonly [before: number, cut: number, leave: number];
}

export interface Density {
  readonly measure: string;
  readonly before: number | null;
  readonly after: number | null;
  readonly says: string;
}

/** The answers of the sheet Cut, as they stand there now. */
export interface CutAnswers {
  readonly lines: readonly CutLine[];
  /** Why there are none; "" when there are. */
  readonly lacking: string;
  readonly densities: readonly Density[];
  /** What a class holds, in words. */
  readonly classRule: string;
  readonly classes: readonly CutPart[];
  readonly species: readonly CutPart[];
}

const MISSING = "This workbook has no sheet Cut. Build it anew from Plan, or open the demo, to see one.";

export async function readCut(host: WorkbookHost): Promise<CutAnswers> {
  const [cut, density, classes, species] = await Promise.all(
    [out.cut, out.cutDensity, out.cutClasses, out.cutSpecies].map((name) => readAnswer(host, name)),
  );
  const lines = rows(cut).flatMap(lineOf);
  return {
    lines,
    lacking: lines.length > 0 ? "" : cut?.kind === "none" ? because(cut.because) : "No trees yet.",
    densities: rows(density).map(([measure, before, after, says]) => ({
      measure: text(measure),
      before: number(before),
      after: number(after),
      says: text(says),
    })),
    classRule: classes?.kind === "rows" ? (text(classes.rows[0]?.[0]).split("; ")[1] ?? "") : "",
    classes: rows(classes).slice(0, -1).flatMap(partOf),
    species: rows(species).slice(0, -1).flatMap(partOf),
  };
}

const because = (reason: string) => (reason.includes("is missing") ? MISSING : reason);
const rows = (spill: Spill | undefined) => (spill?.kind === "rows" ? spill.rows.slice(1) : []);
const number = (cell: CellValue | undefined) => (typeof cell === "number" ? cell : null);
const text = (cell: CellValue | undefined) => String(cell ?? "");

function lineOf([stand, trees, basalArea, diameter, volume, share]: readonly CellValue[]): readonly CutLine[] {
  if (typeof trees !== "number" || typeof basalArea !== "number") return [];
  return [
    {
      stand: text(stand),
      trees,
      basalArea,
      diameter: number(diameter),
      volume: number(volume),
      share: number(share),
    },
  ];
}

function partOf(row: readonly CellValue[]): readonly CutPart[] {
  const [name, before, beforeMargin, cut, leave, leaveMargin, ...areas] = row;
  const [all, taken, left] = areas;
  if (![before, cut, leave, all, taken, left].every((cell) => typeof cell === "number")) return [];
  return [
    {
      name: text(name),
      before: before as number,
      beforeMargin: number(beforeMargin),
      cut: cut as number,
      leave: leave as number,
      leaveMargin: number(leaveMargin),
      areas: [all as number, taken as number, left as number],
    },
  ];
}
