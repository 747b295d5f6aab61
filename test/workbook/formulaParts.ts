import type { SheetPlan } from "../../src/workbook/plan";

/** A formula of a plan and where it stands. */
export interface PlannedFormula {
  readonly where: string;
  readonly sheet: string;
  readonly formula: string;
}

/** Every formula of the plans: of cells, of computed columns and of spills. */
export const formulasOf = (plans: readonly SheetPlan[]): readonly PlannedFormula[] =>
  plans.flatMap((plan) => {
    const on = (at: string, formula: string) => ({ where: `${plan.name} ${at}`, sheet: plan.name, formula });
    const cells = plan.blocks.flatMap(({ at, cells }) =>
      cells.flat().flatMap((cell) => (typeof cell === "object" && cell !== null ? [on(at, cell.formula)] : [])),
    );
    const columns = plan.tables.flatMap(({ name, columns }) =>
      columns.flatMap(({ heading, formula }) => (formula === undefined ? [] : [on(`${name}[${heading}]`, formula)])),
    );
    return [...cells, ...columns, ...plan.spills.map(({ name, formula }) => on(name, formula))];
  });

/** The formula without the texts in it, which may hold anything. */
export const withoutTexts = (formula: string): string => formula.replace(/"(?:[^"]|"")*"/g, '""');

/** Pairs of table and heading that a formula refers to. */
export function columnsIn(formula: string): readonly (readonly [table: string, heading: string])[] {
  const bare = withoutTexts(formula);
  return [...bare.matchAll(/([A-Za-z_]\w*)\[((?:\[[^\]]*\][,:]?)+|[^[\]]+)\]/g)].flatMap(
    ([, table = "", inside = ""]) => {
      const parts = inside.startsWith("[")
        ? [...inside.matchAll(/\[([^\]]*)\]/g)].map(([, part = ""]) => part)
        : [inside];
      return parts.filter((part) => part !== "#This Row").map((part) => [table, part] as const);
    },
  );
}

/** Our functions that a formula calls. */
export const callsIn = (formula: string): readonly string[] =>
  [...withoutTexts(formula).matchAll(/WOODLOT\.(\w+)\(/g)].map(([, name = ""]) => name);

/** Words of a formula that can only be defined names: no function, no table, no cell, no sheet. */
export function namesIn(formula: string): readonly string[] {
  const bare = withoutTexts(formula)
    .replace(/[A-Za-z_]\w*\[(?:\[[^\]]*\][,:]?)+\]|[A-Za-z_]\w*\[[^[\]]+\]/g, " ")
    .replace(/(?:'[^']*'|\w+)!/g, " ")
    .replace(/(?<![A-Za-z])\$?[A-Z]{1,3}\$?\d+(?![\w(])/g, " ")
    .replace(/WOODLOT\.\w+\(/g, "(");
  return [...bare.matchAll(/[A-Za-z_][\w.]*(?!\w*\()/g)]
    .map(([word]) => word)
    .filter((word) => !bare.includes(`${word}(`));
}

/** Cells that a formula refers to on its own sheet or another, with the sheet. */
export function cellsIn({ formula, sheet }: PlannedFormula): readonly (readonly [sheet: string, address: string])[] {
  const bare = withoutTexts(formula).replace(/\[[^\]]*\]/g, "[]");
  return [...bare.matchAll(/(?:('[^']*'|\w+)!)?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)(?![\w(])/g)].map(
    ([, other, address = ""]) => [other?.replace(/'/g, "") ?? sheet, address] as const,
  );
}
