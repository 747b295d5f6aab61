import { BaseFunction, type BaseValueObject, type BaseReferenceObject } from "@univerjs/engine-formula";
import type { EngineAnswer } from "./answer";
import { plainArgument, valueObject } from "./engineValues";
import type { CalledFrom } from "./sentences";

export type Callable = (this: CalledFrom, ...args: unknown[]) => EngineAnswer;

/**
 * One of our functions inside the formula engine. The engine's own wrapper for such functions is not used: it turns
 * answers that look like numbers or dates ("7", "1/8") into numbers, and hands over blanks as 0.
 */
export class EngineFunction extends BaseFunction {
  constructor(
    name: string,
    private readonly called: Callable,
  ) {
    super(name);
  }

  override calculate(...variants: (BaseValueObject | BaseReferenceObject)[]) {
    const from = { subUnitId: this.subUnitId ?? "", row: this.row, column: this.column };
    return valueObject(this.called.apply(from, variants.map(plainArgument)));
  }

  /** Texts in quotes stay texts, even those that look like a date. */
  override isArgumentsIgnoreNumberPattern(): boolean {
    return true;
  }
}
