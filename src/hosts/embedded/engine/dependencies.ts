import { DependencyManagerService } from "@univerjs/engine-formula";

/**
 * The engine's record of what each formula looks at, with one mistake of its own mended: when rows come or go, it
 * forgets every formula of a sheet but leaves on record the cells of other sheets that they looked at. From then on it
 * complained at each calculation of formulas that it could not find.
 */
export class Dependencies extends DependencyManagerService {
  override clearFormulaDependency(unitId: string, sheetId?: string): void {
    for (const [id, formulas] of this._formulaData.get(unitId) ?? []) {
      if (sheetId !== undefined && sheetId !== id) continue;
      const places: (readonly [row: number, column: number])[] = [];
      formulas.forValue((row, column) => {
        places.push([row, column]);
      });
      for (const [row, column] of places) this.removeFormulaDependency(unitId, id, row, column);
    }
    super.clearFormulaDependency(unitId, sheetId);
  }
}
