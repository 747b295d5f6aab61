import { onBark, onSawnFace, type Setting } from "../setting";
import type { LyingLog } from "../lyingLog";
import type { Outline } from "../outline";
import { toTheBark } from "../sides";

export interface FaceAround extends Setting {
  /** Down to which the face is sawn, as far from the pith. [in] */
  readonly plane: number;
}

/** Sets a log for its four faces in the order of work, and tells what is sawn already to the left and right of each. */
export function facesAround(lying: LyingLog): (heart: Outline) => readonly [FaceAround, ...FaceAround[]] {
  const [onTop, onRight] = [onBark(lying, "top"), onBark(lying, "right")];
  return ({ left, right, lower, upper }) => [
    { turn: "none", face: "top", plane: upper, sides: toTheBark, ...onTop },
    { turn: "quarter turn", face: "right", plane: right, sides: { left: 0 - upper, right: Infinity }, ...onRight },
    {
      turn: "quarter turn",
      face: "bottom",
      plane: 0 - lower,
      sides: { left: 0 - right, right: Infinity },
      ...onSawnFace(upper),
    },
    { turn: "quarter turn", face: "left", plane: 0 - left, sides: { left: lower, right: upper }, ...onSawnFace(right) },
  ];
}
