import type { WorkbookHost } from "../../workbook/host";
import type { TableRow } from "../../workbook/plan";
import { named, NESTED, nested, plot, PLOTS, STRATA, stratum, tree, TREES } from "../../workbook/tables";
import { number, positive, text } from "../job/cells";
import type { Job } from "../job/job";
import type { TreesJob, TreesSample } from "./jobs";

/** The trees that may be felled, with the plots that count in the workbook's own means, or what is lacking. */
export async function readTrees(
  host: WorkbookHost,
  job: Job,
  common: Pick<TreesJob, "pieces" | "kerf" | "mill">,
  classWidth: number,
): Promise<TreesJob | string> {
  const [plots, trees] = await Promise.all([host.readTable(PLOTS), host.readTable(TREES)]);
  const counted = plots.rows.filter((row) => text(row[plot.counted]) !== "");
  const places = new Map(counted.map((row, i) => [text(row[plot.counted]).toLowerCase(), i]));
  const felled = trees.rows.flatMap((row) => {
    const dbh = positive(row[tree.dbh]);
    const place = places.get(text(row[tree.plot]).toLowerCase());
    if (dbh === null || place === undefined || text(row[tree.take]).toLowerCase() === "no") return [];
    return [{ plot: place, dbh, logs: positive(row[tree.logs]) ?? 0, count: positive(row[tree.count]) ?? 1 }];
  });
  const { method, formClass, acres, acresMargin, confidence } = job;
  const least = method === "All" ? 1 : 2;
  if (counted.length < least || felled.length === 0)
    return "It takes a cruise of 2 points or more with trees that may be felled.";
  const sample = await readSample(host, job, counted);
  if (typeof sample === "string") return sample;
  return {
    kind: "trees",
    ...common,
    method,
    sample,
    trees: felled,
    formClass,
    acres,
    acresMargin,
    confidence,
    classWidth,
  };
}

async function readSample(host: WorkbookHost, job: Job, counted: readonly TableRow[]): Promise<TreesSample | string> {
  const rowsOf = async (name: string) => ((await host.hasTable(name)) ? (await host.readTable(name)).rows : []);
  const [strata, nests, settings] = await Promise.all([
    rowsOf(STRATA),
    rowsOf(NESTED),
    host.readNames([named.population]),
  ]);
  const nestedPlots = nests.flatMap((row) => {
    const size = positive(row[nested.size]);
    return size === null ? [] : [{ leastDbh: number(row[nested.least]) ?? 0, size }];
  });
  const sizes = counted.map((row) => sizeOn(row, job));
  const without = sizes.indexOf(null);
  if (without >= 0 && nestedPlots.length === 0)
    return `Point ${text(counted[without]?.[plot.plot])} has no size: give its factor or its acres under Own size on Points, or one for all on Setup.`;
  return {
    sizes: sizes.map((size) => size ?? 0),
    nested: nestedPlots,
    strata: strata.flatMap((row) => {
      const name = text(row[stratum.stratum]);
      return name === "" ? [] : [{ name, acres: positive(row[stratum.acres]) ?? 0 }];
    }),
    stratum: counted.map((row) => text(row[plot.stratum])),
    cluster: counted.map((row) => text(row[plot.cluster])),
    population: positive(settings[named.population]),
  };
}

/** As the sheet has it, its sweep reckoned in; a plot that has nothing of its own has that of Setup. */
function sizeOn(row: TableRow, { size }: Job): number | null {
  const used = positive(row[plot.sizeUsed]);
  if (used !== null) return used;
  const sweep = text(row[plot.sweep]).toLowerCase();
  return positive(row[plot.size]) === null && (sweep === "" || sweep === "full") ? positive(size) : null;
}
