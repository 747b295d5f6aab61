import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";

type FormulasOfAll = ReturnType<FormulaDataModel["getFormulaData"]>;

/**
 * The engine's record of which cell holds which formula. For every write it gathered the formulas of the whole workbook,
 * cell by cell, though it asks for those of the written sheet only: with a few hundred writes to lay a workbook out, the
 * cells of all sheets were gone through a few hundred times.
 */
export class FormulaData extends FormulaDataModel {
  private written: { readonly unitId: string; readonly sheetId: string } | undefined;

  override updateFormulaData(
    unitId: string,
    sheetId: string,
    cellValue: IObjectMatrixPrimitiveType<Nullable<ICellData>>,
  ): ReturnType<FormulaDataModel["updateFormulaData"]> {
    this.written = { unitId, sheetId };
    try {
      return super.updateFormulaData(unitId, sheetId, cellValue);
    } finally {
      this.written = undefined;
    }
  }

  override getFormulaData(): FormulasOfAll {
    if (!this.written) return super.getFormulaData();
    const { unitId, sheetId } = this.written;
    return { [unitId]: { [sheetId]: this.getSheetFormulaData(unitId, sheetId) } };
  }
}
