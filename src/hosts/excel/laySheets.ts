import { HostProblem } from "../../workbook/host";
import type { SheetPlan } from "../../workbook/plan";
import { layFormulas } from "./layFormulas";
import { layPage } from "./layPage";
import { layStyles } from "./layStyles";
import { layValues } from "./layValues";

/** A sheet that stands in for the only ones there are, while they are replaced. */
const PLACEHOLDER = "Laying sheets";

/**
 * Lays sheets in two passes, since formulas refer to tables and names of other sheets: first values, tables and
 * names of all, then formulas. A sheet of the same name is replaced. Four or five round trips, however many sheets.
 */
export async function laySheets(context: Excel.RequestContext, plans: readonly SheetPlan[]): Promise<void> {
  if (plans.length === 0) return;
  const { workbook } = context;
  await layStyles(context);
  const placeholder = await clearTheGround(context, plans);

  workbook.application.suspendScreenUpdatingUntilNextSync();
  const sheets = plans.map((plan) => workbook.worksheets.add(plan.name));
  plans.forEach((plan, i) => layValues(sheets[i] as Excel.Worksheet, plan, workbook));
  placeholder?.delete();
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
 * Takes away the sheets that are replaced, with their tables and names; refuses to touch what is not ours.
 * @returns a sheet that has to go once there are others
 */
async function clearTheGround(
  context: Excel.RequestContext,
  plans: readonly SheetPlan[],
): Promise<Excel.Worksheet | undefined> {
  const { worksheets, names, tables } = context.workbook;
  worksheets.load("items/name");
  names.load("items/name");
  tables.load("items/name");
  await context.sync();

  const isReplaced = ({ name }: { readonly name: string }) => worksheets.items.some((sheet) => same(sheet.name, name));
  const replaced = worksheets.items.filter((sheet) => plans.some((plan) => same(plan.name, sheet.name)));
  replaced.forEach((sheet) => sheet.tables.load("items/name"));
  if (replaced.length > 0) await context.sync();

  const tablesThatGo = replaced.flatMap((sheet) => sheet.tables.items.map(({ name }) => name));
  const tablesThatStay = tables.items.filter(({ name }) => !tablesThatGo.includes(name));
  refuseTaken(
    "table",
    tablesThatStay,
    plans.flatMap((plan) => plan.tables),
  );
  const newPlans = plans.filter((plan) => !isReplaced(plan));
  refuseTaken(
    "cell",
    names.items,
    newPlans.flatMap((plan) => [...plan.names, ...plan.spills]),
  );

  const namesThatGo = plans.filter(isReplaced).flatMap((plan) => [...plan.names, ...plan.spills]);
  names.items.filter((item) => namesThatGo.some(({ name }) => same(name, item.name))).forEach((item) => item.delete());
  const placeholder =
    replaced.length > 0 && replaced.length === worksheets.items.length ? worksheets.add(PLACEHOLDER) : undefined;
  replaced.forEach((sheet) => sheet.delete());
  return placeholder;
}

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
