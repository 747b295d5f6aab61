import type { WorkbookHost } from "../../../src/workbook/host";
import { same, refuses, until } from "./saying";
import { contractSheets, ROWS } from "./contractSheets";

/** One promise of the port, tried on a workbook that has the contract's sheets. */
export interface Check {
  readonly name: string;
  readonly run: (host: WorkbookHost) => Promise<void>;
}

/**
 * What every spreadsheet under the add-in must do, tried through the port and nothing else. The page in the browser
 * runs it in CI. In Excel it is run by hand, in a workbook that may be thrown away: see byHand.ts.
 * The checks build on each other, in this order.
 */
export const contract: readonly Check[] = [
  {
    name: "lays sheets, and finds their tables",
    async run(host) {
      await host.lay(contractSheets);
      same(await host.hasTable("ContractRows"), true);
      same(await host.hasTable("contractrows"), true);
      same(await host.hasTable("NoSuchTable"), false);
    },
  },
  {
    name: "reads a table: blanks as null, numbers, texts, and computed columns with their answers",
    async run(host) {
      const table = await host.readTable("ContractRows");
      same(table.sheet, "Contract");
      same(table.headings, ["Key", "Inches", "Twice", "Note"]);
      same(table.rows, ROWS);
    },
  },
  {
    name: "says which table is missing",
    run: (host) => refuses(host.readTable("NoSuchTable"), "missing table", "NoSuchTable"),
  },
  {
    name: "appends rows below the last one, fills computed columns, and formulas elsewhere see them",
    async run(host) {
      await host.appendRows("ContractRows", [
        { Key: "c", Inches: 30 },
        { Key: "d", Inches: 0.5, Note: "1/8 in off" },
      ]);
      const { rows } = await host.readTable("ContractRows");
      same(rows.length, 4);
      same(rows[2], { Key: "c", Inches: 30, Twice: 60, Note: null });
      same(rows[3], { Key: "d", Inches: 0.5, Twice: 1, Note: "1/8 in off" });
      same(await host.readNames(["Contract_Sum"]), { Contract_Sum: 60.75 });
    },
  },
  {
    name: "changes the named cells of one row and no others",
    async run(host) {
      await host.updateRow("ContractRows", 1, { Inches: 40, Note: null });
      const { rows } = await host.readTable("ContractRows");
      same(rows[0], ROWS[0]);
      same(rows[1], { Key: "b", Inches: 40, Twice: 80, Note: null });
      await refuses(host.updateRow("ContractRows", 0, { Feet: 1 }), "refused", "Feet");
      await refuses(host.updateRow("ContractRows", 99, { Inches: 1 }), "refused", "100");
    },
  },
  {
    name: "deletes one row; what lies below it moves up",
    async run(host) {
      await host.deleteRow("ContractRows", 1);
      const { rows } = await host.readTable("ContractRows");
      same(
        rows.map((row) => row.Key),
        ["a", "c", "d"],
      );
      same(await host.readNames(["Contract_Sum"]), { Contract_Sum: 40.75 });
    },
  },
  {
    name: "writes and reads named cells, and says which name is missing",
    async run(host) {
      await host.writeNames({ Contract_Text: "oak", Contract_Factor: 2.5, Contract_Flag: true });
      same(await host.readNames(["Contract_Text", "Contract_Factor", "Contract_Flag", "Contract_Blank"]), {
        Contract_Text: "oak",
        Contract_Factor: 2.5,
        Contract_Flag: true,
        Contract_Blank: null,
      });
      await refuses(host.readNames(["No_Such_Name"]), "missing name", "No_Such_Name");
    },
  },
  {
    name: "reads a whole spilled answer at full precision, and an error as its text",
    async run(host) {
      same(await host.readSpill("Contract_Spill"), [
        [1 / 3, 2 / 3],
        [1, 4 / 3],
      ]);
      same(await host.readSpill("Contract_Error"), [["#DIV/0!"]]);
    },
  },
  {
    name: "watches: tells once after a change, and no more after it is stopped",
    async run(host) {
      let told = 0;
      const stop = await host.watch(() => (told += 1));
      await host.writeNames({ Contract_Factor: 3 });
      await until(() => told === 1);
      stop();
      await new Promise((resolve) => setTimeout(resolve, 300));
      await host.writeNames({ Contract_Factor: 4 });
      await new Promise((resolve) => setTimeout(resolve, 600));
      same(told, 1);
    },
  },
  {
    name: "selects a cell of a sheet and of a table",
    async run(host) {
      await host.select({ sheet: "Contract", at: "B2" });
      await host.select({ table: "ContractRows", row: 1, heading: "Inches" });
      await refuses(host.select({ sheet: "No such sheet", at: "A1" }), "refused", "No such sheet");
    },
  },
  {
    name: "copies every used cell with its formula, format, tables and names, and how the sheet prints",
    async run(host) {
      const sheet = (await host.copy()).find(({ name }) => name === "Contract");
      same(sheet?.tables, [{ name: "ContractRows", address: "A5:D8" }]);
      same(sheet?.cells[5]?.[0], { value: "a", format: "General" });
      same(sheet?.cells[5]?.[1]?.format, "0.00");
      same(sheet?.cells[5]?.[2]?.formula?.replace(/\s/g, ""), "=ContractRows[[#ThisRow],[Inches]]*2");
      same(sheet?.cells[0]?.[0], { value: "Contract", format: "General" });
      same(sheet?.page, { landscape: true, area: "A1:G9", titleRows: [5, 5] });
    },
  },
  {
    name: "prints down to the row it is told, but leaves an area that the user chose",
    async run(host) {
      const area = async () => (await host.copy()).find(({ name }) => name === "Contract")?.page?.area;
      await host.printDownTo("Contract", "A1:G12");
      same(await area(), "A1:G12");
      await host.printDownTo("Contract", "A1:F20");
      await host.printDownTo("Contract", "B1:G20");
      await host.printDownTo("No such sheet", "A1:G20");
      same(await area(), "A1:G12");
      await host.printDownTo("Contract", "A1:G9");
      same(await area(), "A1:G9");
    },
  },
  {
    name: "lays a sheet anew in the place of the old one",
    async run(host) {
      await host.lay(contractSheets);
      same((await host.readTable("ContractRows")).rows, ROWS);
      same(await host.readNames(["Contract_Text", "Contract_Factor"]), { Contract_Text: null, Contract_Factor: 1 });
    },
  },
];
