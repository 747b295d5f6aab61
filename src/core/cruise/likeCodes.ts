/** The codes of a list that a slip of one key would turn into what was typed: a letter wrong, missing, too many or swapped. */
export function likeCodes(typed: string, codes: readonly string[], most = 3): readonly string[] {
  const wrong = typed.trim().toLowerCase();
  const first = (code: string) => (code.toLowerCase().startsWith(wrong.slice(0, 1)) ? 0 : 1);
  return codes
    .filter((code) => isOneSlip(wrong, code.toLowerCase()))
    .map((code, place) => ({ code, place }))
    .sort((a, b) => first(a.code) - first(b.code) || a.place - b.place)
    .slice(0, most)
    .map(({ code }) => code);
}

function isOneSlip(one: string, other: string): boolean {
  if (one.length < 2 || one === other || Math.abs(one.length - other.length) > 1) return false;
  let same = 0;
  while (same < one.length && one[same] === other[same]) same += 1;
  const [rest, others] = [one.slice(same), other.slice(same)];
  const swapped =
    rest.length > 1 && rest[0] === others[1] && rest[1] === others[0] && rest.slice(2) === others.slice(2);
  return rest.slice(1) === others.slice(1) || rest.slice(1) === others || rest === others.slice(1) || swapped;
}
