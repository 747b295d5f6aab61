import { html, nothing } from "lit";
import { acres } from "../../core/basis/units";
import { tractTotal } from "../../core/cruise/tractTotal";
import { estimateLines, type EstimateLine } from "../components/estimateLine";
import { figure } from "../figures";
import type { Job } from "../job/job";
import type { ProductAnswers, ProductLine } from "../job/readProducts";

const unitsInWords: Readonly<Record<string, string>> = {
  bf: "bf per acre",
  cord: "cords per acre",
  ft3: "ft³ per acre",
  trees: "trees per acre",
};
const WHOLE = "Whole stems";

/** What the stand holds of each product, each with its margin; the wood of all of them adds up to the last line. */
export function productLines({ lines, lacking, byOwnTable }: ProductAnswers, job: Job) {
  if (lines.length === 0) return html`<p class="hint">${lacking}</p>`;
  const products = lines.filter(({ volume, wood }) => volume && wood && volume.value > 0);
  const others = lines.filter(({ volume, wood }) => volume && !wood);
  const byHeight = lines.some(({ name }) => name === WHOLE);
  return html`<p class="hint">
      Every stem cut into what pays best, drawn by
      ${byHeight ? "total height" : "logs and form class"}.${
        byHeight && byOwnTable ? " Here the national equations draw the stems, not your local table." : ""
      }
    </p>
    ${estimateLines([...products.flatMap(shown), ...wood(lines), ...others.flatMap(shown)])} ${sum(lines)}
    ${onTract(products, job)}`;
}

/** Totals of each product on all acres, with what the margin of the acres adds; nothing until the acres are known. */
function onTract(products: readonly ProductLine[], job: Job) {
  const { acres: size, acresMargin } = job;
  if (!size) return nothing;
  const lines = products.flatMap(({ name, unit, volume }): readonly EstimateLine[] => {
    if (!volume) return [];
    const line = { title: `${name}, whole tract`, unit: (unitsInWords[unit] ?? unit).replace(" per acre", "") };
    if (volume.margin === null) return [{ ...line, estimated: { ...volume, value: volume.value * size } }];
    const { value, margin, low, high } = tractTotal(volume.value, volume.margin, acres(size), acres(acresMargin));
    const percent = value > 0 ? (100 * margin) / value : null;
    return [{ ...line, estimated: { what: name, value, margin, percent, low, high } }];
  });
  return html`<p class="hint">On all ${figure(size)} acres:</p>
    ${estimateLines(lines)}`;
}

function shown({ name, unit, volume, value }: ProductLine): readonly EstimateLine[] {
  if (!volume) return [];
  const worth = value && value.value > 0 ? `, $${figure(value.value)} an acre` : "";
  return [{ title: `${name}${worth}`, unit: unitsInWords[unit] ?? unit, estimated: volume }];
}

/** The wood of all stems, with its margin. */
function wood(lines: readonly ProductLine[]): readonly EstimateLine[] {
  const last = lines.filter((line) => line.wood).at(-1);
  return last?.wood ? [{ title: `Wood, ${last.name.toLowerCase()}`, unit: "ft³ per acre", estimated: last.wood }] : [];
}

/** The wood of the products and of what stays in the woods, which add up. */
function sum(lines: readonly ProductLine[]) {
  const wood = lines.flatMap(({ name, wood }) => (wood ? [{ name, wood: wood.value }] : []));
  const last = wood.at(-1);
  if (!last) return nothing;
  const parts = wood.slice(0, -1).map((part) => `${part.name.toLowerCase()} ${figure(part.wood)}`);
  return html`<p class="meaning">
    Wood, ft³ per acre: ${parts.join(" + ")} = ${last.name.toLowerCase()} ${figure(last.wood)}.
  </p>`;
}
