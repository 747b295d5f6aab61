/** The words of some names, in small letters. */
export const wordsIn = (names: readonly string[]): readonly string[] =>
  names.flatMap((name) => name.toLowerCase().split(/[^\p{L}\p{N}]+/u)).filter((word) => word !== "");

/** Whether every word of a text is the beginning of one of some words: "su ma" begins "sugar maple". */
export function wordsBegin(text: string, words: readonly string[]): boolean {
  const asked = wordsIn([text]);
  return asked.length > 0 && asked.every((word) => words.some((other) => other.startsWith(word)));
}
