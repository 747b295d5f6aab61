import { html } from "lit";
import { felled, FELLED_TREES } from "../../workbook/tables";
import { actionButton } from "../components/actionButton";
import { textField } from "../components/textField";
import type { LocalVolumeAnswers } from "../job/readLocalVolume";
import { firstLocal, readFelled, type FelledForm, type FelledMeasures } from "../local/felledForm";
import type { Pane } from "../pane";

/** The boxes for one more felled tree. */
export function felledFields(pane: Pane, answers: LocalVolumeAnswers) {
  const { form, tried } = pane.state.local;
  const { units } = answers;
  const problems = tried ? readFelled(form, units).problems : {};
  const box = (field: keyof FelledForm, label: string, unit: string) =>
    textField({
      id: `felled-${field}`,
      label,
      unit,
      numeric: true,
      value: form[field],
      onInput: (typed) =>
        pane.set({ local: { ...pane.state.local, form: { ...pane.state.local.form, [field]: typed } } }),
      problem: problems[field],
    });
  const onKey = (event: KeyboardEvent) => {
    if (event.key === "Enter" && event.target instanceof HTMLInputElement) void add(pane, answers);
  };
  return html`<section @keydown=${onKey}>
    <h2>Add a felled tree (${answers.felled.length} so far)</h2>
    <div class="pair">${box("dbh", "DBH", units.diameter)} ${box("height", "Total height", units.distance)}</div>
    ${box("volume", "Wood of the whole stem", units.volume)}
    <p class="hint">
      Without bark, from the ground to the tip; height and volume measured the same way on every tree. A dozen trees
      over all sizes are a start, thirty are better.
    </p>
    <div class="actions">
      ${actionButton({ label: "Add the tree", kind: "main", onPress: () => void add(pane, answers) })}
    </div>
  </section>`;
}

async function add(pane: Pane, answers: LocalVolumeAnswers): Promise<void> {
  const { tree, problems } = readFelled(pane.state.local.form, answers.units);
  if (!tree) {
    pane.set({ local: { ...pane.state.local, tried: true } });
    const [first] = Object.keys(problems);
    if (first) pane.focus(`felled-${first}`);
    return;
  }
  const done = await pane.run("Adding the felled tree", () => put(pane, answers, tree));
  if (!done) return;
  await pane.refresh();
  pane.set({ local: firstLocal });
  pane.focus("felled-dbh");
  pane.say(`Felled tree ${answers.felled.length + 1} is on the sheet Local volume.`);
}

/** Into the first blank row, since an empty table keeps one; below the last one otherwise. */
async function put(pane: Pane, { species }: LocalVolumeAnswers, { dbh, height, volume }: FelledMeasures) {
  const { rows } = await pane.host.readTable(FELLED_TREES);
  const blank = (cell: unknown) => cell === null || cell === undefined || cell === "";
  const free = rows.findIndex((row) => [felled.dbh, felled.height, felled.volume].every((one) => blank(row[one])));
  const row = {
    [felled.tree]: (free < 0 ? rows.length : free) + 1,
    [felled.species]: species === "" ? null : species,
    [felled.dbh]: dbh,
    [felled.height]: height,
    [felled.volume]: volume,
  };
  if (free < 0) await pane.host.appendRows(FELLED_TREES, [row]);
  else await pane.host.updateRow(FELLED_TREES, free, row);
}
