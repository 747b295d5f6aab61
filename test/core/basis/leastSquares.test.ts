import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastSquares } from "../../../src/core/basis/leastSquares";

/** The normal equations by elimination: no library, and another road to the same answer. */
function byNormalEquations(rows: readonly (readonly number[])[], values: readonly number[]): number[] {
  const n = rows[0]?.length ?? 0;
  const table = Array.from({ length: n }, (_, i) => [
    ...Array.from({ length: n }, (_, j) => rows.reduce((sum, row) => sum + row[i]! * row[j]!, 0)),
    rows.reduce((sum, row, k) => sum + row[i]! * values[k]!, 0),
  ]);
  for (let i = 0; i < n; i += 1) {
    const pivot = table.slice(i).reduce((most, row) => (Math.abs(row[i]!) > Math.abs(most[i]!) ? row : most));
    table.splice(table.indexOf(pivot), 1);
    table.splice(i, 0, pivot);
    for (let k = 0; k < n; k += 1) {
      if (k === i) continue;
      const factor = table[k]![i]! / pivot[i]!;
      table[k] = table[k]!.map((cell, j) => cell - factor * pivot[j]!);
    }
  }
  return table.map((row, i) => row[n]! / row[i]!);
}

const points = fc.array(
  fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), fc.integer({ min: -99, max: 99 })),
  {
    minLength: 4,
    maxLength: 30,
  },
);

describe("least squares", () => {
  it("agrees with the normal equations, on planes through any points", () => {
    fc.assert(
      fc.property(points, (given) => {
        const rows = given.map(([x, y]) => [1, x, y]);
        const values = given.map(([, , z]) => z);
        const fit = leastSquares(rows, values);
        // Points on one line of the ground hold no plane; whole numbers this small tell that exactly.
        const [[x0 = 0, y0 = 0] = []] = given;
        const spread = given.map(([x, y]) => [x - x0, y - y0] as const);
        const flat = spread.every(([x, y]) => spread.every(([u, v]) => x * v === y * u));
        if (flat) {
          expect(fit).toBeUndefined();
          return;
        }
        byNormalEquations(rows, values).forEach((coefficient, j) => {
          const ours = fit?.solution[j] ?? NaN;
          expect(Math.abs(ours - coefficient)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(coefficient)));
        });
        expect(fit?.degreesOfFreedom).toBe(given.length - 3);
      }),
      { numRuns: 300 },
    );
  });

  it("leaves residuals that no column can explain", () => {
    const rows = [1, 2, 4, 7, 11].map((x) => [1, x]);
    const fit = leastSquares(rows, [3, 1, 4, 1, 5]);
    for (const j of [0, 1]) {
      expect(rows.reduce((sum, row, i) => sum + row[j]! * (fit?.residuals[i] ?? NaN), 0)).toBeCloseTo(0, 10);
    }
  });

  it("knows when points cannot tell the columns apart", () => {
    expect(
      leastSquares(
        [
          [1, 5],
          [1, 5],
          [1, 5],
        ],
        [1, 2, 3],
      ),
    ).toBeUndefined();
    expect(
      leastSquares(
        [
          [1, 0],
          [1, 0],
        ],
        [1, 2],
      ),
    ).toBeUndefined();
  });
});
