import type { StyleName } from "../../workbook/plan";
import { cellStyle, styleLooks } from "../../workbook/styles";

const styleNames = Object.keys(styleLooks) as StyleName[];

/** Adds the named styles that the workbook lacks; one that is there may have been restyled by the user and stays. */
export async function layStyles(context: Excel.RequestContext): Promise<void> {
  const styles = context.workbook.styles.load("items/name");
  await context.sync();
  const known = new Set(styles.items.map(({ name }) => name));
  for (const name of styleNames) {
    if (known.has(cellStyle(name))) continue;
    styles.add(cellStyle(name));
    dress(styles.getItem(cellStyle(name)), name);
  }
}

function dress(style: Excel.Style, name: StyleName): void {
  const look = styleLooks[name];
  style.includeNumber = false;
  style.font.color = look.color;
  style.font.bold = look.bold ?? false;
  style.font.italic = look.italic ?? false;
  if (look.size !== undefined) style.font.size = look.size;
  if (look.fill !== undefined && name !== "Attention") style.fill.color = look.fill;
  if (look.indent !== undefined) style.indentLevel = look.indent;
  if (look.leftBar !== undefined) {
    const bar = style.borders.getItem("EdgeLeft");
    bar.style = "Continuous";
    bar.color = look.leftBar;
  }
}
