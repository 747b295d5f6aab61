/** The day this release was closed, and the day each printed table in it was last changed. */
export const RELEASED = {
  date: "2026-11-24",
  tables: [
    { file: "scribnerDecimalCTable", title: "Scribner Decimal C log rule", date: "2026-11-24" },
    { file: "northwestFactors", title: "Scribner board feet per foot, Northwest (from memory)", date: "2026-11-24" },
    { file: "softwoodSizes", title: "Softwood dressed sizes, PS 20", date: "2026-11-24" },
    { file: "hardwoodThicknesses", title: "Hardwood surfaced thicknesses", date: "2026-11-24" },
    { file: "woodProperties", title: "Wood of 70 species", date: "2026-11-24" },
    { file: "national", title: "National volume and biomass equations, GTR WO-104", date: "2026-11-24" },
    { file: "upperLogTaper", title: "Average upper-log taper", date: "2026-11-24" },
  ],
} as const;
