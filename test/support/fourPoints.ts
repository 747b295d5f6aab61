import { column } from "./cells";
import { numberIn, published } from "./published";

/** The constructed cruise of 4 points as the spreadsheet hands it over; species and volumes are invented beside it. */
const { rows } = published("cruise/constructed-four-points.csv");

export const plot = column(rows.map((row) => numberIn(row, "point")));
export const dbh = column(rows.map((row) => numberIn(row, "dbh")));
export const plots = column([1, 2, 3, 4]);
export const species = column(rows.map((_, at) => (at % 3 === 0 ? "wo" : at % 3 === 1 ? "RO" : "ro")));
export const volume = column(rows.map((_, at) => 40 + 10 * at));
