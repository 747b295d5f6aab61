const PLAIN_NUMBER = /^[+-]?(\d+(\.\d*)?|\.\d+)$/;

/** The number that a text is, written with a point and nothing else; undefined when it is none. */
export const plainNumber = (text: string): number | undefined => (PLAIN_NUMBER.test(text) ? Number(text) : undefined);
