import type { TableRow } from "../workbook/plan";
import { product } from "../workbook/tables";

const line = (
  name: string,
  smallestEnd: number,
  [shortest, longest, step]: readonly [number, number, number],
  soldBy: string,
  price: number,
): TableRow => ({
  [product.product]: name,
  [product.smallestEnd]: smallestEnd,
  [product.shortest]: shortest,
  [product.longest]: longest,
  [product.step]: step,
  [product.soldBy]: soldBy,
  [product.price]: price,
});

/** What the invented woodlot sells, at round and invented prices. */
export const demoProducts: readonly TableRow[] = [
  line("Sawlogs", 10, [12, 16, 2], "International 1/4", 450),
  line("Short sawlogs", 8, [8, 10, 2], "International 1/4", 330),
  line("Pulpwood", 4, [8, 8, 1], "Cords", 20),
  line("Firewood", 3, [4, 4, 1], "Cords", 12),
];
