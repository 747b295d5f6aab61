import { call, column, thisRow } from "../formula";
import { formats } from "../formats";
import type { ColumnPlan } from "../plan";
import { named, species, SPECIES } from "../tables";
import { asked, quoted } from "./sheetParts";

const here = (heading: string) => thisRow(SPECIES, heading);
/** What tells which species of the national list is meant: its code, or else its name. */
const meant = `IF(${here(species.fia)}="",${here(species.name)},${here(species.fia)})`;
/** A fact of the national list, blank where it does not know the species; Check says why. */
const listed = (fact: string) => `=IFERROR(${call("SPECIESOF", meant, quoted(fact))},"")`;

/** The owner's own codes, each with the species of the national list that it stands for and what is known of that. */
export const speciesColumns: readonly ColumnPlan[] = [
  { heading: species.code, width: 26, format: formats.text },
  { heading: species.name, width: 28, format: formats.text },
  {
    heading: species.fia,
    width: 13,
    format: formats.whole,
    rule: asked(1, 10_000, "Number of the species in the national forest inventory; blank when the name is enough."),
  },
  {
    heading: species.check,
    width: 80,
    formula: `=IF(${here(species.code)}="","",IF(COUNTIF(${column(SPECIES, species.code)},${here(species.code)})>1,"This code is listed twice.",${call("CHECKSPECIES", here(species.name), here(species.fia))}))`,
  },
  { heading: species.national, width: 28, formula: listed("Name") },
  { heading: species.scientific, width: 28, format: formats.text },
  { heading: species.group, width: 36, formula: listed("Group") },
  {
    heading: species.formClass,
    width: 12,
    format: formats.whole,
    rule: asked(65, 90, "A percent from 65 to 90; blank for the one of all species, above."),
  },
  {
    heading: species.usedFormClass,
    width: 16,
    format: formats.whole,
    formula: `=IF(${here(species.formClass)}="",${named.formClass},${here(species.formClass)})`,
  },
  {
    heading: species.density,
    width: 17,
    format: formats.whole,
    rule: asked(20, 80, "Pounds per cubic foot of green wood, from 20 to 80; blank when you do not know it."),
  },
  {
    heading: species.listedDensity,
    width: 23,
    format: formats.whole,
    formula: listed("Green lb per ft3"),
  },
  {
    heading: species.gravity,
    width: 16,
    format: formats.hundredth,
    formula: listed("Specific gravity"),
  },
  {
    heading: species.barkRatio,
    width: 12,
    format: formats.thickness,
    formula: listed("Bark ratio"),
  },
  {
    heading: species.key,
    width: 14,
    format: formats.whole,
    formula: listed("FIA code"),
  },
];

/** What a computed column of the list has for a code, or what stands in its place when the list does not have the code. */
export const ofSpecies = (heading: string, code: string, otherwise = '""'): string =>
  `XLOOKUP(${code},${column(SPECIES, species.code)},${column(SPECIES, heading)},${otherwise})`;
