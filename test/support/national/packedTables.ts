import { published, type PublishedRow } from "../published";

/** The tables of the supplement that the add-in needs, in the order in which a row's models are written. */
export const tableNames = [
  "woodVolume",
  "barkVolume",
  "outsideVolume",
  "outsideRatio",
  "insideRatio",
  "biomass",
] as const;
export type TableName = (typeof tableNames)[number];

/** A letter of ours for each coefficient of a table; what a row has depends on its model, in this order. */
const coefficients = ["a", "c", "b", "b1", "a1", "c1", "alpha", "beta"] as const;

/** What is safe inside double quotes, in code order; 88 of them. */
export const DIGITS = Array.from({ length: 94 }, (_, i) => String.fromCharCode(33 + i))
  .filter((character) => !"\"\\'`$<".includes(character))
  .join("");

const BILLION = 1_000_000_000n;

interface Packed {
  readonly columns: readonly { readonly name: string; readonly least: bigint; readonly width: number }[];
  readonly text: string;
}

/** Magnolia at large, 650, has rows outside bark only and is not in the species list, so that nothing could ask for it. */
export const NOT_LISTED = "650";

export const speciesRows = (table: TableName) =>
  published(`tree/national/${table}.species.csv`).rows.filter(({ SPCD }) => SPCD !== NOT_LISTED);

export const keyOf = ({ SPCD, DIVISION, STDORGCD }: PublishedRow) => [SPCD, STDORGCD, DIVISION].join("|");

/** Rows in a fixed order, without those of a division that only repeat the row of their species. */
function neededRows(table: TableName): readonly PublishedRow[] {
  const rows = speciesRows(table);
  const values = (row: PublishedRow) => [row.model, ...coefficients.map((name) => row[name] ?? "")].join("|");
  const ofSpecies = new Map(rows.filter((row) => row.DIVISION === "").map((row) => [keyOf(row), values(row)]));
  return rows.filter((row) => row.DIVISION === "" || ofSpecies.get(keyOf({ ...row, DIVISION: "" })) !== values(row));
}

/** Every species, origin and division that any table has a row for: species in order, the plain row first. */
function allKeys(tables: ReadonlyMap<TableName, ReadonlyMap<string, PublishedRow>>): readonly string[] {
  const keys = new Set([...tables.values()].flatMap((rows) => [...rows.keys()]));
  const parts = (key: string) => key.split("|") as [string, string, string];
  return [...keys].sort((one, other) => {
    const [code, origin, division] = parts(one);
    const [otherCode, otherOrigin, otherDivision] = parts(other);
    return (
      Number(code) - Number(otherCode) ||
      (origin < otherOrigin ? -1 : origin > otherOrigin ? 1 : division < otherDivision ? -1 : 1)
    );
  });
}

/** "12 :231662 130:231660" reads: species 12, its plain row and that of division 130, and the model in each table. */
function keyText(keys: readonly string[], tables: ReadonlyMap<TableName, ReadonlyMap<string, PublishedRow>>): string {
  let last = "";
  return keys
    .map((key) => {
      const [code = "", origin = "", division = ""] = key.split("|");
      const models = tableNames.map((table) => tables.get(table)?.get(key)?.model ?? "0").join("");
      const head = code + (origin === "" ? "" : origin === "0" ? "n" : "p");
      const text = `${head === last ? "" : `;${head}`} ${division}:${models}`;
      last = head;
      return text;
    })
    .join("")
    .slice(1);
}

/** Billionths, exact: "7.89E-05" and "1.5" alike. */
export function billionths(text: string): bigint {
  const fixed = /e/i.test(text) ? Number(text).toFixed(12) : text;
  const [, sign = "", whole = "", part = ""] = /^(-?)(\d+)(?:\.(\d+))?$/.exec(fixed) ?? [];
  const digits = part.padEnd(12, "0");
  if (whole === "" || !/^\d{9}0*$/.test(digits)) throw new Error(`not a number of nine decimals: ${text}`);
  return BigInt(`${sign}${whole}${digits.slice(0, 9)}`);
}

function inDigits(value: bigint, width: number): string {
  let text = "";
  for (let rest = value; text.length < width; rest /= BigInt(DIGITS.length))
    text = (DIGITS[Number(rest % BigInt(DIGITS.length))] as string) + text;
  return text;
}

function packed(rows: readonly PublishedRow[]): Packed {
  const present = (name: string) => rows.map((row) => row[name] ?? "").filter((cell) => cell !== "");
  const columns = coefficients
    .filter((name) => present(name).length > 0)
    .map((name) => {
      const values = present(name).map(billionths);
      const least = values.reduce((low, one) => (one < low ? one : low));
      const most = values.reduce((high, one) => (one > high ? one : high));
      let width = 1;
      while (BigInt(DIGITS.length) ** BigInt(width) <= most - least) width += 1;
      return { name, least, width };
    });
  const text = rows
    .flatMap((row) =>
      columns
        .filter(({ name }) => (row[name] ?? "") !== "")
        .map(({ name, least, width }) => inDigits(billionths(row[name] as string) - least, width)),
    )
    .join("");
  return { columns, text };
}

const shown = (value: bigint) => {
  const negative = value < 0n;
  const size = negative ? -value : value;
  const text = `${size / BILLION}.${String(size % BILLION).padStart(9, "0")}`.replace(/\.?0+$/, "");
  return negative ? `-${text}` : text;
};

/** The contents of src/core/reference/national/speciesCoefficients.ts, whole. */
export function packedTables(): string {
  const tables = new Map(
    tableNames.map((table) => [table, new Map(neededRows(table).map((row) => [keyOf(row), row]))] as const),
  );
  const keys = allKeys(tables);
  const entries = tableNames.map((table) => {
    const rows = keys.map((key) => tables.get(table)?.get(key)).filter((row) => row !== undefined);
    const { columns, text } = packed(rows);
    const lines = columns.map(
      ({ name, least, width }) => `        { name: "${name}", least: ${shown(least)}, width: ${width} },`,
    );
    return `    ${table}: {\n      columns: [\n${lines.join("\n")}\n      ],\n      packed:\n        "${text}",\n    },`;
  });
  return `/**
 * Coefficients of the national equations by species, Bailey division and stand origin, packed so that every cell
 * function can carry them. Made from the printed tables in test/published/tree/national by
 * test/support/national/write.ts; change it there, never here.
 *
 * keys    species; n or p for natural or planted stands where the tables part them; each row's division, blank for
 *         the species at large, and its model in each table, 0 where that table has no such row
 * packed  the rows of a table in the order of the keys, each coefficient that its model has in the order of the
 *         columns: billionths above the least of the column, in as many digits as its width says
 * digits  the digits from 0 up
 *
 * Left out are rows of a division that only repeat the row of their species, and those of magnolia at large, code 650,
 * which the species list does not have.
 */
export const speciesCoefficients = {
  digits: "${DIGITS}",
  keys: "${keyText(keys, tables)}",
  tables: {
${entries.join("\n")}
  },
} as const;
`;
}
