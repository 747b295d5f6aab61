import { accuracyTable } from "./report";

console.log(accuracyTable());
