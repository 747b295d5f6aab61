import { addressOf, zoneAt } from "../../workbook/address";
import { HostProblem } from "../../workbook/host";
import type { SheetPlan } from "../../workbook/plan";
import { layFormulas } from "./layFormulas";
import { layPage } from "./layPage";
import { layStyles } from "./layStyles";
import { layValues } from "./layValues";

/**
 * Lays sheets in two passes, since formulas refer to tables and names of other sheets: first values, tables and
 * names of all, then formulas. A sheet of the same name is emptied and laid anew. Four or five round trips, however
 * many sheets.
 */
export async function laySheets(context: Excel.RequestContext, plans: readonly SheetPlan[]): Promise<void> {
  if (plans.length === 0) return;
  const { workbook } = context;
  await layStyles(context);
  workbook.application.suspendScreenUpdatingUntilNextSync();
  const sheets = await clearTheGround(context, plans);
  plans.forEach((plan, i) => layValues(sheets[i] as Excel.Worksheet, plan, workbook));
  await context.sync();

  workbook.application.suspendScreenUpdatingUntilNextSync();
  plans.forEach((plan, i) => {
    layFormulas(sheets[i] as Excel.Worksheet, plan);
    layPage(sheets[i] as Excel.Worksheet, plan);
  });
  sheets[0]?.activate();
  await context.sync();
}

/**
 * Empties the sheets that are replaced, with their tables and names, and adds those that are missing. A sheet is not
 * deleted, so that formulas elsewhere that point to its cells go on doing so. Refuses to touch what is not ours.
 */
async function clearTheGround(
  context: Excel.RequestContext,
  plans: readonly SheetPlan[],
): Promise<readonly Excel.Worksheet[]> {
  const { worksheets, names, tables } = context.workbook;
  worksheets.load("items/name");
  names.load("items/name");
  tables.load("items/name");
  await context.sync();

  const standing = (plan: SheetPlan) => worksheets.items.find((sheet) => same(sheet.name, plan.name));
  const replaced = plans.flatMap((plan) => standing(plan) ?? []);
  replaced.forEach((sheet) => sheet.tables.load("items/name"));
  const used = replaced.map((sheet) => sheet.getUsedRangeOrNullObject().load("address"));
  if (replaced.length > 0) await context.sync();

  const tablesThatGo = replaced.flatMap((sheet) => sheet.tables.items);
  const goes = new Set(tablesThatGo.map(({ name }) => name));
  const newPlans = plans.filter((plan) => !standing(plan));
  refuseTaken(
    "table",
    tables.items.filter(({ name }) => !goes.has(name)),
    plans.flatMap((plan) => plan.tables),
  );
  refuseTaken("cell", names.items, newPlans.flatMap(namesOf));

  tablesThatGo.forEach((table) => table.delete());
  used.forEach((range, i) => {
    if (range.isNullObject) return;
    // By its address: a used range is looked for anew, and is gone once it was emptied.
    const cells = replaced[i]?.getRange(addressOf(zoneAt(range.address)));
    cells?.dataValidation.clear();
    cells?.conditionalFormats.clearAll();
    cells?.clear();
  });
  // Last, when no formula asks for them any more: a name that goes has every formula of the workbook looked through.
  const namesThatGo = plans.filter(standing).flatMap(namesOf);
  names.items.filter((item) => namesThatGo.some(({ name }) => same(name, item.name))).forEach((item) => item.delete());
  return plans.map((plan) => standing(plan) ?? worksheets.add(plan.name));
}

const namesOf = (plan: SheetPlan) => [...plan.names, ...plan.spills];

function refuseTaken(
  what: string,
  taken: readonly { readonly name: string }[],
  planned: readonly { readonly name: string }[],
): void {
  const both = planned.find(({ name }) => taken.some((item) => same(item.name, name)));
  if (!both) return;
  throw new HostProblem(
    "refused",
    `This workbook already has a ${what} named ${both.name} that this add-in did not make. Open a new workbook, then try again; nothing was changed.`,
  );
}

/** Excel compares names of sheets, tables and cells without regard to case. */
const same = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();
