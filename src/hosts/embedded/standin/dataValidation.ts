import { DataValidationErrorStyle, DataValidationRenderMode } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { invalid, notImplemented } from "./apiError";
import { clientObject } from "./clientObject";
import { locates, type Locate } from "./places";
import { referencedPlace } from "./reference";
import type { Batch } from "./requestContext";

type Builder = ReturnType<FUniver["newDataValidation"]>;
type Alert = Pick<Excel.DataValidationErrorAlert, "message" | "title" | "style" | "showAlert">;

const ALERT_STYLES: Readonly<Record<string, DataValidationErrorStyle>> = {
  Stop: DataValidationErrorStyle.STOP,
  Warning: DataValidationErrorStyle.WARNING,
  Information: DataValidationErrorStyle.INFO,
};

/**
 * What a cell accepts. The grid takes rule and alert as one, so the rule is set again when its alert follows.
 * https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-data-validation
 */
export function dataValidationOf(batch: Batch, locate: Locate): Excel.DataValidation {
  const { cells, spreadsheet } = batch.engine;
  let given: { rule?: Excel.DataValidationRule; alert?: Alert; blanks?: boolean; prompt?: Excel.DataValidationPrompt } =
    {};

  const change = (part: typeof given) => {
    given = { ...given, ...part };
    if (!given.rule) throw invalid("A range needs a validation rule before its alert.");
    const builder = criteria(batch, locate, spreadsheet.api.newDataValidation(), given.rule);
    const { style = "Stop", message = "", title = "" } = given.alert ?? {};
    const errorStyle = ALERT_STYLES[style];
    if (errorStyle === undefined) throw notImplemented(`Excel.DataValidationAlertStyle.${style}`);
    builder.setAllowBlank(given.blanks ?? true);
    builder.setOptions({
      errorStyle,
      error: message,
      errorTitle: title,
      showErrorMessage: given.alert?.showAlert ?? true,
      renderMode: DataValidationRenderMode.ARROW,
    });
    cells.range(locate()).setDataValidation(builder.build());
  };

  const validation: Excel.DataValidation = clientObject<Excel.DataValidation>(batch, {
    kind: "Excel.DataValidation",
    write: {
      rule: (rule) => change({ rule }),
      errorAlert: (alert) => change({ alert }),
      prompt: (prompt) => change({ prompt }),
      ignoreBlanks: (blanks) => change({ blanks }),
    },
    members: {
      clear: () => batch.enqueue(validation, () => void cells.range(locate()).setDataValidation(null)),
    },
  });
  return validation;
}

function criteria(batch: Batch, locate: Locate, builder: Builder, rule: Excel.DataValidationRule): Builder {
  const [kind = "nothing", ...more] = Object.keys(rule);
  if (more.length > 0) throw invalid("A range takes one validation rule.");
  if (rule.list) return listCriteria(batch, locate, builder, rule.list.source);
  const number = rule.decimal ?? rule.wholeNumber;
  if (!number) throw notImplemented(`Excel.DataValidationRule.${kind}`);
  if (number.operator !== "Between") throw notImplemented(`Excel.DataValidationOperator.${number.operator}`);
  return builder.requireNumberBetween(Number(number.formula1), Number(number.formula2), Boolean(rule.wholeNumber));
}

/** A list is written out, "a,b,c", or read from cells: a range, or a text such as "=Species!$A$5:$A$20" or "=Rule_Names". */
function listCriteria(batch: Batch, locate: Locate, builder: Builder, source: string | Excel.Range): Builder {
  const { cells } = batch.engine;
  if (typeof source !== "string") {
    const place = locates.get(source)?.();
    if (!place) throw invalid("A list's source is a range or a text.");
    return builder.requireValueInRange(cells.range(place));
  }
  const text = source;
  if (text.length > 255) throw invalid("A list of choices written out holds at most 255 characters.");
  if (!text.startsWith("=")) return builder.requireValueInList(text.split(","));
  const bare = text.slice(1);
  const own = `'${cells.worksheet(locate().sheetId).getSheetName().replace(/'/g, "''")}'!${bare}`;
  const found =
    referencedPlace(cells, bare) ??
    referencedPlace(cells, own) ??
    referencedPlace(cells, cells.workbook.getDefinedName(bare)?.getFormulaOrRefString() ?? "");
  if (!found) throw invalid(`"${text}" is no source for a list: it takes a range or the name of one.`);
  return builder.requireValueInRange(cells.range(found));
}
