/** A surveyor's chain. [ft] */
export const feetPerChain = 66;
