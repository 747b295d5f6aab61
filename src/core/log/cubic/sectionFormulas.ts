import type { Source } from "../../basis/source";

/** Where the formulas by sections are told and compared. */
export const sectionFormulas: Source = {
  author: "C. J. Goulding",
  year: "1977/79",
  title: "New Zealand Journal of Forestry Science, paper on the volume of tree sections",
  where: "Smalian, Huber and Newton compared; Newton is taken as best, then Huber",
  url: "https://vdocument.in/calculo-do-volume-de-secoes-de-arvores.html",
  standing: "read",
};
