import type { IRange } from "@univerjs/core";
import { BaseFunction, type BaseReferenceObject } from "@univerjs/engine-formula";

type Create = (
  this: BaseFunction,
  reference: BaseReferenceObject,
  range: IRange,
) => ReturnType<BaseFunction["createReferenceObject"]>;

/**
 * Mends the engine: INDEX, OFFSET and their like answer with a reference into the range they were given, and for a
 * table's column on another sheet they lose the sheet, so that =INDEX(Logs[Length ft],1) read the formula's own sheet. A
 * table's reference knows its sheet's id but not its name, and the name is what the engine looks the sheet up by.
 */
export function keepSheetOfTableReferences(nameOfSheet: (sheetId: string) => string | undefined): void {
  const create = Object.getOwnPropertyDescriptor(BaseFunction.prototype, "createReferenceObject")?.value as Create;
  BaseFunction.prototype.createReferenceObject = function (reference, range) {
    const id = reference.getForcedSheetId();
    if (id && !reference.getForcedSheetName()) reference.setForcedSheetName(nameOfSheet(id) ?? "");
    return create.call(this, reference, range);
  };
}
