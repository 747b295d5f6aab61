import { localPlane, type Place } from "../../core/cruise/localPlane";
import { outlineAcres, withoutRepeats } from "../../core/cruise/outline";
import { withoutLoops } from "../../core/cruise/withoutLoops";
import { withHoles } from "../../core/cruise/withHoles";
import type { OutlineReading } from "./outlineReading";

/** What is known of places beside where they lie. */
interface Given {
  /** A track, whose small loops are slips of the receiver and are cut off. */
  readonly walked?: boolean;
  /** Land inside that is not of the tract. */
  readonly holes?: readonly (readonly Place[])[];
}

/** Places on the earth as an outline on a flat map, 0, 0 at the south-west of them all. */
export function placesToMap(
  places: readonly Place[],
  source: string,
  { walked = false, holes = [] }: Given = {},
): OutlineReading {
  const origin = {
    latitude: Math.min(...places.map(({ latitude }) => latitude)),
    longitude: Math.min(...places.map(({ longitude }) => longitude)),
  };
  const plane = localPlane(origin);
  const onMap = (all: readonly Place[]) => withoutRepeats(all.map((place) => plane.toMap(place)));
  const { track, loops } = walked ? withoutLoops(onMap(places)) : { track: onMap(places), loops: 0 };
  outlineAcres(track); // refuses what is no outline
  const corners = holes.length === 0 ? track : withHoles(track, holes.map(onMap));
  return { corners, source, origin, notes: [...saidOfLoops(loops), ...saidOfHoles(holes.length)] };
}

const saidOfLoops = (loops: number) =>
  loops === 0
    ? []
    : [
        `${loops === 1 ? "A small loop" : `${loops} small loops`} of the track ${loops === 1 ? "was" : "were"} cut off.`,
      ];

const saidOfHoles = (holes: number) =>
  holes === 0
    ? []
    : [
        `${holes === 1 ? "A hole is" : `${holes} holes are`} cut out of the outline, joined to it by a line: the acres are without ${holes === 1 ? "it" : "them"}, and no point falls inside.`,
      ];
