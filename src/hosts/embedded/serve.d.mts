export function serve(
  root: string,
  firstPort?: number,
): Promise<{ readonly url: string; readonly close: () => Promise<void> }>;
