import {
  BOARDS,
  LOGS,
  log as logHeading,
  PLOTS,
  plot as plotHeading,
  sawn as sawnHeading,
  SPECIES,
  species as speciesHeading,
  tree as treeHeading,
  TREES,
} from "../../workbook/tables";
import type { Place } from "../../workbook/host";
import type { TableRow } from "../../workbook/plan";
import type { Job, SavedTree } from "./job";

/** A change that would settle a finding. */
export interface Fix {
  readonly label: string;
  readonly table: string;
  /** Row to change; undefined adds a row. */
  readonly row: number | undefined;
  readonly changes: TableRow;
}

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
];

const ofTrees = (job: Job) =>
  job.trees
    .filter(({ check }) => check !== "")
    .map((saved): Finding => ({
      id: `${TREES} ${saved.row}`,
      where: saved.plot === "" ? `Tree in row ${saved.row + 1}` : `Point ${saved.plot}, tree in row ${saved.row + 1}`,
      says: saved.check,
      place: { table: TREES, row: saved.row, heading: cellInDoubt(saved.check) },
      fixes: [...misplacedPoint(saved, job), ...newSpecies(saved, job)],
      // A tree without volume leaves the whole stand without one: no reason of the owner's can mend that.
      canAccept: !saved.check.includes("no volume"),
      accepted: saved.accepted,
    }));

/** 143 was meant as 14.3 when a tenth of it is a diameter that the checks let pass. */
function misplacedPoint({ row, tree, check }: SavedTree, { minDbh, maxDbh }: Job): readonly Fix[] {
  const tenth = Number((tree.dbh / 10).toFixed(2));
  if (!check.startsWith("DBH") || tree.dbh <= maxDbh || tenth < minDbh || tenth > maxDbh) return [];
  return [{ label: `Use ${tenth}`, table: TREES, row, changes: { [treeHeading.dbh]: tenth } }];
}

function newSpecies({ tree, check }: SavedTree, { species }: Job): readonly Fix[] {
  const known = species.some(({ code }) => code.toLowerCase() === tree.species.toLowerCase());
  if (known || tree.species === "" || !check.includes("species list")) return [];
  return [
    {
      label: `Add ${tree.species}`,
      table: SPECIES,
      row: undefined,
      changes: { [speciesHeading.code]: tree.species, [speciesHeading.name]: tree.species },
    },
  ];
}

const cellInDoubt = (check: string) =>
  check.startsWith("DBH")
    ? treeHeading.dbh
    : /species/i.test(check)
      ? treeHeading.species
      : /logs/i.test(check)
        ? treeHeading.logs
        : treeHeading.plot;

const ofPlots = (job: Job) =>
  job.plots
    .filter(({ check }) => check !== "")
    .map(({ row, name, check }): Finding => ({
      id: `${PLOTS} ${row}`,
      where: `Point ${name}`,
      says: check,
      place: { table: PLOTS, row, heading: plotHeading.visited },
      fixes: job.trees.some((saved) => saved.plot === name)
        ? [
            {
              label: "It was visited",
              table: PLOTS,
              row,
              changes: { [plotHeading.visited]: "Yes", [plotHeading.none]: null },
            },
          ]
        : [
            {
              label: "It is empty",
              table: PLOTS,
              row,
              changes: { [plotHeading.visited]: "Yes", [plotHeading.none]: "Yes" },
            },
            {
              label: "Not visited yet",
              table: PLOTS,
              row,
              changes: { [plotHeading.visited]: "No", [plotHeading.none]: null },
            },
          ],
      canAccept: false,
      accepted: "",
    }));

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
