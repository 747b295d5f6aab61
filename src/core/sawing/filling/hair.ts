/** Lets a plan survive the rounding of square roots; far below what any mill can set. [in] */
export const HAIR = 1e-9;
