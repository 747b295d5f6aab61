import type { BoardSize } from "../../src/core/sawing/boardSize";
import type { SawLog } from "../../src/core/sawing/sawLog";

/** What the full-length board of a thickness is worth with its faces where they are; 0 when none is free of wane. */
function worthAt(log: SawLog, sizes: readonly BoardSize[], thickness: number, lower: number): number {
  const outer = Math.max(Math.abs(lower), Math.abs(lower + thickness));
  const chord = 2 * Math.sqrt(Math.max(0, (log.smallEnd / 2) ** 2 - outer ** 2)) + 1e-7;
  const fitting = sizes.filter((size) => size.thickness === thickness && size.width <= chord);
  return Math.max(
    0,
    ...fitting.map((size) => (size.thickness * size.width * log.length * (size.price ?? 1000)) / 12_000),
  );
}

/** Every order of thicknesses, at every offset where some face is exactly as far out as some width allows. */
export function byEnumeration(log: SawLog, sizes: readonly BoardSize[], kerf: number, thickOne = 0): number {
  const thicknesses = [...new Set(sizes.map(({ thickness }) => Number(thickness)))];
  const reaches = sizes
    .filter(({ width }) => width <= log.smallEnd)
    .map(({ width }) => Math.sqrt((log.smallEnd / 2) ** 2 - (width / 2) ** 2));
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
      const worths = order.map((thickness, i) => worthAt(log, sizes, thickness, offset + (lowers[i] as number)));
      if (!order.some((thickness, i) => thickness >= thickOne && (worths[i] as number) > 0)) continue;
      const worth = worths.reduce((sum, one) => sum + one, 0);
      best = Math.max(best, worth);
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
      const worth = worthAt(log, sizes, thickness, log.smallEnd / -2 + at * step) + (best[next] as number);
      best[at] = Math.max(best[at] as number, worth);
    }
  }
  return best[0] as number;
}
