import { html } from "lit";
import { choiceField } from "../components/choiceField";
import { dataTable } from "../components/dataTable";
import { figure } from "../figures";
import { dbhOf, formClassOf, stickMarks } from "../measure/measured";
import { measurements, type MeasureForm, type Measurement } from "../measure/measureState";
import type { Pane } from "../pane";
import { measureBark } from "./measureBark";
import { measureHeight } from "./measureHeight";
import { answer, box, setMeasure } from "./measureParts";

/** What a tape, a stick and an angle come to: one small calculation at a time. */
export function measureView(pane: Pane) {
  const { measure: form } = pane.state;
  return html`${choiceField({
    id: "measure-what",
    label: "Work out",
    options: measurements,
    value: form.what,
    onChoose: (what) => setMeasure(pane, { what: what as Measurement }),
  })}
  ${views[form.what](pane, form)}`;
}

const views: Readonly<Record<Measurement, (pane: Pane, form: MeasureForm) => unknown>> = {
  height: measureHeight,
  girth: (pane, form) =>
    html`${box(pane, "girth", "Girth at breast height, 4.5 ft", "in")}
    ${answer(dbhOf(form), (dbh) => `DBH ${figure(dbh, 1)} in`)}`,
  bark: measureBark,
  formClass: (pane, form) =>
    html`<div class="pair">${box(pane, "inside", "Inside bark at 17.3 ft", "in")} ${box(pane, "dbh", "DBH", "in")}</div>
      ${answer(formClassOf(form), (share) => `Form class ${figure(share)}`)}
      <p class="hint">
        17.3 ft is the top of the first 16-ft log on a 1-ft stump. Form class stands on the sheet Setup.
      </p>`,
  stick,
};

function stick(pane: Pane, form: MeasureForm) {
  const marks = stickMarks(form);
  const [, first = { kind: "waiting" } as const] = marks[0] ?? [];
  return html`${box(pane, "reach", "Eye to stick", "in")}
  ${
    first.kind === "figure"
      ? dataTable(
          "Where to mark each diameter, from the end of the stick",
          ["DBH, in", "Mark, in"],
          marks.flatMap(([dbh, mark]) =>
            mark.kind === "figure" ? [[String(dbh), figure(mark.value, 2)] as const] : [],
          ),
          "Read the marks",
        )
      : answer(first, String)
  }`;
}
