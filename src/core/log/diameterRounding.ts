import type { Choice } from "../basis/choices";
import { InvalidInput } from "../basis/problem";
import type { Source } from "../basis/source";
import { A_HAIR, alwaysDown, nearestHalfDown, nearestHalfUp } from "./wholeNumbers";

/** Takes a measured diameter to the one that is scaled, in whole units of whatever it was measured in. */
export type Rounder = (diameter: number) => number;

/** What a buyer does with the fraction of a diameter. */
export interface DiameterRounding extends Choice {
  readonly sources: readonly Source[];
  /** True when what becomes of a diameter depends on those before it. */
  readonly needsWholeList?: boolean;
  /** A fresh rounder, to be given the diameters of one list in their order. */
  start(): Rounder;
}

const wengert: Source = {
  author: "E. M. Wengert",
  year: "n.d.",
  title: "Measuring Logs and Lumber",
  where: "two readings at right angles averaged, nearest inch, an exact half up one time and down the next",
  url: "http://goodwoodcorp.com/logs.html",
  standing: "read",
};

/** Two readings at right angles are averaged, whichever way the average is rounded. */
export const twoReadings: readonly Source[] = [
  wengert,
  {
    author: "Idaho Board of Scaling Practices",
    year: "n.d.",
    title: "How to determine the scale of a log",
    where: "narrowest way first, through the true centre, inside bark; a second reading at right angles",
    url: "http://www.ibsp.idaho.gov/2_HOW%20TO%20DETERMINE%20THE%20SCALE%20OF%20A%20LOG.htm",
    standing: "read",
  },
];

export const notToWhole: DiameterRounding = {
  title: "None",
  sources: [],
  start: () => (diameter) => diameter,
};

export const halfUp: DiameterRounding = {
  title: "Half up",
  aliases: ["Nearest half up", "Nearest, half up"],
  sources: [
    {
      author: "Idaho Board of Scaling Practices",
      year: "n.d.",
      title: "How to determine the scale of a log",
      where: "10 in means 9 1/2 to just under 10 1/2 in",
      url: "http://www.ibsp.idaho.gov/2_HOW%20TO%20DETERMINE%20THE%20SCALE%20OF%20A%20LOG.htm",
      standing: "read",
    },
  ],
  start: () => nearestHalfUp,
};

export const halfDown: DiameterRounding = {
  title: "Half down",
  aliases: ["Nearest half down", "Nearest, half down"],
  sources: [
    {
      author: "Idaho forestry contest",
      year: "n.d.",
      title: "Log scaling practicum",
      where: "both ways averaged, the half dropped: 8 and 13 in are 10",
      url: "https://sites.google.com/minidokaschools.org/minicoforestrycde/practicums/log-scaling",
      standing: "read",
    },
    {
      author: "USDA Forest Service",
      year: "n.d.",
      title: "National Forest Log Scaling Handbook, FSH 2409.11",
      where: "nearest inch, an exact half to the lower one",
      standing: "from memory",
    },
  ],
  start: () => nearestHalfDown,
};

export const halfAlternate: DiameterRounding = {
  title: "Half alternate",
  aliases: ["Nearest half alternate", "Nearest, half alternate"],
  needsWholeList: true,
  sources: [
    wengert,
    {
      author: "State of Georgia",
      year: "n.d.",
      title: "Official Code of Georgia Annotated",
      where: "2-14-80(e): exact halves are shared evenly, up and down",
      url: "http://www.lawskills.com/code/ga/2/14/80/",
      standing: "read",
    },
    {
      author: "Woodlot Reckoner",
      year: "",
      title: "Which half goes up",
      where: "the first half of a list goes up, the next one down, in the order of the list",
      standing: "choice of ours",
    },
  ],
  start() {
    let upNext = true;
    return (diameter) => {
      const whole = alwaysDown(diameter);
      if (Math.abs(diameter - whole - 0.5) > A_HAIR) return nearestHalfDown(diameter);
      const rounded = upNext ? whole + 1 : whole;
      upNext = !upNext;
      return rounded;
    };
  },
};

export const fractionDropped: DiameterRounding = {
  title: "Always down",
  aliases: ["Down"],
  sources: [
    {
      author: "University course notes",
      year: "n.d.",
      title: "FOR 274 Forest Measurements",
      where: "diameters always rounded down",
      url: "https://www.slideum.com/doc/1150076/174-bd-ft",
      standing: "read",
    },
  ],
  start: () => alwaysDown,
};

export const diameterRoundings: readonly DiameterRounding[] = [
  notToWhole,
  halfUp,
  halfDown,
  halfAlternate,
  fractionDropped,
];

/**
 * A rounder for a list of so many diameters.
 *
 * @throws InvalidInput when the rounding goes by a whole list and there is but one diameter
 */
export function rounderFor(rounding: DiameterRounding, diameters: number): Rounder {
  if (rounding.needsWholeList && diameters === 1) {
    throw new InvalidInput(
      `"${rounding.title}" needs the whole column of diameters in one formula; one log cannot tell whose turn it is.`,
    );
  }
  return rounding.start();
}
