import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { fixedPlots } from "../../core/cruise/methods/fixedPlots";
import { fullTally } from "../../core/cruise/methods/fullTally";
import { pointSample } from "../../core/cruise/methods/pointSample";
import { strips } from "../../core/cruise/methods/strips";
import { figure } from "../figures";
import { readStrata, sharedOut } from "../plan/planStrata";

const told: readonly (readonly [title: string, says: string])[] = [
  [pointSample.title, "prism or angle gauge"],
  [fixedPlots.title, "plots of one size"],
  [strips.title, "across the tract"],
  [fullTally.title, "every tree"],
];

/** Ways of picking trees that a cruise can be planned by; nested ones are filled in on the sheet Design. */
export const methods = told.map(([id, says]) => ({ id, title: `${id}: ${says}` }));

/** The size of what is laid out, where that is no gauge. */
export function sizeBox(
  method: string,
  box: (field: "plotSize", label: string, unit: string, hint?: string) => TemplateResult,
): TemplateResult {
  if (method === fullTally.title)
    return html`<p class="hint">
      Every tree of the acres above. There is no sampling error then, so no margin is shown.
    </p>`;
  return method === strips.title
    ? box(
        "plotSize",
        "Size of a strip",
        "ac",
        "Width × length ÷ 43,560. Put the acres of each strip under Own size on Points.",
      )
    : box(
        "plotSize",
        "Size of a plot",
        "ac",
        "1/10 and 1/5 are usual for sawtimber. Radii for level ground and slopes stand on Points.",
      );
}

/** Strata, one a line, and how the points are shared out among them for the least margin. */
export function strataBox(text: string, points: number | undefined, onInput: (text: string) => void): TemplateResult {
  const read = readStrata(text);
  const shares = sharedOut(read, points);
  return html`<details class="more" ?open=${text.trim() !== ""}>
    <summary>Split into strata</summary>
    <div class="field">
      <label for="plan-strata">One a line: name, acres, guess per acre, CV in percent</label>
      <textarea
        id="plan-strata"
        rows="3"
        placeholder="Oak 20 9000 40"
        aria-describedby="plan-strata-says"
        .value=${live(text)}
        @input=${(event: Event) => onInput((event.target as HTMLTextAreaElement).value)}
      ></textarea>
      <span class=${read.problem ? "problem" : "hint"} id="plan-strata-says"
        >${read.problem || "Parts that differ, each cruised by itself. The guess only shares out the points."}</span
      >
    </div>
    ${
      typeof shares === "string"
        ? html`<p class="hint">${shares}</p>`
        : shares.length > 0
          ? html`<p class="answer">
              ${read.strata.map(
                ({ name }, place) =>
                  html`${place > 0 ? ", " : nothing}${name} <strong>${figure(shares[place] ?? 0)}</strong>`,
              )}
              points
            </p>`
          : nothing
    }
  </details>`;
}
