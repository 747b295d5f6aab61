import type { Source, Standing } from "../basis/source";

/**
 * Hardwood lumber: rough thickness and what is left of it surfaced on two sides, for dry lumber. [in]
 * Actual boards are often a little thicker; one surfaced side is a matter of agreement and is not tabulated here.
 */
export const hardwoodThicknesses = {
  sources: [
    {
      author: "Engineering ToolBox",
      year: "n.d.",
      title: "Hardwood lumber dimensions",
      where: "surfaced on two sides (S2S), every row but 10/4",
      url: "https://www.engineeringtoolbox.com/hardwood-lumber-dimensions-chart-d_1462.html",
      standing: "read",
    },
    {
      author: "woodbin.com",
      year: "n.d.",
      title: "Lumber dimensions",
      where: "S2S, 3/8 to 4 in, without 7/4, 10/4 and 14/4: the same figures",
      url: "http://www.woodbin.com/ref/lumber-dimensions/",
      standing: "read",
    },
    {
      author: "The trade",
      year: "",
      title: "Hardwood lumber dimensions",
      where: "10/4 surfaced to 2 1/4 in, after the pattern of its neighbours: 1/4 in less than rough",
      standing: "from memory",
    },
  ] satisfies readonly Source[],
  rows: [
    { rough: 3 / 8, surfaced: 3 / 16, standing: "read" },
    { rough: 1 / 2, surfaced: 5 / 16, standing: "read" },
    { rough: 5 / 8, surfaced: 7 / 16, standing: "read" },
    { rough: 3 / 4, surfaced: 9 / 16, standing: "read" },
    { rough: 1, surfaced: 13 / 16, standing: "read" },
    { rough: 1 + 1 / 4, surfaced: 1 + 1 / 16, standing: "read" },
    { rough: 1 + 1 / 2, surfaced: 1 + 5 / 16, standing: "read" },
    { rough: 1 + 3 / 4, surfaced: 1 + 1 / 2, standing: "read" },
    { rough: 2, surfaced: 1 + 3 / 4, standing: "read" },
    { rough: 2 + 1 / 2, surfaced: 2 + 1 / 4, standing: "from memory" },
    { rough: 3, surfaced: 2 + 3 / 4, standing: "read" },
    { rough: 3 + 1 / 2, surfaced: 3 + 1 / 4, standing: "read" },
    { rough: 4, surfaced: 3 + 3 / 4, standing: "read" },
  ] satisfies readonly { rough: number; surfaced: number; standing: Standing }[],
} as const;
