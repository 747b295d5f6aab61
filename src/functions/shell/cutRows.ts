import { shown } from "../../core/basis/require";
import { piecesOf, sawnBoardFeet, worthOf } from "../../core/sawing/boardSize";
import type { Cut } from "../../core/sawing/cutList";
import { edgerSettings } from "../../core/sawing/edgerSettings";
import { grainOf, type Grain } from "../../core/sawing/grain";
import { grainCounts } from "../../core/sawing/grainCounts";
import { onTheScale } from "../../core/sawing/scale";
import type { SawPlan } from "../../core/sawing/sawingPattern";
import type { SawnBoard, SawnFlitch } from "../../core/sawing/sawnFlitch";
import type { UnitSystem } from "./unitSystem";

/**
 * One row for each cut, one for the board that is left on the bed after the last, and one for each edger setting; last,
 * where the log was sawn for its grain, how many boards have which.
 */
export function cutRows(plan: SawPlan, units: UnitSystem): unknown[][] {
  const { cuts, lastOnBed, lying, priced, pattern, scaleStep } = plan;
  const isForGrain = pattern === "Quarter";
  const size = sizeIn(units.diameter.perOurs);
  const thicker = ({ flitch: { thickness, listed } }: SawnFlitch) =>
    thickness - listed > 5e-4 ? `, sawn ${size(thickness)} thick` : "";
  const freed = (flitch: SawnFlitch, { boards } = flitch) => [
    boards.map((board) => pieceText(board, units, isForGrain ? grainOf(board, lying) : undefined)).join(" + ") +
      thicker(flitch),
    boards.reduce((sum, { piece }) => sum + sawnBoardFeet(piece), 0),
    priced ? boards.reduce((sum, { piece }) => sum + worthOf(piece, priced), 0) : "",
  ];
  const turn = ({ turn: how, smallEndRaised, largeEndRaised }: Cut, i: number) => {
    const isSetAnew = i === 0 || how !== "none";
    const raised = (end: string, by: number) =>
      isSetAnew && by > 0 ? `, ${end} end raised ${size(by)} ${units.diameter.name}` : "";
    return (
      (i === 0 ? wayOf(plan) : "") +
      how +
      (i === 0 ? layOf(plan) : "") +
      raised("small", smallEndRaised) +
      raised("large", largeEndRaised ?? 0)
    );
  };
  const rows: unknown[][] = cuts.map((cut, i) => [
    i + 1,
    turn(cut, i),
    cut.headReading * units.diameter.perOurs,
    ...(typeof cut.frees === "string" ? [cut.frees, "", ""] : freed(cut.frees)),
  ]);
  if (lastOnBed) rows.push([rows.length + 1, "none, left on the bed", "", ...freed(lastOnBed)]);
  for (const { widths, flitches } of edgerSettings(plan)) {
    const to = `${widths.map(size).join(" + ")} ${units.diameter.name}`;
    rows.push([rows.length + 1, "edge", "", `${flitches} ${flitches === 1 ? "flitch" : "flitches"} to ${to}`, "", ""]);
  }
  if (isForGrain) rows.push(["", "grain", "", grainsOf(plan), "", ""]);
  return scaleStep === undefined ? rows : rows.map((row, i) => [...row, settingOf(cuts[i], scaleStep, units)]);
}

/** What the scale shows, in the user's unit. */
const settingOf = (cut: Cut | undefined, step: number, { diameter: { perOurs } }: UnitSystem) =>
  cut ? onTheScale(cut.headReading * perOurs, step * perOurs) : "";

/** How an oval or swept log is laid for the first cut, where that is not all the same. */
function layOf({ lying: { log, upright } }: SawPlan): string {
  const across = log.largeEndAcross ?? log.largeEnd;
  const bent = (log.sweep ?? 0) > 0;
  if (across === log.largeEnd && !bent) return "";
  const longer = across > log.largeEnd === upright ? "level" : "upright";
  const oval = across === log.largeEnd ? [] : [`longer diameter ${longer}`];
  const sweep = bent ? [upright ? "belly up" : "belly to the right"] : [];
  return `, laid with ${[...oval, ...sweep].join(", ")}`;
}

/** Where the best of several patterns was asked for, which one it is. */
const wayOf = ({ pattern, isBestOf }: SawPlan) => (isBestOf ? `${pattern} sawing: ` : "");

/** "24 quarter (96 bf), 8 rift (32 bf)" */
const grainsOf = (plan: SawPlan): string =>
  grainCounts(plan)
    .filter(({ boards }) => boards > 0)
    .map(({ grain, boards, boardFeet }) => `${boards} ${grain} (${shown(Number(boardFeet.toFixed(1)))} bf)`)
    .join(", ");

/** "1 x 6 x 16", the grain after it where it is given. */
export function pieceText({ piece }: SawnBoard, { diameter, distance }: UnitSystem, grain?: Grain): string {
  const size = [
    sizeIn(diameter.perOurs)(piece.thickness),
    sizeIn(diameter.perOurs)(piece.width),
    sizeIn(distance.perOurs)(piece.length),
  ].join(" x ");
  const { resawing } = piece;
  const kind = resawing && resawing.product === "siding" ? "bevel siding" : resawing?.product;
  const further = kind ? ` for ${piecesOf(piece)} ${kind}` : "";
  return (grain ? `${size} ${grain}` : size) + further;
}

const sizeIn = (perOurs: number) => (value: number) => shown(Number((value * perOurs).toFixed(3)));
