/**
 * How far wood reaches to the left and to the right of the pith, along the saw planes, where planes square to them were
 * sawn before; to the bark where none were. The pith lies between the two. [in]
 */
export interface Sides {
  readonly left: number;
  readonly right: number;
}

export const toTheBark: Sides = { left: -Infinity, right: Infinity };
