import type { Highs } from "highs";
import type { NewLinearProgram } from "../../core/sawing/wanted/linearProgram";

/** As the solver's primal_solution_status tells it. */
const SOLUTION_IS_SOUND = 2;

/** Linear programmes by HiGHS (MIT), an open solver compiled for the browser. */
export const highsProgram =
  (highs: Highs): NewLinearProgram =>
  (rows) => {
    const model = highs.createModel();
    model.options.set({ output_flag: false, random_seed: 1 });
    const bound = (value: number) => (Number.isFinite(value) ? value : Math.sign(value) * highs.infinity);
    for (const { low, high } of rows) model.addRow(bound(low), bound(high), { indices: [], values: [] });

    let columnsIn = 0;

    return {
      add(columns) {
        columnsIn += columns.length;
        for (const { cost, entries, most = Infinity } of columns) {
          model.addCol(cost, 0, bound(most), {
            indices: entries.map(([row]) => row),
            values: entries.map(([, amount]) => amount),
          });
        }
      },

      atLeast(column, amount) {
        model.changeColBounds(column, amount, highs.infinity);
      },

      solve() {
        model.run();
        if (model.getModelStatus() !== highs.constants.modelStatus.optimal) {
          throw new Error("The linear programme has no answer.");
        }
        const { colValue, rowDual } = model.getSolution();
        return { cost: model.getObjectiveValue(), amounts: colValue, rowPrices: rowDual };
      },

      solveWhole(branches) {
        const { continuous, integer } = highs.constants.variableType;
        const all = Array.from({ length: columnsIn }, (_, i) => i);
        const as = (type: typeof integer | typeof continuous) =>
          model.changeColsIntegrality(
            { kind: "set", indices: all },
            all.map(() => type),
          );
        as(integer);
        model.options.set({ mip_max_nodes: branches });
        model.run();
        const found = Number(model.info.get("primal_solution_status")) === SOLUTION_IS_SOUND;
        const { colValue } = model.getSolution();
        as(continuous);
        return found ? colValue : undefined;
      },

      close: () => model.dispose(),
    };
  };
