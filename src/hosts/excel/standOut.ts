import { styleLooks } from "../../workbook/styles";

/** Cells that are coloured only while they say something, so that an empty one asks nobody to look. */
export function standOutWhenSaid(cells: Excel.Range): void {
  const { preset } = cells.conditionalFormats.add("PresetCriteria");
  preset.rule = { criterion: "NonBlanks" };
  preset.format.font.color = styleLooks.Attention.color;
  if (styleLooks.Attention.fill !== undefined) preset.format.fill.color = styleLooks.Attention.fill;
}
