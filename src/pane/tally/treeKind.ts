import { tree as heading, TREES } from "../../workbook/tables";
import { TREES_SHEET } from "../../workbook/sheets/trees";
import type { EntryKind } from "../entry/entryKind";
import { heightIs, samePlot, type Job, type SavedTree } from "../job/job";
import { treesOf } from "../job/readTables";
import type { TallyState } from "../paneState";
import { parseTallyLine } from "./parseTallyLine";
import { sayTree } from "./sayTree";
import type { PlacedTree } from "./tallyTree";
import { writeTallyLine } from "./writeTallyLine";

const saved = ({ row, plot, tree }: SavedTree) => ({ row, entry: { plot, tree } });

/** Trees of a tally, as lines of the point that is being tallied. */
export const treeKind = (job: () => Job, now: () => TallyState): EntryKind<PlacedTree> => ({
  table: TREES,
  sheet: TREES_SHEET,
  saved: () => job().trees.map(saved),
  savedIn: (table) => treesOf(table).map(saved),
  write: ({ tree }) => writeTallyLine(tree, heightIs(job())),
  say: ({ tree }) => sayTree(tree, job().species, heightIs(job())),
  key: ({ plot, tree }) => `${plot.trim().toLowerCase()} ${writeTallyLine(tree)}`,
  whereabouts: ({ plot }) => ` of point ${plot}`,
  isHere: ({ plot }) => samePlot(plot, now().plot),
  nothingToUndo: () => `Point ${now().plot} has no line to take back.`,

  read(text) {
    const { pending, plot } = now();
    const here = job().trees.filter((one) => samePlot(one.plot, plot));
    const last = pending.at(-1)?.entry.tree ?? here.at(-1)?.tree ?? job().trees.at(-1)?.tree;
    const known = last && last.species !== "" ? last.species : undefined;
    const line = parseTallyLine(text, { species: job().species, lastSpecies: known, heightIs: heightIs(job()) });
    return line.kind === "tree" ? { kind: "entry", entry: { plot, tree: line.tree } } : line;
  },

  row: ({ plot, tree: { species, dbh, logs, height, count, cull, distance, note } }) => ({
    // As its own table has the point: a number where the workbook has a number.
    [heading.plot]: job().plots.find((one) => samePlot(one.name, plot))?.value ?? plot,
    [heading.species]: species,
    [heading.dbh]: dbh,
    [heading.logs]: logs,
    [heading.height]: height,
    [heading.count]: count,
    [heading.cull]: cull,
    [heading.distance]: distance ?? null,
    [heading.note]: note === "" ? null : note,
  }),
});
