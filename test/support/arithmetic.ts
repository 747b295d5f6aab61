/** What a text of plain arithmetic comes to: + - * / ^ and brackets. Undefined when it is no such text. */
export function arithmetic(text: string): number | undefined {
  if (!/^[\d.+\-*/^() ]+$/.test(text)) return undefined;
  const signs = text.match(/\d+(\.\d+)?|[+\-*/^()]/g) ?? [];
  let at = 0;
  const next = () => signs[at];
  const take = () => signs[at++];

  const number = (): number => {
    if (next() === "-") {
      take();
      return -number();
    }
    if (next() !== "(") return Number(take());
    take();
    const inside = terms();
    take();
    return inside;
  };
  const power = (): number => {
    const base = number();
    if (next() !== "^") return base;
    take();
    return base ** power();
  };
  const factors = (): number => {
    let product = power();
    while (next() === "*" || next() === "/") product = take() === "*" ? product * power() : product / power();
    return product;
  };
  const terms = (): number => {
    let total = factors();
    while (next() === "+" || next() === "-") total = take() === "+" ? total + factors() : total - factors();
    return total;
  };

  const result = terms();
  if (at !== signs.length) throw new Error(`"${text}" does not add up`);
  return result;
}
