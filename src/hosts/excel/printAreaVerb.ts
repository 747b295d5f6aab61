import { addressOf, zoneAt } from "../../workbook/address";
import type { WorkbookHost } from "../../workbook/host";
import { excelRun } from "./excelRun";

/** An area that begins or ends elsewhere is one that the user chose, and stays. */
export const printDownTo: WorkbookHost["printDownTo"] = (name, area) =>
  excelRun(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(name).load("name");
    await context.sync();
    if (sheet.isNullObject) return;
    const now = sheet.pageLayout.getPrintAreaOrNullObject().load("address");
    await context.sync();
    if (now.isNullObject || now.address.includes(",")) return;
    const [standing, wanted] = [zoneAt(now.address), zoneAt(area)];
    const isOurs = addressOf({ ...standing, rows: wanted.rows }) === addressOf(wanted);
    if (!isOurs || standing.rows === wanted.rows) return;
    sheet.pageLayout.setPrintArea(area);
    await context.sync();
  });
