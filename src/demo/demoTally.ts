import type { TableRow } from "../workbook/plan";
import { tree } from "../workbook/tables";

/**
 * Invented trees, one line for each point from 1 to 14: species, DBH in inches, 16-ft logs, "h" with the total height
 * in feet, then "c" with a cull in percent, and "keep" for a seed tree or a young one that stays. 132 trees in all.
 */
const points: readonly string[] = [
  "wo 16.9 2 h76 c15, ro 12.0 1 h65, ro 16.8 1.5 h70, hi 12.6 1 h62 c15, wo 11.8 1 h62, wo 14.4 1.5 h65, yp 17.5 2.5 h86, wo 17.9 1.5 h66 keep, yp 15.9 1.5 h84",
  "wo 15.6 1.5 h62, ro 20.9 2 h79, wo 13.0 1.5 h63, yp 16.0 2 h86 c25, ro 18.5 1.5 h76, wo 12.7 1 h61 c5, hi 12.9 1 h68 c25, wo 15.2 1 h66, yp 13.9 2 h78, wo 12.8 1 h58, wo 12.4 1 h63",
  "sm 11.0 1 h56 keep, wo 17.0 1.5 h70, wo 13.1 1 h62, sm 14.1 1.5 h65, wo 14.9 1.5 h62, wo 17.2 2 h75, yp 20.7 2 h96",
  "yp 17.9 2 h98, sm 12.4 1 h57, wo 15.6 2 h61 c15, ro 18.3 2 h71 keep, sm 14.4 1.5 h65, wo 16.2 2 h65, wo 18.3 2 h69 keep, ro 15.6 1.5 h70 c15, wo 13.0 1 h64, wo 13.7 1 h63, sm 14.9 1 h70, sm 10.1 1 h51 keep",
  "yp 17.0 2.5 h91, yp 17.4 2.5 h87, hi 13.4 1 h58, sm 11.0 1 h64 keep, hi 13.6 1 h64, wo 15.4 1.5 h62, wo 14.4 1 h59 c10, yp 11.4 1.5 h74, yp 12.6 1 h75, wo 18.9 1.5 h73",
  "ro 20.0 2.5 h80, bc 17.4 2 h81, sm 12.8 1 h62, sm 13.5 1 h65, bc 12.6 1 h74, wo 12.8 1 h62, wo 18.2 2.5 h72, sm 16.7 2 h74",
  "sm 11.9 1 h65 c10, yp 15.4 1.5 h81, ro 12.0 1 h62 c25, sm 12.4 1 h59 c15, ro 13.6 1.5 h64 c10, sm 13.8 1 h63, sm 10.6 1 h48 keep, sm 13.9 1 h62, ro 12.7 1 h63 c10, wo 13.2 1 h58, wo 11.9 1.5 h55, sm 15.8 1.5 h74, wo 16.1 1.5 h67",
  "ro 14.1 1 h74, hi 11.6 1 h62, ro 17.4 1.5 h78, wo 16.4 1.5 h65, ro 15.2 1.5 h68, ro 14.4 1.5 h73",
  "yp 23.1 3 h101, hi 10.7 1 h57 keep, wo 13.6 2 h61, bc 13.5 1.5 h72 c10, ro 16.2 1.5 h72, wo 12.6 1.5 h59, ro 18.2 2 h73 c5, ro 18.6 2.5 h78, ro 11.0 1 h57 keep, hi 13.2 1 h59",
  "hi 11.3 1 h62, sm 11.3 1 h58, bc 15.4 1.5 h71, ro 17.6 2.5 h73, hi 16.6 1.5 h64 c25, yp 16.1 2 h87 c10, bc 12.6 1 h64, wo 12.9 1 h61, ro 23.8 2.5 h84",
  "hi 12.1 1 h61 c10, ro 14.7 2 h73, yp 21.2 3 h96, sm 11.7 1 h65, ro 21.5 2 h76 keep, yp 11.7 1 h75, sm 12.5 1.5 h62, bc 12.9 1 h74, yp 16.0 2 h84, ro 11.4 1 h63, hi 12.3 1 h55 c25",
  "wo 18.7 2.5 h71, sm 12.1 1 h65 c5, yp 12.2 1.5 h80, ro 15.3 1.5 h69 c10",
  "ro 15.6 1.5 h73, wo 15.1 1.5 h64, wo 18.3 2 h72 keep, wo 12.0 1 h55, ro 11.8 1 h64, ro 16.2 2 h72, wo 15.5 2 h68, ro 15.3 1 h72 c15, hi 13.1 1 h55, hi 13.3 1 h61, sm 16.0 1.5 h66, sm 12.9 1.5 h61",
  "bc 11.3 1 h62 c10, yp 16.3 1.5 h87, wo 17.0 2 h63, wo 16.2 2 h64 c25, wo 13.8 1 h59, sm 14.8 1 h72, ro 18.1 2.5 h69, ro 19.1 2 h80 keep, hi 15.2 1.5 h66, hi 10.4 1 h56 keep",
];

/** Above this a tree that stays is a seed tree, below it a young one. [in] */
const SEED_TREE = 16;

export const demoTrees: readonly TableRow[] = points.flatMap((line, point) =>
  line.split(", ").map((text) => treeRow(point + 1, text)),
);

function treeRow(point: number, text: string): TableRow {
  const [species = "", dbh = "", logs = "", ...marks] = text.split(" ");
  const marked = (letter: string) => marks.find((mark) => mark.startsWith(letter))?.slice(1);
  const [height, cull] = [marked("h"), marked("c")];
  const stays = marks.includes("keep");
  return {
    [tree.plot]: point,
    [tree.species]: species,
    [tree.dbh]: Number(dbh),
    [tree.logs]: Number(logs),
    [tree.height]: Number(height),
    ...(cull !== undefined && { [tree.cull]: Number(cull) }),
    ...(stays && { [tree.take]: "No", [tree.note]: Number(dbh) > SEED_TREE ? "seed tree" : "young, let it grow" }),
  };
}
