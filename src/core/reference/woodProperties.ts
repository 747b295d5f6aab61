import type { Source, Standing } from "../basis/source";

/** One species, in the order of the columns below. */
export type WoodRow = readonly [
  code: number,
  name: string,
  scientific: string,
  gravity: number,
  green: number,
  radial: number,
  tangential: number,
  shrinkage: Standing,
];

/**
 * Wood of 70 species:
 *
 *     code        number of the species in the Forest Service's inventory
 *     gravity     basic specific gravity: ovendry weight over green volume
 *     green       mean moisture content of green wood                           [% of the ovendry weight]
 *     radial      shrinkage from green to ovendry, across the growth rings      [% of the green size]
 *     tangential  the same along the rings                                      [% of the green size]
 *     shrinkage   how these two came here; gravity and green moisture were all read
 *
 * Of the shrinkages, "read" was read in the handbook's own table or in a page that repeats it; "computed" follows from
 * change coefficients that were read; "from memory" is recalled from the same table (of Engelmann spruce, western
 * hemlock and western larch the tangential figure was read).
 */
export const woodProperties = {
  sources: [
    {
      author: "USDA Forest Service",
      year: "2009",
      title: "FIA reference table of species, after P. D. Miles and W. B. Smith, Research Note NRS-38",
      where: "basic specific gravity and mean green moisture of all 70 species, in a public copy of REF_SPECIES",
      url: "https://github.com/JasonSteelmanCoder/east_us_mycorrhizal_changes",
      standing: "read",
    },
    {
      author: "Forest Products Laboratory",
      year: "2010",
      title: "Wood Handbook, FPL-GTR-190",
      where:
        "Table 4-3, p. 4-6, shrinkage green to ovendry: 39 of the 70 species, bur oak and sugar maple among them in a copy",
      url: "https://issuhub.com/view/index/5801?pageIndex=85",
      standing: "read",
    },
    {
      author: "Trade pages repeating the Wood Handbook",
      year: "n.d.",
      title: "Species pages",
      where: "shrinkage of 8 species more, northern red oak, red maple and eastern white pine among them",
      url: "https://www.midwesttimbersupply.com/eastern-white-pine/",
      standing: "read",
    },
    {
      author: "Forest Products Laboratory",
      year: "2010",
      title: "Wood Handbook, FPL-GTR-190",
      where: "shrinkage of black locust, worked back from its change coefficients in Table 13-5",
      standing: "computed",
    },
    {
      author: "Forest Products Laboratory",
      year: "2010",
      title: "Wood Handbook, FPL-GTR-190",
      where: "Table 4-3, shrinkage recalled and not seen in print",
      standing: "from memory",
    },
  ] satisfies readonly Source[],
  rows: [
    [951, "American basswood", "Tilia americana", 0.32, 105.3, 6.6, 9.3, "read"],
    [531, "American beech", "Fagus grandifolia", 0.56, 54.5, 5.5, 11.9, "read"],
    [972, "American elm", "Ulmus americana", 0.46, 94.0, 4.2, 9.5, "read"],
    [731, "American sycamore", "Platanus occidentalis", 0.46, 81.2, 5.0, 8.4, "read"],
    [743, "bigtooth aspen", "Populus grandidentata", 0.36, 91.4, 3.3, 7.9, "read"],
    [543, "black ash", "Fraxinus nigra", 0.45, 85.2, 5.0, 7.8, "read"],
    [762, "black cherry", "Prunus serotina", 0.47, 53.4, 3.7, 7.1, "read"],
    [901, "black locust", "Robinia pseudoacacia", 0.66, 40.8, 4.6, 7.2, "computed"],
    [837, "black oak", "Quercus velutina", 0.56, 83.1, 4.4, 11.1, "from memory"],
    [602, "black walnut", "Juglans nigra", 0.51, 79.1, 5.5, 7.8, "read"],
    [922, "black willow", "Salix nigra", 0.36, 127.0, 3.3, 8.7, "read"],
    [693, "blackgum", "Nyssa sylvatica", 0.46, 101.0, 5.1, 8.7, "read"],
    [823, "bur oak", "Quercus macrocarpa", 0.58, 74.1, 4.4, 8.8, "read"],
    [601, "butternut", "Juglans cinerea", 0.36, 104.8, 3.4, 6.4, "read"],
    [832, "chestnut oak", "Quercus prinus", 0.57, 77.1, 5.3, 10.8, "read"],
    [651, "cucumbertree", "Magnolia acuminata", 0.44, 78.5, 5.2, 8.8, "from memory"],
    [742, "eastern cottonwood", "Populus deltoides", 0.37, 116.6, 3.9, 9.2, "read"],
    [544, "green ash", "Fraxinus pennsylvanica", 0.53, 57.2, 4.6, 7.1, "read"],
    [462, "hackberry", "Celtis occidentalis", 0.49, 63.5, 4.8, 8.9, "read"],
    [409, "mockernut hickory", "Carya alba", 0.64, 62.8, 7.7, 11.0, "read"],
    [833, "northern red oak", "Quercus rubra", 0.56, 83.1, 4.0, 8.6, "read"],
    [375, "paper birch", "Betula papyrifera", 0.48, 73.6, 6.3, 8.6, "read"],
    [403, "pignut hickory", "Carya glabra", 0.66, 65.1, 7.2, 11.5, "read"],
    [835, "post oak", "Quercus stellata", 0.6, 70.9, 5.4, 9.8, "read"],
    [746, "quaking aspen", "Populus tremuloides", 0.35, 128.9, 3.5, 6.7, "read"],
    [351, "red alder", "Alnus rubra", 0.37, 99.2, 4.4, 7.3, "read"],
    [316, "red maple", "Acer rubrum", 0.49, 63.5, 4.0, 8.2, "read"],
    [931, "sassafras", "Sassafras albidum", 0.42, 67.9, 4.0, 6.2, "read"],
    [806, "scarlet oak", "Quercus coccinea", 0.6, 70.9, 4.4, 10.8, "from memory"],
    [407, "shagbark hickory", "Carya ovata", 0.64, 60.2, 7.0, 10.5, "from memory"],
    [317, "silver maple", "Acer saccharinum", 0.44, 67.5, 3.0, 7.2, "read"],
    [975, "slippery elm", "Ulmus rubra", 0.48, 77.0, 4.9, 8.9, "read"],
    [812, "southern red oak", "Quercus falcata", 0.52, 97.2, 4.7, 11.3, "from memory"],
    [318, "sugar maple", "Acer saccharum", 0.56, 57.4, 4.8, 9.9, "read"],
    [372, "sweet birch", "Betula lenta", 0.6, 73.0, 6.5, 9.0, "read"],
    [611, "sweetgum", "Liquidambar styraciflua", 0.46, 74.2, 5.3, 10.2, "read"],
    [541, "white ash", "Fraxinus americana", 0.55, 45.7, 4.9, 7.8, "read"],
    [802, "white oak", "Quercus alba", 0.6, 68.3, 5.6, 10.5, "read"],
    [371, "yellow birch", "Betula alleghaniensis", 0.55, 71.9, 7.3, 9.5, "read"],
    [621, "yellow-poplar", "Liriodendron tulipifera", 0.4, 95.0, 4.6, 8.2, "read"],
    [43, "Atlantic white-cedar", "Chamaecyparis thyoides", 0.31, 86.1, 2.9, 5.4, "read"],
    [202, "Douglas-fir", "Pseudotsuga menziesii", 0.45, 35.3, 4.8, 7.6, "read"],
    [93, "Engelmann spruce", "Picea engelmannii", 0.33, 89.4, 3.8, 7.1, "from memory"],
    [98, "Sitka spruce", "Picea sitchensis", 0.33, 60.2, 4.3, 7.5, "from memory"],
    [132, "Virginia pine", "Pinus virginiana", 0.45, 78.1, 4.2, 7.2, "from memory"],
    [221, "baldcypress", "Taxodium distichum", 0.42, 94.6, 3.8, 6.2, "from memory"],
    [12, "balsam fir", "Abies balsamea", 0.33, 118.5, 2.9, 6.9, "read"],
    [95, "black spruce", "Picea mariana", 0.38, 47.6, 4.1, 6.8, "from memory"],
    [261, "eastern hemlock", "Tsuga canadensis", 0.38, 110.9, 3.0, 6.8, "read"],
    [68, "eastern redcedar", "Juniperus virginiana", 0.44, 34.8, 3.1, 4.7, "read"],
    [129, "eastern white pine", "Pinus strobus", 0.34, 65.0, 2.1, 6.1, "read"],
    [17, "grand fir", "Abies grandis", 0.35, 106.1, 3.4, 7.5, "read"],
    [105, "jack pine", "Pinus banksiana", 0.4, 100.3, 3.7, 6.6, "read"],
    [131, "loblolly pine", "Pinus taeda", 0.47, 80.7, 4.8, 7.4, "read"],
    [108, "lodgepole pine", "Pinus contorta", 0.38, 64.5, 4.3, 6.7, "from memory"],
    [121, "longleaf pine", "Pinus palustris", 0.54, 63.2, 5.1, 7.5, "read"],
    [241, "northern white-cedar", "Thuja occidentalis", 0.29, 98.9, 2.2, 4.9, "read"],
    [126, "pitch pine", "Pinus rigida", 0.47, 70.5, 4.0, 7.1, "from memory"],
    [122, "ponderosa pine", "Pinus ponderosa", 0.38, 89.8, 3.9, 6.2, "from memory"],
    [125, "red pine", "Pinus resinosa", 0.41, 64.2, 3.8, 7.2, "from memory"],
    [97, "red spruce", "Picea rubens", 0.37, 47.3, 3.8, 7.8, "from memory"],
    [110, "shortleaf pine", "Pinus echinata", 0.47, 77.3, 4.6, 7.7, "from memory"],
    [111, "slash pine", "Pinus elliottii", 0.54, 72.1, 5.4, 7.6, "from memory"],
    [117, "sugar pine", "Pinus lambertiana", 0.34, 130.0, 2.9, 5.6, "from memory"],
    [71, "tamarack", "Larix laricina", 0.49, 53.7, 3.7, 7.4, "from memory"],
    [263, "western hemlock", "Tsuga heterophylla", 0.42, 56.5, 4.2, 7.8, "from memory"],
    [73, "western larch", "Larix occidentalis", 0.48, 60.2, 4.5, 9.1, "from memory"],
    [242, "western redcedar", "Thuja plicata", 0.31, 39.6, 2.4, 5.0, "read"],
    [119, "western white pine", "Pinus monticola", 0.36, 55.8, 4.1, 7.4, "from memory"],
    [15, "white fir", "Abies concolor", 0.37, 103.6, 3.3, 7.0, "read"],
  ] satisfies readonly WoodRow[],
} as const;
