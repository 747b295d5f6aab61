import { published } from "../published";

export const listedSpecies = () => published("tree/national/species.csv").rows;

/** The contents of src/core/reference/national/species.ts, whole. */
export function speciesList(): string {
  const lines = listedSpecies().map((row) =>
    [
      row.spcd,
      row.common_name,
      row.jenkins_spgrpcd,
      row.wood_spgr_greenvol_drywt,
      row.mc_pct_green_wood,
      row.wood_carbon_pct,
    ]
      .map((cell) => cell ?? "")
      .join(";"),
  );
  return `/**
 * Tree species of the United States as the national forest inventory lists them. One line a species: code; common
 * name; species group of the national equations, 10 for woodland trees; oven-dry weight over green volume, as a
 * specific gravity; moisture of green wood [% of dry weight]; carbon in dry wood [%]. Blank where the list has none.
 * Made from test/published/tree/national/species.csv by test/support/national/write.ts; change it there, never here.
 */
export const species = {
  lines: \`
${lines.join("\n")}
\`,
} as const;
`;
}

/** The contents of src/core/reference/national/scientificNames.ts, whole. */
export function scientificNameList(): string {
  const runs: { readonly genus: string; readonly kinds: string[] }[] = [];
  for (const { genus = "", species = "" } of listedSpecies()) {
    const last = runs.at(-1);
    if (last?.genus === genus) last.kinds.push(species);
    else runs.push({ genus, kinds: [species] });
  }
  const lines = runs.map(({ genus, kinds }) => `${genus}: ${kinds.join(", ")}`);
  return `/**
 * Scientific names of the species in species.ts, in the same order: a genus, then the epithets of the species that
 * follow one another in it. Apart from that list, since no cell asks for them and every cell would have to load them.
 * Made from test/published/tree/national/species.csv by test/support/national/write.ts; change it there, never here.
 */
export const scientificNames = {
  lines: \`
${lines.join("\n")}
\`,
} as const;
`;
}

/** The contents of src/core/reference/national/barkPercents.ts, whole. */
export function barkPercentList(): string {
  const codes = new Map<string, string[]>();
  for (const { spcd = "", bark_vol_pct = "" } of published("tree/national/barkPercents.csv").rows) {
    const same = codes.get(bark_vol_pct);
    if (same) same.push(spcd);
    else codes.set(bark_vol_pct, [spcd]);
  }
  const lines = [...codes]
    .sort(([one], [other]) => Number(one) - Number(other))
    .map(([percent, species]) => `${Number(percent)}: ${species.join(" ")}`);
  return `/**
 * Bark of tree species, as a percent of the volume of their wood: one line a percent, then the inventory codes of the
 * species that have it. Species that are not here have none listed.
 * Made from test/published/tree/national/barkPercents.csv by test/support/national/write.ts; change it there, never here.
 */
export const barkPercents = {
  lines: \`
${lines.join("\n")}
\`,
} as const;
`;
}
