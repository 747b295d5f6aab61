import type { IConditionFormattingRule } from "@univerjs/preset-sheets-conditional-formatting";
import { toEngine } from "../engine/place";
import { invalid, notImplemented } from "./apiError";
import { clientObject } from "./clientObject";
import { colorGiven } from "./looks";
import type { Locate } from "./places";
import type { Batch } from "./requestContext";

interface Look {
  criterion?: string;
  fill?: string;
  color?: string;
}

/**
 * Looks that a cell takes by what it holds; of them only the ready-made ones for cells that are not blank, to which a
 * formula that gives an empty text is blank.
 * https://learn.microsoft.com/office/dev/add-ins/excel/excel-add-ins-conditional-formatting
 */
export function conditionalFormatsOf(batch: Batch, locate: Locate): Excel.ConditionalFormatCollection {
  const { cells } = batch.engine;
  const collection: Excel.ConditionalFormatCollection = clientObject<Excel.ConditionalFormatCollection>(batch, {
    kind: "Excel.ConditionalFormatCollection",
    members: {
      add: (type) => {
        if (type !== "PresetCriteria") throw notImplemented(`Excel.ConditionalFormatType.${type}`);
        return conditionalFormat(batch, locate);
      },
      clearAll: () => batch.enqueue(collection, () => void cells.range(locate()).clearConditionalFormatRules()),
    },
  });
  return collection;
}

/** The grid takes rule and look as one, so the rule is put anew when more of its look follows. */
function conditionalFormat(batch: Batch, locate: Locate): Excel.ConditionalFormat {
  const { cells } = batch.engine;
  const look: Look = {};
  let laid: IConditionFormattingRule | undefined;
  const change = (part: Look) => {
    Object.assign(look, part);
    if (look.criterion === undefined) throw invalid("A conditional format needs its rule before its look.");
    const sheet = cells.worksheet(locate().sheetId);
    if (laid) sheet.deleteConditionalFormattingRule(laid.cfId);
    const builder = sheet
      .newConditionalFormattingRule()
      .whenCellNotEmpty()
      .setRanges([toEngine(locate())]);
    if (look.fill !== undefined) builder.setBackground(look.fill);
    if (look.color !== undefined) builder.setFontColor(look.color);
    laid = builder.build();
    sheet.addConditionalFormattingRule(laid);
  };
  return clientObject<Excel.ConditionalFormat>(batch, {
    kind: "Excel.ConditionalFormat",
    members: {
      get preset() {
        return clientObject<Excel.PresetCriteriaConditionalFormat>(batch, {
          kind: "Excel.PresetCriteriaConditionalFormat",
          write: { rule: ({ criterion }) => change({ criterion: criterionGiven(criterion) }) },
          members: {
            get format() {
              return formatOf(batch, change);
            },
          },
        });
      },
    },
  });
}

function formatOf(batch: Batch, change: (part: Look) => void): Excel.ConditionalRangeFormat {
  return clientObject<Excel.ConditionalRangeFormat>(batch, {
    kind: "Excel.ConditionalRangeFormat",
    members: {
      get fill() {
        return clientObject<Excel.ConditionalRangeFill>(batch, {
          kind: "Excel.ConditionalRangeFill",
          write: { color: (color) => change({ fill: colorGiven(color) }) },
        });
      },
      get font() {
        return clientObject<Excel.ConditionalRangeFont>(batch, {
          kind: "Excel.ConditionalRangeFont",
          write: { color: (color) => change({ color: colorGiven(color) }) },
        });
      },
    },
  });
}

function criterionGiven(criterion: string): string {
  if (criterion !== "NonBlanks") throw notImplemented(`Excel.ConditionalFormatPresetCriterion.${criterion}`);
  return criterion;
}
