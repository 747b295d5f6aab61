import type { TableRow } from "../workbook/plan";
import { tree } from "../workbook/tables";

/**
 * Invented trees, one line for each point from 1 to 14: species, DBH in inches, 16-ft logs, then "c" with a cull
 * in percent, and "keep" for a seed tree or a young one that stays. 132 trees in all.
 */
const points: readonly string[] = [
  "wo 16.9 2 c15, ro 12.0 1, ro 16.8 1.5, hi 12.6 1 c15, wo 11.8 1, wo 14.4 1.5, yp 17.5 2.5, wo 17.9 1.5 keep, yp 15.9 1.5",
  "wo 15.6 1.5, ro 20.9 2, wo 13.0 1.5, yp 16.0 2 c25, ro 18.5 1.5, wo 12.7 1 c5, hi 12.9 1 c25, wo 15.2 1, yp 13.9 2, wo 12.8 1, wo 12.4 1",
  "sm 11.0 1 keep, wo 17.0 1.5, wo 13.1 1, sm 14.1 1.5, wo 14.9 1.5, wo 17.2 2, yp 20.7 2",
  "yp 17.9 2, sm 12.4 1, wo 15.6 2 c15, ro 18.3 2 keep, sm 14.4 1.5, wo 16.2 2, wo 18.3 2 keep, ro 15.6 1.5 c15, wo 13.0 1, wo 13.7 1, sm 14.9 1, sm 10.1 1 keep",
  "yp 17.0 2.5, yp 17.4 2.5, hi 13.4 1, sm 11.0 1 keep, hi 13.6 1, wo 15.4 1.5, wo 14.4 1 c10, yp 11.4 1.5, yp 12.6 1, wo 18.9 1.5",
  "ro 20.0 2.5, bc 17.4 2, sm 12.8 1, sm 13.5 1, bc 12.6 1, wo 12.8 1, wo 18.2 2.5, sm 16.7 2",
  "sm 11.9 1 c10, yp 15.4 1.5, ro 12.0 1 c25, sm 12.4 1 c15, ro 13.6 1.5 c10, sm 13.8 1, sm 10.6 1 keep, sm 13.9 1, ro 12.7 1 c10, wo 13.2 1, wo 11.9 1.5, sm 15.8 1.5, wo 16.1 1.5",
  "ro 14.1 1, hi 11.6 1, ro 17.4 1.5, wo 16.4 1.5, ro 15.2 1.5, ro 14.4 1.5",
  "yp 23.1 3, hi 10.7 1 keep, wo 13.6 2, bc 13.5 1.5 c10, ro 16.2 1.5, wo 12.6 1.5, ro 18.2 2 c5, ro 18.6 2.5, ro 11.0 1 keep, hi 13.2 1",
  "hi 11.3 1, sm 11.3 1, bc 15.4 1.5, ro 17.6 2.5, hi 16.6 1.5 c25, yp 16.1 2 c10, bc 12.6 1, wo 12.9 1, ro 23.8 2.5",
  "hi 12.1 1 c10, ro 14.7 2, yp 21.2 3, sm 11.7 1, ro 21.5 2 keep, yp 11.7 1, sm 12.5 1.5, bc 12.9 1, yp 16.0 2, ro 11.4 1, hi 12.3 1 c25",
  "wo 18.7 2.5, sm 12.1 1 c5, yp 12.2 1.5, ro 15.3 1.5 c10",
  "ro 15.6 1.5, wo 15.1 1.5, wo 18.3 2 keep, wo 12.0 1, ro 11.8 1, ro 16.2 2, wo 15.5 2, ro 15.3 1 c15, hi 13.1 1, hi 13.3 1, sm 16.0 1.5, sm 12.9 1.5",
  "bc 11.3 1 c10, yp 16.3 1.5, wo 17.0 2, wo 16.2 2 c25, wo 13.8 1, sm 14.8 1, ro 18.1 2.5, ro 19.1 2 keep, hi 15.2 1.5, hi 10.4 1 keep",
];

/** Above this a tree that stays is a seed tree, below it a young one. [in] */
const SEED_TREE = 16;

export const demoTrees: readonly TableRow[] = points.flatMap((line, point) =>
  line.split(", ").map((text) => treeRow(point + 1, text)),
);

function treeRow(point: number, text: string): TableRow {
  const [species = "", dbh = "", logs = "", ...marks] = text.split(" ");
  const cull = marks.find((mark) => mark.startsWith("c"));
  const stays = marks.includes("keep");
  return {
    [tree.plot]: point,
    [tree.species]: species,
    [tree.dbh]: Number(dbh),
    [tree.logs]: Number(logs),
    ...(cull !== undefined && { [tree.cull]: Number(cull.slice(1)) }),
    ...(stays && { [tree.take]: "No", [tree.note]: Number(dbh) > SEED_TREE ? "seed tree" : "young, let it grow" }),
  };
}
