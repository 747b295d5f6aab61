import type { Source } from "../../basis/source";

const report = {
  author: "J. A. Westfall and others",
  year: "2024",
  title: "A national-scale tree volume, biomass, and carbon modeling system for the United States, GTR WO-104",
  url: "https://doi.org/10.2737/WO-GTR-104",
} as const;

/** The report's own text was not opened; its equations and examples were read as others set them down word for word. */
export const nationalEquations: Source = {
  ...report,
  where: "equations 1 to 7 and worked examples 1, 2 and 4, in public copies of their text",
  standing: "read",
};

export const nationalCoefficients: Source = {
  ...report,
  where: "Supplement 1, Tables S1 to S5, S8 and S10a, in the copy of its files that is in public circulation",
  standing: "read",
};

export const nationalSpecies: Source = {
  author: "USDA Forest Service",
  year: "2023",
  title: "Forest Inventory and Analysis database, reference table of species",
  where: "codes, common names, species groups, specific gravity and moisture of green wood",
  standing: "read",
};

export const nationalBark: Source = {
  author: "P. D. Miles and W. B. Smith",
  year: "2009",
  title: "Specific gravity and other properties of wood and bark for 156 tree species found in North America, NRS-38",
  where: "bark volume in percent of wood volume, as the inventory's reference table of species has it",
  url: "https://doi.org/10.2737/NRS-RN-38",
  standing: "read",
};
