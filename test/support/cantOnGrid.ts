/**
 * A cant from a cylinder, by plain programmes over a grid of saw places: the cant of a given thickness is turned and
 * sawn into inch boards of whole-inch widths and planks as wide as the cant; inch side boards lie above and below.
 * Board feet of 8-ft boards. Never above the truth, since it tries only some places.
 */
export function cantOnGrid(
  diameter: number,
  kerf: number,
  cants: readonly number[],
  step: number,
  { leastWidth = 3, planks = [2] }: { readonly leastWidth?: number; readonly planks?: readonly number[] } = {},
): number {
  const radius = diameter / 2;
  const places = Math.round(diameter / step);
  const at = (place: number) => place * step - radius;
  const wide = (from: number, to: number) => 2 * Math.sqrt(Math.max(0, radius ** 2 - Math.max(from ** 2, to ** 2)));
  const inch = Math.round(1 / step);
  const gap = Math.round(kerf / step);

  // Inch widths of the best side boards whose last kerf ends at a place or below.
  const below = new Float64Array(places + 1);
  for (let place = 1; place <= places; place += 1) {
    below[place] = below[place - 1] as number;
    const lower = place - gap - inch;
    if (lower < 0) continue;
    const width = Math.floor(wide(at(lower), at(lower + inch)) + 1e-9);
    if (width >= leastWidth) below[place] = Math.max(below[place] as number, width + (below[lower] as number));
  }

  const inside = (cant: number, lowerFace: number): number => {
    const rest = new Float64Array(places + gap + 1);
    for (let place = places - 1; place >= 0; place -= 1) {
      rest[place] = rest[place + 1] as number;
      for (const thickness of [1, ...planks]) {
        const next = place + thickness * inch;
        if (next > places) continue;
        const half = wide(at(place), at(next)) / 2;
        const room = Math.min(lowerFace + cant, half) - Math.max(lowerFace, 0 - half);
        const width = thickness === 1 ? Math.floor(room + 1e-9) : room >= cant - 1e-9 ? cant : 0;
        if (width < leastWidth) continue;
        const worth = thickness * width + (rest[Math.min(places, next + gap)] as number);
        rest[place] = Math.max(rest[place] as number, worth);
      }
    }
    return rest[0] as number;
  };

  let best = 0;
  for (const cant of cants.filter((one) => one < diameter)) {
    for (let place = 0; place <= places; place += 1) {
      const [lower, upper] = [at(place), at(place) + cant];
      if (lower > 0 || upper < 0 || upper > radius) continue;
      const above = below[Math.round((radius - upper) / step)] as number;
      best = Math.max(best, (below[place] as number) + above + inside(cant, lower));
    }
  }
  return (best * 8) / 12;
}
