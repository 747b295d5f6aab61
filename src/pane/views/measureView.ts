import { html, nothing } from "lit";
import { heightScales } from "../../core/tree/heightScales";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { dataTable } from "../components/dataTable";
import { radioField } from "../components/radioField";
import { textField } from "../components/textField";
import { figure } from "../figures";
import {
  dbhOf,
  formClassOf,
  heightOf,
  insideOf,
  logsIn,
  ratioOf,
  stickMarks,
  type Measured,
} from "../measure/measured";
import { measurements, type MeasureForm, type Measurement } from "../measure/measureState";
import { putInTally } from "../measure/putInTally";
import type { Pane } from "../pane";

/** What a tape, a stick and an angle come to: one small calculation at a time. */
export function measureView(pane: Pane) {
  const { measure: form } = pane.state;
  return html`${choiceField({
    id: "measure-what",
    label: "Work out",
    options: measurements,
    value: form.what,
    onChoose: (what) => set(pane, { what: what as Measurement }),
  })}
  ${views[form.what](pane, form)}`;
}

const views: Readonly<Record<Measurement, (pane: Pane, form: MeasureForm) => unknown>> = {
  height,
  girth: (pane, form) =>
    html`${box(pane, "girth", "Girth at breast height, 4.5 ft", "in")}
    ${answer(dbhOf(form), (dbh) => `DBH ${figure(dbh, 1)} in`)}`,
  bark,
  formClass: (pane, form) =>
    html`<div class="pair">${box(pane, "inside", "Inside bark at 17.3 ft", "in")} ${box(pane, "dbh", "DBH", "in")}</div>
      ${answer(formClassOf(form), (share) => `Form class ${figure(share)}`)}
      <p class="hint">
        17.3 ft is the top of the first 16-ft log on a 1-ft stump. Form class stands on the sheet Setup.
      </p>`,
  stick,
};

function height(pane: Pane, form: MeasureForm) {
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
      onChoose: (id) => set(pane, { sighted: id === "logs" ? "logs" : "tip" }),
    })}
    <div class="pair">${box(pane, "distance", "Distance", "ft")} ${box(pane, "slope", "Slope", "%")}</div>
    ${choiceField({
      id: "measure-scale",
      label: "Scale of the readings",
      options: heightScales.map(({ title }) => ({ id: title, title: scaleTitles[title] ?? title })),
      value: form.scale,
      onChoose: (scale) => set(pane, { scale }),
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

function bark(pane: Pane, form: MeasureForm) {
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
            onChoose: (species) => set(pane, { species, ratio: "" }),
          })
    }
    <div class="pair">${box(pane, "outside", "Outside bark", "in")} ${box(pane, "ratio", "Bark ratio", "", ratio)}</div>
    ${answer(insideOf(form, list), (inside) => `Inside bark ${figure(inside, 1)} in`)}
    <p class="hint">
      The ratio of a species is an average over the whole stem; one measured on your own logs, inside over outside, is
      better.
    </p>`;
}

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

function answer(found: Measured, said: (value: number) => string) {
  const words =
    found.kind === "figure"
      ? html`<strong>${said(found.value)}</strong>`
      : found.kind === "problem"
        ? found.because
        : "Fill in the boxes above.";
  return html`<p class="answer" role="status">${words}</p>`;
}

type Box = Exclude<keyof MeasureForm, "what" | "sighted" | "scale" | "species">;

const box = (pane: Pane, field: Box, label: string, unit = "", value = pane.state.measure[field]) =>
  textField({
    id: `measure-${field}`,
    label,
    ...(unit !== "" && { unit }),
    numeric: true,
    value,
    onInput: (typed) => set(pane, { [field]: typed }),
  });

const set = (pane: Pane, change: Partial<MeasureForm>) => pane.set({ measure: { ...pane.state.measure, ...change } });
