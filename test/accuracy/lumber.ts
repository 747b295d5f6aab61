import { boardFeet, fahrenheit, feet, inches, percent } from "../../src/core/basis/units";
import { boardMeasure } from "../../src/core/lumber/boardMeasure";
import { driedSize, flat, quarter } from "../../src/core/lumber/driedSize";
import { dry, green, hardwood, lumberKinds, softwood, softwoodTimber } from "../../src/core/lumber/dressedSize";
import { equilibriumMoisture } from "../../src/core/lumber/equilibriumMoisture";
import { gravityAt, lumberWeight } from "../../src/core/lumber/lumberWeight";
import { surfaceMeasure } from "../../src/core/lumber/surfaceMeasure";
import { targetThickness } from "../../src/core/lumber/targetThickness";
import { findWood } from "../../src/core/lumber/wood";
import { numberIn, published, type PublishedRow } from "../support/published";
import type { Comparison } from "./comparison";

type Pair = Comparison["pairs"][number];

const compared = (
  subject: string,
  unit: string,
  file: string,
  pairsOf: (row: PublishedRow) => readonly Pair[],
): Comparison => {
  const { source, standing, printedTo, rows } = published(`lumber/${file}`);
  return { subject, source, standing, unit, printedTo, pairs: rows.flatMap(pairsOf) };
};

/** Dressed sizes, surface measure, target thickness, shrinkage, weight and moisture against what is printed of them. */
export function lumberComparisons(): Comparison[] {
  return [
    compared("Softwood dressed sizes, dry and green", "in", "softwoodSizes.csv", (row) =>
      [dry, green].map((seasoning) => ({
        printed: numberIn(row, seasoning.id),
        ours: softwood.dressed(inches(numberIn(row, "nominal")), seasoning),
      })),
    ),
    compared("Softwood timbers, dressed dry and green", "in", "softwoodTimbers.csv", timbersDressed),
    compared("Softwood dressed sizes, a second printing", "in", "softwoodSizes.dealer.csv", dealerSizes),
    { ...compared("Board feet for each foot of a board", "bf", "softwoodSizes.dealer.csv", perFoot), printedTo: 0.001 },
    compared("Hardwood surfaced thickness", "in", "hardwoodThicknesses.csv", surfaced),
    compared("Hardwood surfaced thickness", "in", "hardwoodThicknesses.recalled.csv", surfaced),
    compared("Hardwood surface measure", "ft2", "surfaceMeasure.csv", (row) => [
      {
        printed: numberIn(row, "surface"),
        ours: surfaceMeasure(inches(numberIn(row, "width")), feet(numberIn(row, "length"))),
      },
    ]),
    compared("Target thickness: Brown's critical size", "in", "targetThickness.csv", target),
    compared("Target thickness", "in", "targetThickness.computed.csv", target),
    compared("Shrinkage, green to ovendry", "%", "shrinkage.csv", shrunk),
    compared("Shrinkage, green to ovendry", "%", "shrinkage.copies.csv", shrunk),
    compared("Change of dimension per percent of moisture", "per %", "changeCoefficients.csv", (row) =>
      ["radial", "tangential"].map((way) => ({
        printed: numberIn(row, `${way} coefficient`),
        ours: driedSize(inches(1), percent(numberIn(row, way)), percent(10), percent(11)) - 1,
      })),
    ),
    compared("Equilibrium moisture content", "%", "equilibriumMoisture.csv", settled),
    compared("Equilibrium moisture content", "%", "equilibriumMoisture.recalled.csv", settled),
    compared("Weight of lumber", "lb", "lumberWeight.computed.csv", (row) => [
      {
        printed: numberIn(row, "weight"),
        ours: lumberWeight(
          boardFeet(numberIn(row, "volume")),
          findWood(row.name ?? ""),
          percent(numberIn(row, "moisture")),
        ),
      },
    ]),
    compared("Specific gravity at 12 %", "", "gravityAtTwelve.csv", (row) => [
      {
        printed: numberIn(row, "gravity"),
        ours: gravityAt(findWood(row.name ?? "").gravity, percent(12)),
      },
    ]),
  ];
}

const target = (row: PublishedRow): readonly Pair[] => [
  {
    printed: numberIn(row, "target"),
    ours: targetThickness({
      finished: inches(numberIn(row, "finished")),
      shrinkage: percent(numberIn(row, "shrinkage")),
      planing: inches(numberIn(row, "planing")),
      variation: inches(numberIn(row, "variation")),
    }),
  },
];

/** The table prints what comes off each class of sizes; the least size of a class stands for it. */
function timbersDressed(row: PublishedRow): readonly Pair[] {
  const nominal = numberIn(row, "from");
  return [dry, green].map((seasoning) => ({
    printed: nominal - numberIn(row, `less ${seasoning.id}`),
    ours: softwoodTimber.dressed(inches(nominal), seasoning),
  }));
}

const nominalOf = (row: PublishedRow, face: string) => inches(numberIn(row, `nominal ${face}`));

function dealerSizes(row: PublishedRow): readonly Pair[] {
  const kind = lumberKinds.find(({ title }) => title === row.kind) ?? hardwood;
  return ["thickness", "width"].map((face) => ({
    printed: numberIn(row, face),
    ours: kind.dressed(nominalOf(row, face), dry),
  }));
}

const perFoot = (row: PublishedRow): readonly Pair[] => [
  {
    printed: numberIn(row, "per foot"),
    ours: boardMeasure(nominalOf(row, "thickness"), nominalOf(row, "width"), feet(1)),
  },
];

const surfaced = (row: PublishedRow): readonly Pair[] => [
  { printed: numberIn(row, "surfaced"), ours: hardwood.dressed(inches(numberIn(row, "rough")), dry) },
];

function shrunk(row: PublishedRow): readonly Pair[] {
  const wood = findWood(row.name ?? "");
  const lost = (shrinkage: number) => 100 - driedSize(inches(100), percent(shrinkage), percent(30), percent(0));
  return [
    { printed: numberIn(row, "radial"), ours: lost(quarter.shrinkageOf(wood)) },
    { printed: numberIn(row, "tangential"), ours: lost(flat.shrinkageOf(wood)) },
  ];
}

const settled = (row: PublishedRow): readonly Pair[] => [
  {
    printed: numberIn(row, "moisture"),
    ours: equilibriumMoisture(fahrenheit(numberIn(row, "temperature")), percent(numberIn(row, "humidity"))),
  },
];
