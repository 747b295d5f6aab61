import { call, column } from "../formula";
import { formats } from "../formats";
import type { SheetPlan } from "../plan";
import { named, out, plot, PLOTS, tree, TREES } from "../tables";
import { LAST_ROW } from "../zones";
import { counting, drawing, sizes, weighting } from "./designArguments";
import { cautionLine, down, heading, sheetPlan, title } from "./sheetParts";

export const CUT = "Cut";
/** Room for diameter classes, then for species to the end of the sheet. */
const CLASSES_AT = 25;
const CLASS_ROOM = 60;
const SPECIES_AT = CLASSES_AT + CLASS_ROOM + 3;

/** A tree is cut unless its Take says No, as in the harvest on the sheet Stand. */
const take = `IF(${column(TREES, tree.harvestDbh)}="","No","Yes")`;
const tallied = [column(TREES, tree.plot), counting(tree.dbh), take] as const;
const stays = `COUNTIF(${column(TREES, tree.take)},"No")`;

const partFormats = [
  formats.general,
  ...[formats.tenth, formats.tenth, formats.tenth, formats.tenth, formats.tenth],
  ...[formats.tenth, formats.tenth, formats.tenth],
  ...[formats.volume, formats.volume, formats.volume],
];

/** Before, cut and leave: by the stand, by how crowded it is, by diameter and by species. */
export const cutSheet = (): SheetPlan =>
  sheetPlan({
    name: CUT,
    sheetClass: "presentation",
    landscape: true,
    frozenRows: 6,
    widths: [40, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13],
    blocks: [
      title("What to cut"),
      down("A2", "Computed", [
        {
          formula: `=IF(${stays}=0,"No tree is marked to stay, so all of them are cut here. Put No under Take on the sheet Trees for each tree that stays.","A tree is cut unless its Take on the sheet Trees says No: "&${stays}&" rows stay.")`,
        },
      ]),
      down("A3", "Note", [cautionLine("Forester"), cautionLine("Felling"), cautionLine("Estimate")]),
      heading("A8", "The stand per acre; volume in board feet by the log rule", 6),
      heading("A15", "How crowded", 4),
      heading(`A${CLASSES_AT - 1}`, "By diameter class, per acre; margins are those of the trees", partFormats.length),
      heading(`A${SPECIES_AT - 1}`, "By species, per acre; margins are those of the trees", partFormats.length),
    ],
    spills: [
      {
        name: out.cut,
        at: "A9",
        formula: `=${call(
          "CUTSUMMARY",
          ...tallied,
          ...[column(PLOTS, plot.counted), named.method, sizes],
          ...[column(TREES, tree.volume), column(TREES, tree.count), ...weighting, named.units],
        )}`,
        rows: 4,
        columns: 6,
        headingLines: 3,
        formats: [formats.general, formats.tenth, formats.tenth, formats.tenth, formats.volume, formats.whole],
      },
      {
        name: out.cutDensity,
        at: "A16",
        formula: `=${call(
          "DENSITYSUMMARY",
          ...tallied,
          ...[column(PLOTS, plot.counted), named.method, sizes],
          ...[column(TREES, tree.count), ...weighting, named.units],
        )}`,
        rows: 5,
        columns: 4,
        formats: [formats.general, formats.tenth, formats.tenth, formats.general],
      },
      {
        name: out.cutClasses,
        at: `A${CLASSES_AT}`,
        formula: `=${call(
          "CUTBYCLASS",
          ...tallied,
          ...[column(PLOTS, plot.counted), named.method, sizes],
          ...[column(TREES, tree.volume), named.classWidth, column(TREES, tree.count), named.confidence],
          ...[named.classRule, ...drawing, named.units],
        )}`,
        rows: CLASS_ROOM,
        columns: partFormats.length,
        headingLines: 3,
        formats: partFormats,
      },
      {
        name: out.cutSpecies,
        at: `A${SPECIES_AT}`,
        formula: `=${call(
          "CUTBYSPECIES",
          column(TREES, tree.plot),
          ...[column(TREES, tree.species), counting(tree.dbh), take],
          ...[column(PLOTS, plot.counted), named.method, sizes],
          ...[column(TREES, tree.volume), column(TREES, tree.count), named.confidence],
          ...[...drawing, named.units],
        )}`,
        rows: LAST_ROW - SPECIES_AT,
        columns: partFormats.length,
        headingLines: 3,
        formats: partFormats,
      },
    ],
  });
