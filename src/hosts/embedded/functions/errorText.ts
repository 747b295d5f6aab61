const ERROR_TEXT = /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|BUSY!)$/;

/** True for the text by which the engine hands an error from cell to cell. */
export const isErrorText = (cell: unknown): cell is string =>
  typeof cell === "string" && cell.charCodeAt(0) === HASH && ERROR_TEXT.test(cell);

const HASH = 35;
