const messageOf = (cell: unknown) => (cell instanceof CustomFunctions.Error ? cell.message : undefined);

/** A row whose cells all have one and the same problem has it in its first cell; the others stay blank. */
export function saidOnce(row: readonly unknown[]): readonly unknown[] {
  const [first, ...others] = row;
  const message = messageOf(first);
  if (message === undefined || !others.every((cell) => messageOf(cell) === message)) return row;
  return [first, ...others.map(() => "")];
}
