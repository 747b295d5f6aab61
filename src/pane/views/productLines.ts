import { html, nothing } from "lit";
import { estimateLines, type EstimateLine } from "../components/estimateLine";
import { figure } from "../figures";
import type { Job } from "../job/job";
import { productTotal } from "../job/productTotal";
import type { LandUnits, ProductAnswers, ProductLine } from "../job/readProducts";

const WHOLE = "Whole stems";

/** What a volume is counted in. */
const countedIn = (unit: string) => ({ cord: "cords", ft3: "ft³", m3: "m³" })[unit] ?? unit;

/** What the stand holds of each product, each with its margin; the wood of all of them adds up to the last line. */
export function productLines({ lines, lacking, byOwnTable, units }: ProductAnswers, job: Job) {
  if (lines.length === 0) return html`<p class="hint">${lacking}</p>`;
  const products = lines.filter(({ volume, wood }) => volume && wood && volume.value > 0);
  const others = lines.filter(({ volume, wood }) => volume && !wood);
  const byHeight = lines.some(({ name }) => name === WHOLE);
  return html`<p class="hint">
      Every stem cut into what pays best, drawn by
      ${byHeight ? "total height" : "logs and form class"}.${
        byHeight && byOwnTable
          ? " Your local table gives a stem its wood, the national equations give it its form."
          : ""
      }
    </p>
    ${estimateLines([...products.flatMap(shownIn(units)), ...wood(lines, units), ...others.flatMap(shownIn(units))])}
    ${sum(lines, units)} ${onTract(products, job, units)}`;
}

const shownIn =
  ({ land }: LandUnits) =>
  ({ name, unit, volume, value }: ProductLine): readonly EstimateLine[] => {
    if (!volume) return [];
    const worth = value && value.value > 0 ? `, $${figure(value.value)} per ${land}` : "";
    return [{ title: `${name}${worth}`, unit: `${countedIn(unit)} per ${land}`, estimated: volume }];
  };

/** The wood of all stems, with its margin. */
function wood(lines: readonly ProductLine[], { land, cubic }: LandUnits): readonly EstimateLine[] {
  const last = lines.filter((line) => line.wood).at(-1);
  if (!last?.wood) return [];
  return [{ title: `Wood, ${last.name.toLowerCase()}`, unit: `${cubic} per ${land}`, estimated: last.wood }];
}

/** The wood of the products and of what stays in the woods, which add up. */
function sum(lines: readonly ProductLine[], { land, cubic }: LandUnits) {
  const wood = lines.flatMap(({ name, wood }) => (wood ? [{ name, wood: wood.value }] : []));
  const last = wood.at(-1);
  if (!last) return nothing;
  const parts = wood.slice(0, -1).map((part) => `${part.name.toLowerCase()} ${figure(part.wood)}`);
  return html`<p class="meaning">
    Wood, ${cubic} per ${land}: ${parts.join(" + ")} = ${last.name.toLowerCase()} ${figure(last.wood)}.
  </p>`;
}

/** Totals of each product on the whole tract; nothing until its size is known. */
function onTract(products: readonly ProductLine[], { acres: size, acresMargin }: Job, { land }: LandUnits) {
  if (!size) return nothing;
  const lines = products.flatMap((product): readonly EstimateLine[] => {
    const estimated = productTotal(product, size, acresMargin);
    return estimated ? [{ title: `${product.name}, whole tract`, unit: countedIn(product.unit), estimated }] : [];
  });
  return html`<p class="hint">On all ${figure(size)} ${land}s:</p>
    ${estimateLines(lines)}`;
}
