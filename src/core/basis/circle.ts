/** Square feet in a circle one inch across: pi/4 over the 144 square inches of a square foot. */
export const SQUARE_FEET_PER_SQUARE_INCH_OF_DIAMETER = Math.PI / 576;
