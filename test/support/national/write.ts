import { writeFileSync } from "node:fs";
import { packedTables } from "./packedTables";
import { barkPercentList, scientificNameList, speciesList } from "./speciesLists";

/** The files of src that are made from printed tables, by their path, each with its contents. */
export const madeFiles: Readonly<Record<string, () => string>> = {
  "src/core/reference/national/speciesCoefficients.ts": packedTables,
  "src/core/reference/national/species.ts": speciesList,
  "src/core/reference/national/scientificNames.ts": scientificNameList,
  "src/core/reference/national/barkPercents.ts": barkPercentList,
};

// Run by hand from the top of the project, after a change to a table: npx tsx test/support/national/write.ts
if (process.argv[1]?.endsWith("write.ts")) {
  for (const [file, contents] of Object.entries(madeFiles)) writeFileSync(file, contents());
}
