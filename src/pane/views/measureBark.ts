import { html, nothing } from "lit";
import { choiceField } from "../components/choiceField";
import { figure } from "../figures";
import { insideOf, ratioOf } from "../measure/measured";
import type { MeasureForm } from "../measure/measureState";
import type { Pane } from "../pane";
import { answer, box, setMeasure } from "./measureParts";

/** Diameter inside bark, by the ratio of the species or one that was measured. */
export function measureBark(pane: Pane, form: MeasureForm) {
  const { job } = pane.state;
  const list = typeof job === "object" ? job.species : [];
  const ratio = ratioOf(form, list);
  return html`${
      list.length === 0
        ? nothing
        : choiceField({
            id: "measure-species",
            label: "Species",
            options: [
              { id: "", title: "another, or measured" },
              ...list.map(({ code, name }) => ({ id: code, title: `${code} ${name}` })),
            ],
            value: form.species,
            onChoose: (species) => setMeasure(pane, { species, ratio: "" }),
          })
    }
    <div class="pair">${box(pane, "outside", "Outside bark", "in")} ${box(pane, "ratio", "Bark ratio", "", ratio)}</div>
    ${answer(insideOf(form, list), (inside) => `Inside bark ${figure(inside, 1)} in`)}
    <p class="hint">
      The ratio of a species is an average over the whole stem; one measured on your own logs, inside over outside, is
      better.
    </p>`;
}
