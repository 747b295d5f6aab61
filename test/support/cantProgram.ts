import type { BoardSize } from "../../src/core/sawing/boardSize";
import { worthAcross } from "./sawingByEnumeration";

interface Variable {
  readonly name: string;
  readonly worth: number;
  /** The saw places that it takes up, from one mark to another, on a line of its own. */
  readonly line: "over" | "under" | "inside";
  readonly from: number;
  readonly to: number;
  /** It can be had only with one of these. */
  readonly needs: readonly (readonly string[])[];
}

const FIT = 1e-9;

/**
 * Cant sawing of a cylinder on the marks of a scale as one integer programme in LP text: a 0-1 variable for every pair of
 * faces of the cant, every side board, every flitch in the cant at every mark, and every one that stays on the bed.
 */
export function cantProgram(
  diameter: number,
  length: number,
  sizes: readonly BoardSize[],
  kerf: number,
  step: number,
): string {
  const radius = diameter / 2;
  const count = Math.ceil(diameter / step - FIT);
  const at = (mark: number) => mark * step - radius;
  const steps = (height: number) => Math.ceil(height / step - FIT);
  const marks = Array.from({ length: count + 1 }, (_, i) => i);
  const halfChord = (lower: number, upper: number) => {
    const square = radius ** 2 - Math.max(lower ** 2, upper ** 2);
    return square > 0 ? Math.sqrt(square) : 0;
  };
  const thicknesses = [...new Set(sizes.map(({ thickness }) => Number(thickness)))];
  const worth = (thickness: number, room: number) =>
    worthAcross(
      sizes.filter((size) => size.thickness === thickness),
      room,
      kerf,
      length,
    );

  const cants = marks.flatMap((upper) =>
    marks.flatMap((lower) =>
      lower < upper && at(upper) >= -FIT && at(lower) <= FIT
        ? [{ name: `z${upper}_${lower}`, upper, lower, above: at(upper), below: 0 - at(lower) }]
        : [],
    ),
  );
  const named = (fits: (one: (typeof cants)[number]) => boolean) => cants.filter(fits).map(({ name }) => name);

  const variables: Variable[] = [];
  const beds: { readonly name: string; readonly from: number; readonly to: number }[] = [];
  for (const thickness of thicknesses) {
    for (const from of marks) {
      const to = from + steps(thickness + kerf);
      const key = `${thicknesses.indexOf(thickness)}_${from}`;
      if (to <= count) {
        const [high, low] = [halfChord(at(from) + kerf, at(to)), halfChord(at(from), at(to) - kerf)];
        const [over, under] = [worth(thickness, 2 * high), worth(thickness, 2 * low)];
        const above = named((one) => one.upper <= from);
        const below = named((one) => one.lower >= to);
        if (over > 0) variables.push({ name: `o${key}`, worth: over, line: "over", from, to, needs: [above] });
        if (under > 0) variables.push({ name: `u${key}`, worth: under, line: "under", from, to, needs: [below] });
      }
      const top = from + steps(thickness);
      const half = top <= count ? halfChord(at(from), at(top)) : 0;
      for (const { worth: each, room, i } of worthsBetween(thickness, half)) {
        const name = `b${key}_${i}`;
        beds.push({ name, from, to: top });
        variables.push({
          name,
          worth: each,
          line: "inside",
          from,
          to: top,
          needs: [named((one) => fits(one, half, room))],
        });
      }
    }
  }
  for (const thickness of thicknesses) {
    for (const from of marks) {
      const to = from + steps(thickness + kerf);
      if (to > count) continue;
      const key = `${thicknesses.indexOf(thickness)}_${from}`;
      const [high, low] = [halfChord(at(from) + kerf, at(to)), halfChord(at(from), at(to) - kerf)];
      const onBed = beds.filter((bed) => bed.to <= from).map(({ name }) => name);
      const overBed = beds.filter((bed) => bed.from >= to).map(({ name }) => name);
      const add = (kind: string, half: number, staying: readonly string[]) => {
        for (const { worth: each, room, i } of worthsBetween(thickness, half)) {
          const needs = [named((one) => fits(one, half, room)), staying];
          variables.push({ name: `${kind}${key}_${i}`, worth: each, line: "inside", from, to, needs });
        }
      };
      add("x", high, onBed);
      add("y", low, overBed);
    }
  }

  function fits({ above, below }: { readonly above: number; readonly below: number }, half: number, room: number) {
    return Math.min(above, half) + Math.min(below, half) >= room - FIT;
  }
  /** What boards of a thickness side by side are worth, for every width between faces of some cant. */
  function worthsBetween(thickness: number, half: number) {
    if (half === 0) return [];
    const rooms = [...new Set(cants.map(({ above, below }) => Math.min(above, half) + Math.min(below, half)))];
    const worths = new Map<number, number>();
    for (const room of rooms.sort((a, b) => b - a)) worths.set(worth(thickness, room), room);
    return [...worths].filter(([each]) => each > 0).map(([each, room], i) => ({ worth: each, room, i }));
  }

  const usable = variables.filter(({ needs }) => needs.every((one) => one.length > 0));
  const known = new Set(usable.map(({ name }) => name));
  const bed = beds.filter(({ name }) => known.has(name)).map(({ name }) => name);
  if (bed.length === 0) return "";
  const needed = usable.flatMap(({ name, needs }) =>
    needs.map((all) => [name, all.filter((one) => one.startsWith("z") || known.has(one))] as const),
  );
  const rows = [
    `${cants.map(({ name }) => name).join(" + ")} = 1`,
    `${bed.join(" + ")} = 1`,
    ...needed.map(([name, all]) => `${name} ${all.map((one) => `- ${one}`).join(" ")} <= 0`),
    ...(["over", "under", "inside"] as const).flatMap((line) =>
      marks.flatMap((mark) => {
        const taking = usable.filter((one) => one.line === line && one.from <= mark && mark < one.to);
        return taking.length > 1 ? [`${taking.map(({ name }) => name).join(" + ")} <= 1`] : [];
      }),
    ),
  ];
  return [
    "Maximize",
    ` worth: ${usable.map((one) => `${one.worth} ${one.name}`).join(" + ")}`,
    "Subject To",
    ...rows.map((row, i) => ` c${i}: ${row}`),
    "Binary",
    ...[...cants, ...usable].map(({ name }) => ` ${name}`),
    "End",
  ].join("\n");
}
