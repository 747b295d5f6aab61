import {
  ArrayValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import type { EngineAnswer, EngineValue } from "./answer";
import { isErrorText } from "./errorText";

type Variant = BaseValueObject | BaseReferenceObject;

/** An argument as plain data: rows of cells for a range, a blank cell as an empty text, a left-out argument as null. */
export function plainArgument(variant: Variant): unknown {
  if (variant.isError()) return (variant as ErrorValueObject).getErrorType();
  if (!variant.isValueObject()) return "#VALUE!";
  if (variant.isArray())
    return (variant as ArrayValueObject).getArrayValue().map((row) => row.map((cell) => plainCell(cell ?? null)));
  return (variant as BaseValueObject).isNull() ? null : (variant as BaseValueObject).getValue();
}

function plainCell(cell: BaseValueObject | null): unknown {
  if (cell === null || cell.isNull()) return "";
  return cell.isError() ? (cell as ErrorValueObject).getErrorType() : cell.getValue();
}

/** An answer as the engine keeps it. */
export function valueObject(answer: EngineAnswer): BaseValueObject {
  if (!Array.isArray(answer)) return single(answer);
  return ArrayValueObject.create({
    calculateValueList: answer.map((row) => row.map(single)),
    rowCount: answer.length,
    columnCount: answer[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

const ERRORS: ReadonlySet<string> = new Set(Object.values(ErrorType));

function single(value: EngineValue): BaseValueObject {
  if (typeof value === "number") return NumberValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (!isErrorText(value)) return StringValueObject.create(value);
  return ErrorValueObject.create(ERRORS.has(value) ? (value as ErrorType) : ErrorType.VALUE);
}
