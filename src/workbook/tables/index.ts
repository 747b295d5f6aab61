import { named } from "./named";
import { out } from "./out";

export * from "./cruiseTables";
export * from "./logTables";
export * from "./moneyTables";
export * from "./sawingTables";
export * from "./speciesTables";
export { named, out };

/** Every name that the workbook's own cells have. */
export const workbookNames: ReadonlySet<string> = new Set([...Object.values(named), ...Object.values(out)]);
