import { builtFunction } from "./builtFunctions";
import { ratio, type Ratio } from "./ratio";

const ROWS = 100_000;

/** Rows of Tables S1a, S3a, S4a and S5a for two species at large, copied for the bare loops. */
const KINDS = [
  {
    name: "red maple",
    wood: { a: 0.001983919, b: 1.810559393, c: 1.129417635 },
    outside: { a: 0.003068677, b: 1.811800478, c: 1.054949234 },
    inRatio: { alpha: 2.533953227, beta: 0.878122316 },
    outRatio: { alpha: 2.500241064, beta: 0.883741417 },
  },
  {
    name: "white oak",
    wood: { a: 0.002321951, b: 1.889060817, c: 1.049599115 },
    outside: { a: 0.00331324, b: 1.835342513, c: 1.038102224 },
    inRatio: { alpha: 2.443333478, beta: 0.828682633 },
    outRatio: { alpha: 2.397656373, beta: 0.835018634 },
  },
];

type Kind = (typeof KINDS)[number];

/** STEMVOLUME down a column, against bare loops of the same formulas over typed arrays. */
export async function stemVolumeRatios(): Promise<readonly Ratio[]> {
  const [stemVolume, stemDiameter] = [builtFunction("STEMVOLUME"), builtFunction("STEMDIAMETER")];
  const kinds = Uint8Array.from({ length: ROWS }, (_, i) => i % 2);
  const diameters = Float64Array.from({ length: ROWS }, (_, i) => 5 + (i % 250) / 10);
  const heights = Float64Array.from({ length: ROWS }, (_, i) => 40 + (i % 61));
  const answers = new Float64Array(ROWS);
  const nameCells = Array.from(kinds, (kind) => [(KINDS[kind] as Kind).name]);
  const diameterCells = Array.from(diameters, (value) => [value]);
  const heightCells = Array.from(heights, (value) => [value]);

  const loop = (of: (kind: Kind, dbh: number, height: number) => number) => () => {
    for (let i = 0; i < ROWS; i += 1) answers[i] = of(KINDS[kinds[i]!]!, diameters[i]!, heights[i]!);
    return answers;
  };
  const wood = ({ wood: { a, b, c } }: Kind, dbh: number, height: number) => a * dbh ** b * height ** c;
  const sharePerHeight = (share: number, { alpha, beta }: Kind["inRatio"]) => (1 - (1 - share) ** alpha) ** beta;

  /** The stem outside bark solved for a 4-inch top by thirty halvings, which settle it to a millionth of a foot. */
  const merchantable = (kind: Kind, dbh: number, height: number) => {
    const { outside, outRatio, inRatio } = kind;
    const { alpha, beta } = outRatio;
    const scale = ((outside.a * dbh ** outside.b * height ** outside.c) / 0.005454154 / height) * alpha * beta;
    let [low, high] = [0, 1];
    for (let i = 0; i < 30; i += 1) {
      const middle = (low + high) / 2;
      const above = 1 - middle;
      if (scale * above ** (alpha - 1) * (1 - above ** alpha) ** (beta - 1) > 16) low = middle;
      else high = middle;
    }
    return (sharePerHeight(low, inRatio) - sharePerHeight(1 / height, inRatio)) * wood(kind, dbh, height);
  };
  const diameterAt = (kind: Kind, dbh: number, height: number) => {
    const { alpha, beta } = kind.inRatio;
    const above = 1 - 17.3 / height;
    const scale = (wood(kind, dbh, height) / 0.005454154 / height) * alpha * beta;
    return Math.sqrt(scale * above ** (alpha - 1) * (1 - above ** alpha) ** (beta - 1));
  };

  return [
    await ratio(
      "STEMVOLUME, 100,000 trees of 2 species, wood, against a bare loop of the formula",
      "3",
      () => stemVolume(nameCells, diameterCells, heightCells),
      loop(wood),
    ),
    await ratio(
      "STEMVOLUME, 100,000 trees, merchantable wood, against a bare loop that halves its way to the top",
      "1",
      () => stemVolume(nameCells, diameterCells, heightCells, "Merchantable wood"),
      loop(merchantable),
    ),
    await ratio(
      "STEMDIAMETER, 100,000 trees, inside bark at 17.3 ft, against a bare loop of the formula",
      "3",
      () => stemDiameter(nameCells, diameterCells, heightCells, [[17.3]]),
      loop(diameterAt),
    ),
  ];
}
