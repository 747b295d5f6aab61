import { shown } from "../../core/basis/require";
import { sawnBoardFeet, worthOf } from "../../core/sawing/boardSize";
import type { Cut } from "../../core/sawing/cutList";
import { edgerSettings } from "../../core/sawing/edgerSettings";
import { grainOf } from "../../core/sawing/grain";
import type { SawPlan } from "../../core/sawing/sawingPattern";
import type { SawnBoard, SawnFlitch } from "../../core/sawing/sawnFlitch";
import type { UnitSystem } from "./unitSystem";

/** One row for each cut, one for the board that is left on the bed after the last, and one for each edger setting. */
export function cutRows(plan: SawPlan, units: UnitSystem): unknown[][] {
  const { cuts, lastOnBed, priced, pattern } = plan;
  const size = sizeIn(units.diameter.perOurs);
  const freed = ({ boards }: SawnFlitch) => [
    boards.map((board) => pieceText(board, units, pattern === "Quarter")).join(" + "),
    boards.reduce((sum, { piece }) => sum + sawnBoardFeet(piece), 0),
    priced ? boards.reduce((sum, { piece }) => sum + worthOf(piece, priced), 0) : "",
  ];
  const turn = ({ turn: how, smallEndRaised }: Cut, i: number) => {
    const isSetAnew = i === 0 || how !== "none";
    const raised = isSetAnew && smallEndRaised > 0;
    return (
      (i === 0 ? wayOf(plan) : "") +
      how +
      (raised ? `, small end raised ${size(smallEndRaised)} ${units.diameter.name}` : "")
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
  return rows;
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
  return withGrain ? `${size} ${grainOf(outline)}` : size;
}

const sizeIn = (perOurs: number) => (value: number) => shown(Number((value * perOurs).toFixed(3)));
