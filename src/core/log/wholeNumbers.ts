/** in, ft: keeps 14.5 in or 16 ft what they are when they come out of a conversion from metric a hair off. */
export const A_HAIR = 1e-9;

/** To the nearest whole number, an exact half to the lower one: 14.5 becomes 14, 14.6 becomes 15. */
export const nearestHalfDown = (value: number): number => Math.ceil(value - 0.5 - A_HAIR);

/** To the nearest whole number, an exact half to the higher one. */
export const nearestHalfUp = (value: number): number => Math.floor(value + 0.5 + A_HAIR);

/** The fraction dropped. */
export const alwaysDown = (value: number): number => Math.floor(value + A_HAIR);
