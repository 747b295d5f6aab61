import { html, nothing } from "lit";
import { startCorners } from "../../core/cruise/startCorners";
import { quadrantBearing } from "../../core/cruise/walkLeg";
import { choiceField } from "../components/choiceField";
import { textField } from "../components/textField";
import { figure, short } from "../figures";
import type { Pane } from "../pane";
import { feetPerChain } from "../plan/chains";
import type { PointsModel } from "../points/pointsModel";
import { setLayout } from "../points/setLayout";

/** How the grid lies on the tract, and what is needed to walk it. */
export function pointsGrid(pane: Pane, { proposal, saved }: PointsModel) {
  const { layout: form } = pane.state;
  const { layout, problems } = proposal;
  const box = (
    field: "spacing" | "seed" | "bearing" | "declination" | "pace",
    label: string,
    unit: string,
    hint?: string,
  ) =>
    textField({
      id: `points-${field}`,
      label,
      ...(unit && { unit }),
      numeric: true,
      value: form[field] === "" ? shown(layout[field]) : form[field],
      onInput: (value) => setLayout(pane, { [field]: value, changed: true, result: "" }),
      problem: problems[field],
      ...(hint && { hint }),
    });
  const onEarth = form.reading?.origin !== undefined || (form.reading === undefined && saved.latitude !== null);
  return html`
    <h2>Grid</h2>
    <div class="pair">${box("spacing", "Spacing", "ft")} ${box("seed", "Seed", "")}</div>
    <p class="hint">
      ${spacingInWords(layout.spacing, layout.pace)} The seed picks the start by chance, before the map is seen; the
      same seed gives the same points.
    </p>
    <div class="pair">
      ${box("bearing", "Lines run towards", "°")}
      ${choiceField({
        id: "points-from",
        label: "Walk from",
        options: startCorners.map(({ title }) => ({ id: title, title })),
        value: layout.from,
        onChoose: (from) => setLayout(pane, { from, changed: true, result: "" }),
      })}
    </div>
    <p class="hint">
      Lines run ${quadrantBearing(layout.bearing)} and back. Lay them up and down the slope, across the drains, so that
      each meets high and low ground.
    </p>
    <details class="more">
      <summary>Compass, paces and receiver</summary>
      <div class="pair">${box("declination", "Needle east by", "°")} ${box("pace", "Your pace", "ft")}</div>
      <p class="hint">
        Declination: west is below 0. A pace: walk a taped 100 ft of such ground and divide by your paces; 2.5 is a
        guess.
      </p>
      ${
        onEarth
          ? nothing
          : textField({
              id: "points-place",
              label: "Latitude, longitude of 0, 0",
              value: form.place,
              onInput: (place) => setLayout(pane, { place, changed: true, result: "" }),
              problem: problems.place,
              hint: "Only for a file for your receiver, such as 44.12345, -89.56789. North then has to be true north.",
            })
      }
    </details>
  `;
}

const shown = (value: number | null) => (value === null ? "" : short(value));

function spacingInWords(spacing: number | null, pace: number | null): string {
  if (spacing === null) return "";
  const paces = pace === null ? "" : `, ${figure(spacing / pace)} of your paces`;
  return `${short(spacing)} ft = ${figure(spacing / feetPerChain, 1)} chains${paces}.`;
}
