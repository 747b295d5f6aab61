import type { TableRow } from "../workbook/plan";
import { species } from "../workbook/tables";

const line = (code: string, name: string, fia: number, scientific: string, density: number): TableRow => ({
  [species.code]: code,
  [species.name]: name,
  [species.fia]: fia,
  [species.scientific]: scientific,
  [species.density]: density,
});

/** The invented owner's short codes; the weights of green wood are invented too. */
export const demoSpecies: readonly TableRow[] = [
  line("ro", "red oak", 833, "Quercus rubra", 62),
  line("wo", "white oak", 802, "Quercus alba", 60),
  line("sm", "sugar maple", 318, "Acer saccharum", 55),
  line("yp", "yellow-poplar", 621, "Liriodendron tulipifera", 40),
  line("bc", "black cherry", 762, "Prunus serotina", 45),
  line("hi", "hickory", 400, "Carya spp.", 65),
];
