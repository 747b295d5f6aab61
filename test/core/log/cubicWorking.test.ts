import fc from "fast-check";
import { describe, it } from "vitest";
import { feet, inches } from "../../../src/core/basis/units";
import { cubicFormulas } from "../../../src/core/log/cubic";
import { expectWorking } from "../../support/expectWorking";

describe.each(cubicFormulas)("$title's working", (formula) => {
  it("ends in what the formula gives, and every step adds up", () => {
    const across = fc.double({ min: 1, max: 60, noNaN: true }).map(inches);
    const along = fc.double({ min: 1, max: 60, noNaN: true }).map(feet);
    const log = fc.record({ smallEnd: across, middle: across, largeEnd: across, length: along });
    fc.assert(
      fc.property(log, (measured) => {
        expectWorking(formula.working(measured), formula.volume(measured));
      }),
    );
  });
});
