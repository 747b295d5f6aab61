import { html, nothing } from "lit";
import { heightScales } from "../../core/tree/heightScales";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { radioField } from "../components/radioField";
import { figure } from "../figures";
import { heightOf, logsIn } from "../measure/measured";
import type { MeasureForm } from "../measure/measureState";
import { putInTally } from "../measure/putInTally";
import type { Pane } from "../pane";
import { answer, box, setMeasure } from "./measureParts";

/** Height of a tree, or of its last log, from two angles and a distance. */
export function measureHeight(pane: Pane, form: MeasureForm) {
  const found = heightOf(form);
  const toTip = form.sighted === "tip";
  const logs = found.kind === "figure" ? logsIn(found.value) : 0;
  const mark = found.kind === "figure" ? (toTip ? `h${Math.round(found.value)}` : `${logs}logs`) : "";
  return html`${radioField({
      name: "measure-sighted",
      label: "The top reading is to",
      options: [
        { id: "tip", title: "the tip: total height" },
        { id: "logs", title: "the top of the last log" },
      ],
      value: form.sighted,
      onChoose: (id) => setMeasure(pane, { sighted: id === "logs" ? "logs" : "tip" }),
    })}
    <div class="pair">${box(pane, "distance", "Distance", "ft")} ${box(pane, "slope", "Slope", "%")}</div>
    ${choiceField({
      id: "measure-scale",
      label: "Scale of the readings",
      options: heightScales.map(({ title }) => ({ id: title, title: scaleTitles[title] ?? title })),
      value: form.scale,
      onChoose: (scale) => setMeasure(pane, { scale }),
    })}
    <div class="pair">
      ${box(pane, "top", "Top reading")} ${box(pane, "base", toTip ? "Base reading" : "Reading at the stump")}
    </div>
    ${answer(found, (feet) => `Height ${figure(feet, 1)} ft${toTip ? "" : `, ${logs} logs of 16 ft`}`)}
    <p class="hint">
      A reading below the eye is negative, like -7. On a slope, tape along it and give its percent: the distance is then
      taken level.
    </p>
    ${
      mark === ""
        ? nothing
        : actionButton({ label: `Put ${mark} in the tally`, kind: "main", onPress: () => putInTally(pane, mark) })
    }`;
}

const scaleTitles: Readonly<Record<string, string>> = {
  Percent: "Percent",
  Degrees: "Degrees",
  Topo: "Topographic (66 ft)",
};
