import type { ScaledLog } from "../../../src/core/log/logRule";
import { feet, inches } from "../../../src/core/basis/units";
import { numberIn, type PublishedRow } from "../../support/published";

/** A log of so many inches and feet. */
export const log = (diameter: number, length: number): ScaledLog => ({
  diameter: inches(diameter),
  length: feet(length),
});

/** The log of a printed row. */
export const printedLog = (row: PublishedRow): ScaledLog => log(numberIn(row, "diameter"), numberIn(row, "length"));
