import { numberIn, published } from "./published";

/** A published list of answers, one quantity a row, each with the step to which it is printed. */
export function answersOf(
  path: string,
): (quantity: string) => { readonly printed: number; readonly printedTo: number } {
  const { rows } = published(path);
  return (quantity) => {
    const row = rows.find((one) => one.quantity === quantity);
    if (!row) throw new Error(`${path} has no answer for "${quantity}"`);
    return { printed: numberIn(row, "value"), printedTo: numberIn(row, "printed to") };
  };
}
