import type { BoardSize } from "../../src/core/sawing/boardSize";
import type { SawLog } from "../../src/core/sawing/sawLog";

const FIT = 1e-9;

/** What the best boards side by side are worth across a width, tried one after another; all at the log's length. */
export function worthAcross(sizes: readonly BoardSize[], room: number, kerf: number, length: number): number {
  let best = 0;
  for (const size of sizes) {
    if (size.width > room + FIT) continue;
    const worth = (size.thickness * size.width * length * (size.price ?? 1000)) / 12_000;
    best = Math.max(best, worth + worthAcross(sizes, room - size.width - kerf, kerf, length));
  }
  return best;
}

/** What the full-length boards of a thickness are worth with their faces where they are; 0 when wane leaves none. */
function worthAt(log: SawLog, sizes: readonly BoardSize[], thickness: number, lower: number, kerf: number): number {
  const outer = Math.max(Math.abs(lower), Math.abs(lower + thickness));
  const chord = 2 * Math.sqrt(Math.max(0, (log.smallEnd / 2) ** 2 - outer ** 2));
  const ofThickness = sizes.filter((size) => size.thickness === thickness);
  return chord > 0 ? worthAcross(ofThickness, chord, kerf, log.length) : 0;
}

/** Every total width that boards side by side can have. */
function totalWidths(sizes: readonly BoardSize[], room: number, kerf: number): number[] {
  return [...new Set(sizes.map(({ width }) => Number(width)))].flatMap((width) =>
    width > room ? [] : [width, ...totalWidths(sizes, room - width - kerf, kerf).map((more) => width + kerf + more)],
  );
}

export interface EnumerationLimits {
  /** One board at least must be so thick. */
  readonly thickOne?: number;
  /** One board at most may be thicker. */
  readonly throat?: number;
}

/** Every order of thicknesses, at every offset where some face is exactly as far out as some width allows. */
export function byEnumeration(
  log: SawLog,
  sizes: readonly BoardSize[],
  kerf: number,
  { thickOne = 0, throat = Infinity }: EnumerationLimits = {},
): number {
  const thicknesses = [...new Set(sizes.map(({ thickness }) => Number(thickness)))];
  const widths = thicknesses.flatMap((thickness) =>
    totalWidths(
      sizes.filter((size) => size.thickness === thickness),
      log.smallEnd,
      kerf,
    ),
  );
  const reaches = [...new Set(widths)].map((width) => Math.sqrt((log.smallEnd / 2) ** 2 - (width / 2) ** 2));
  let best = 0;
  const tryOrder = (order: readonly number[]): void => {
    let height = 0;
    const lowers = order.map((thickness) => {
      const lower = height;
      height += thickness + kerf;
      return lower;
    });
    const offsets = order.flatMap((thickness, i) =>
      reaches.flatMap((reach) => [0 - reach - (lowers[i] as number), reach - thickness - (lowers[i] as number)]),
    );
    for (const offset of offsets) {
      const worths = order.map((thickness, i) => worthAt(log, sizes, thickness, offset + (lowers[i] as number), kerf));
      const gives = (i: number) => (worths[i] as number) > 0;
      if (!order.some((thickness, i) => thickness >= thickOne && gives(i))) continue;
      if (order.filter((thickness, i) => thickness > throat && gives(i)).length > 1) continue;
      best = Math.max(
        best,
        worths.reduce((sum, one) => sum + one, 0),
      );
    }
    for (const thickness of thicknesses) {
      if (height + thickness <= log.smallEnd) tryOrder([...order, thickness]);
    }
  };
  tryOrder([]);
  return best;
}

/** Any gaps of a kerf or more, on a plain grid: never above the truth, since it tries only some places. */
export function byGrid(log: SawLog, sizes: readonly BoardSize[], kerf: number, step: number): number {
  const thicknesses = [...new Set(sizes.map(({ thickness }) => Number(thickness)))];
  const last = Math.round(log.smallEnd / step);
  const best = new Array<number>(last + 1).fill(0);
  for (let at = last - 1; at >= 0; at -= 1) {
    best[at] = best[at + 1] as number;
    for (const thickness of thicknesses) {
      const next = Math.min(last, at + Math.ceil((thickness + kerf) / step - 1e-9));
      const worth = worthAt(log, sizes, thickness, log.smallEnd / -2 + at * step, kerf) + (best[next] as number);
      best[at] = Math.max(best[at] as number, worth);
    }
  }
  return best[0] as number;
}
