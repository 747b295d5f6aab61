import { html, type TemplateResult } from "lit";
import { ref } from "lit/directives/ref.js";

export interface ChartFigureOptions<Data> {
  /** What the chart shows, as a finding in words; its title, and its name for a screen reader. */
  readonly finding: string;
  readonly data: Data;
  /** Draws into an element; loads what it needs when the first chart shows. */
  readonly draw: (data: Data, width: number) => Promise<Element>;
  /** The same figures for reading. */
  readonly table: TemplateResult;
}

/** A chart under its finding, with a table of the same figures below. */
export const chartFigure = <Data>({ finding, data, draw, table }: ChartFigureOptions<Data>) =>
  html`<figure class="chart">
    <figcaption>${finding}</figcaption>
    <div class="drawing" role="img" aria-label=${finding} ${ref((element) => void drawOnce(element, data, draw))}></div>
    ${table}
  </figure>`;

const NARROWEST = 200; // px

/** What each element shows now, so that it is drawn again only for other data or another width. */
const shown = new WeakMap<Element, string>();

async function drawOnce<Data>(element: Element | undefined, data: Data, draw: ChartFigureOptions<Data>["draw"]) {
  if (!element) return;
  await Promise.resolve(); // the element is measured once it stands on the page
  const width = Math.max(NARROWEST, Math.floor(element.clientWidth || (element.parentElement?.clientWidth ?? 0)));
  const key = JSON.stringify([width, data]);
  if (shown.get(element) === key) return;
  shown.set(element, key);
  try {
    const drawing = await draw(data, width);
    drawing.setAttribute("aria-hidden", "true"); // the finding and the table say all that the marks show
    if (shown.get(element) === key) element.replaceChildren(drawing);
  } catch {
    element.replaceChildren("The chart could not be drawn. Its figures stand in the table below.");
  }
}
