/** Exact conversions between the imperial units of the sources and metric ones. One inch is 2.54 cm by definition. */
export const CM_PER_INCH = 2.54;
export const M_PER_FOOT = 0.3048;
export const M3_PER_FT3 = M_PER_FOOT ** 3;
export const M2_PER_FT2 = M_PER_FOOT ** 2;
/** International acre: 43 560 square international feet. */
export const HA_PER_ACRE = (43_560 * M2_PER_FT2) / 10_000;
export const KG_PER_LB = 0.45359237;
export const M2_PER_HA_PER_FT2_PER_ACRE = M2_PER_FT2 / HA_PER_ACRE;
