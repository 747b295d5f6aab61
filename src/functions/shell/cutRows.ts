import { shown } from "../../core/basis/require";
import { piecesOf, sawnBoardFeet, worthOf } from "../../core/sawing/boardSize";
import type { Cut } from "../../core/sawing/cutList";
import { edgerSettings } from "../../core/sawing/edgerSettings";
import { grainOf } from "../../core/sawing/grain";
import { onTheScale } from "../../core/sawing/scale";
import type { SawPlan } from "../../core/sawing/sawingPattern";
import type { SawnBoard, SawnFlitch } from "../../core/sawing/sawnFlitch";
import type { UnitSystem } from "./unitSystem";

/** One row for each cut, one for the board that is left on the bed after the last, and one for each edger setting. */
export function cutRows(plan: SawPlan, units: UnitSystem): unknown[][] {
  const { cuts, lastOnBed, priced, pattern, scaleStep } = plan;
  const size = sizeIn(units.diameter.perOurs);
  const thicker = ({ flitch: { thickness, listed } }: SawnFlitch) =>
    thickness - listed > 5e-4 ? `, comes out ${size(thickness)} ${units.diameter.name} thick` : "";
  const freed = (flitch: SawnFlitch, { boards } = flitch) => [
    boards.map((board) => pieceText(board, units, pattern === "Quarter")).join(" + ") + thicker(flitch),
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

/** "1 x 6 x 16"; the grain after it where that is what the log was sawn for. */
export function pieceText(
  { piece, outline }: SawnBoard,
  { diameter, distance }: UnitSystem,
  withGrain = false,
): string {
  const size = [
    sizeIn(diameter.perOurs)(piece.thickness),
    sizeIn(diameter.perOurs)(piece.width),
    sizeIn(distance.perOurs)(piece.length),
  ].join(" x ");
  const { resawing } = piece;
  const kind = resawing && resawing.product === "siding" ? "bevel siding" : resawing?.product;
  const further = kind ? ` for ${piecesOf(piece)} ${kind}` : "";
  return (withGrain ? `${size} ${grainOf(outline)}` : size) + further;
}

const sizeIn = (perOurs: number) => (value: number) => shown(Number((value * perOurs).toFixed(3)));
