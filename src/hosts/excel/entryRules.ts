import type { EntryRule } from "../../workbook/plan";

/** A rule for entry in the words of Office.js. */
export interface Validation {
  readonly rule: Excel.DataValidationRule;
  readonly errorAlert: Excel.DataValidationErrorAlert;
}

/** Field data may be odd: only a strict rule refuses, any other asks. */
export const validationOf = (rule: EntryRule): Validation => ({
  rule: ruleOf(rule),
  errorAlert: {
    title: "Please look again",
    message: rule.message,
    showAlert: true,
    style: rule.strict ? "Stop" : "Warning",
  },
});

function ruleOf(rule: EntryRule): Excel.DataValidationRule {
  switch (rule.kind) {
    case "list":
      return { list: { inCellDropDown: true, source: rule.choices.join(",") } };
    case "listOf":
      return { list: { inCellDropDown: true, source: `=${rule.range}` } };
    case "number":
      return { decimal: { formula1: rule.low, formula2: rule.high, operator: "Between" } };
  }
}
