import type { WorkbookHost } from "../../workbook/host";
import { FELLED_TREES, named, out } from "../../workbook/tables";
import type { Estimated } from "./readStand";
import { readAnswer } from "./spill";
import { yes } from "./cells";

/** What the stand holds of one product on an acre, as the sheet Products has it. */
export interface ProductLine {
  readonly name: string;
  /** bf, cord, ft3 or m3; "" for wood that is no product. */
  readonly unit: string;
  /** In the product's own unit; undefined where it has none. */
  readonly volume: Estimated | undefined;
  /** [ft3 or m3] */
  readonly wood: Estimated | undefined;
  /** [$] */
  readonly value: Estimated | undefined;
}

export interface ProductAnswers {
  readonly lines: readonly ProductLine[];
  /** Why there are none; "" when there are. */
  readonly lacking: string;
  /** Whether the owner takes the wood of his trees from a table of his own, which knows no form of stems. */
  readonly byOwnTable: boolean;
  readonly units: LandUnits;
}

/** What the answers are for and in, in words. */
export interface LandUnits {
  readonly land: "acre" | "hectare";
  readonly cubic: "ft³" | "m³";
}

const imperial: LandUnits = { land: "acre", cubic: "ft³" };
const metric: LandUnits = { land: "hectare", cubic: "m³" };

const words = {
  "#N/A": "No product on the sheet Products has a price yet, so nothing pays best. A guess will do.",
  "#VALUE!": "The sheet Products shows #VALUE!: open the flag of that cell to read which row to mend.",
};

/** Where the table has its volumes, and their land in the heading. */
const VOLUME = 2;

export async function readProducts(host: WorkbookHost): Promise<ProductAnswers> {
  const [answer, hasOwnTable] = await Promise.all([readAnswer(host, out.products, words), host.hasTable(FELLED_TREES)]);
  const settings = hasOwnTable ? await host.readNames([named.localUse]) : {};
  const byOwnTable = yes(settings[named.localUse]);
  if (answer.kind === "none") return { lines: [], lacking: answer.because, byOwnTable, units: imperial };
  const units = String(answer.rows[0]?.[VOLUME]).endsWith("per ha") ? metric : imperial;
  const lines = answer.rows.slice(1).flatMap(([name, unit, ...numbers]) => {
    const estimated = (at: number) => estimate(String(name), numbers[at], numbers[at + 1]);
    const line = { name: String(name ?? ""), unit: String(unit ?? "") };
    const found = { ...line, volume: estimated(0), wood: estimated(2), value: estimated(4) };
    return found.volume || found.wood ? [found] : [];
  });
  return { lines, lacking: lines.length > 0 ? "" : "No trees yet.", byOwnTable, units };
}

function estimate(what: string, value: unknown, margin: unknown): Estimated | undefined {
  if (typeof value !== "number") return undefined;
  if (typeof margin !== "number") return { what, value, margin: null, percent: null, low: null, high: null };
  const percent = value > 0 ? (100 * margin) / value : null;
  return { what, value, margin, percent, low: value - margin, high: value + margin };
}
