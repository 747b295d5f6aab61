import type { WorkbookHost } from "../../workbook/host";
import type { TableRow } from "../../workbook/plan";
import { board, MORE_PRODUCTS } from "../../workbook/tables";
import { text } from "../job/cells";

const inputs = Object.values(board).filter((heading) => heading !== board.thickness);
const blank: TableRow = Object.fromEntries(inputs.map((heading) => [heading, null]));

/** True when a line names a product to try. */
export const saysTrial = (row: TableRow): boolean => inputs.some((heading) => text(row[heading]) !== "");

/** Puts a product on the sheet Sawing, in the first line that is free. */
export async function putTrial(host: WorkbookHost, row: TableRow): Promise<void> {
  const { rows } = await host.readTable(MORE_PRODUCTS);
  const free = rows.findIndex((one) => !saysTrial(one));
  if (free < 0) await host.appendRows(MORE_PRODUCTS, [row]);
  else await host.updateRow(MORE_PRODUCTS, free, row);
}

/** Empties the lines of all products that are tried. */
export async function clearTrials(host: WorkbookHost): Promise<void> {
  const { rows } = await host.readTable(MORE_PRODUCTS);
  await host.updateRows(
    MORE_PRODUCTS,
    rows.map((_, row) => ({ row, changes: blank })),
  );
}
