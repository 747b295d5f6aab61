import { addressOf, type Zone } from "../../../workbook/address";

/** "$B$4" or "$A$1:$C$5". */
export const fixedAddress = (zone: Zone): string => addressOf(zone).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
