import { expect, it } from "vitest";
import { InvalidInput } from "../../../src/core/basis/problem";
import { inches } from "../../../src/core/basis/units";
import { formClass } from "../../../src/core/tree/formClass";
import { expectAsPrinted } from "../../support/expectAsPrinted";
import { numberIn, published } from "../../support/published";

const { rows, source, printedTo } = published("tree/form-class.csv");

it.each(rows)(`$dbh in with $top of first log in is form class $form class, as in ${source}`, (row) => {
  const found = formClass(inches(numberIn(row, "top of first log")), inches(numberIn(row, "dbh")));
  expectAsPrinted(found, numberIn(row, "form class"), printedTo);
});

it("refuses a top that is thicker than the tree, and says so in percent", () => {
  expect(() => formClass(inches(15), inches(12))).toThrow(
    new InvalidInput("Form class should be between 0 and 100 %. You have 125. Are the two diameters swapped?"),
  );
});

it.each([0, -3, NaN])("refuses a diameter of %s", (bad) => {
  expect(() => formClass(inches(bad), inches(12))).toThrow(InvalidInput);
  expect(() => formClass(inches(10), inches(bad))).toThrow(InvalidInput);
});
