import {
  BOARDS,
  LOGS,
  log as logHeading,
  PLOTS,
  plot as plotHeading,
  price as priceHeading,
  PRICES,
  sawn as sawnHeading,
  TREES,
} from "../../workbook/tables";
import type { Place } from "../../workbook/host";
import type { Fix } from "./fix";
import type { Job } from "./job";
import { takesStandAway } from "./takesStandAway";
import { cellInDoubt, treeFixes } from "./treeFixes";

/** Something a Check column asks to look at. */
export interface Finding {
  readonly id: string;
  /** Where it is, in words: "Point 6, tree 3". */
  readonly where: string;
  /** The sentence in the Check column. */
  readonly says: string;
  readonly place: Place;
  readonly fixes: readonly Fix[];
  /** True where the workbook has a place for the reason to keep it. */
  readonly canAccept: boolean;
  /** The reason why it was kept; "" while it is open. */
  readonly accepted: string;
}

/** All that the Check columns say, in the order of the sheets. */
export const findings = (job: Job): readonly Finding[] => [
  ...ofPlots(job),
  ...ofTrees(job),
  ...ofLogs(job),
  ...ofBoards(job),
  ...ofPrices(job),
];

const ofTrees = (job: Job) =>
  job.trees
    .filter(({ check }) => check !== "")
    .map((saved): Finding => ({
      id: `${TREES} ${saved.row}`,
      where: saved.plot === "" ? `Tree in row ${saved.row + 1}` : `Point ${saved.plot}, tree in row ${saved.row + 1}`,
      says: saved.check,
      place: { table: TREES, row: saved.row, heading: cellInDoubt(saved.check) },
      fixes: treeFixes(saved, job),
      // No reason of the owner's gives the stand its volume back.
      canAccept: !takesStandAway(saved),
      accepted: saved.accepted,
    }));

const ofPlots = (job: Job) =>
  job.plots
    .filter(({ check }) => check !== "")
    .map(({ row, name, check, accepted }): Finding => ({
      id: `${PLOTS} ${row}`,
      where: `Point ${name}`,
      says: check,
      place: { table: PLOTS, row, heading: plotHeading.visited },
      fixes: plotFixes(row, check),
      canAccept: ENTERED_TWICE.test(check),
      accepted,
    }));

/** Only a likeness can be right as it is; a plot that is marked wrong has to be marked anew. */
const ENTERED_TWICE = /Was .*entered/;

function plotFixes(row: number, check: string): readonly Fix[] {
  const mark = (label: string, visited: string, none: string | null): Fix => ({
    label,
    table: PLOTS,
    row,
    changes: { [plotHeading.visited]: visited, [plotHeading.none]: none },
  });
  if (check.startsWith("Marked as having no trees")) return [mark("It was visited", "Yes", null)];
  if (!check.startsWith("No trees")) return [];
  return [mark("It is empty", "Yes", "Yes"), mark("Not visited yet", "No", null)];
}

const ofLogs = (job: Job) =>
  job.logs
    .filter(({ check }) => check !== "")
    .map(({ row, name, check }): Finding => ({
      id: `${LOGS} ${row}`,
      where: name === "" ? `Log in row ${row + 1}` : `Log ${name}`,
      says: check,
      place: { table: LOGS, row, heading: logHeading.check },
      fixes: [],
      canAccept: false,
      accepted: "",
    }));

const ofBoards = (job: Job) =>
  job.boards
    .filter(({ check }) => check !== "")
    .map(({ row, check }): Finding => ({
      id: `${BOARDS} ${row}`,
      where: `Board in row ${row + 1}`,
      says: check,
      place: { table: BOARDS, row, heading: sawnHeading.check },
      fixes: [],
      canAccept: false,
      accepted: "",
    }));

const ofPrices = (job: Job) =>
  job.prices
    .filter(({ check }) => check !== "")
    .map(({ row, product, check }): Finding => ({
      id: `${PRICES} ${row}`,
      where: product === "" ? `Price in row ${row + 1}` : `Price of ${product}`,
      says: check,
      place: { table: PRICES, row, heading: priceHeading.source },
      fixes: [],
      canAccept: false,
      accepted: "",
    }));
