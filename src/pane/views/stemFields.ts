import { html } from "lit";
import { putStem } from "../bucking/putStem";
import { formOf, readStem, type StemForm } from "../bucking/stemForm";
import { parseFlaws, sayFlaws } from "../bucking/flawLine";
import { firstBuck } from "../bucking/buckState";
import { actionButton } from "../components/actionButton";
import { radioField } from "../components/radioField";
import { textField } from "../components/textField";
import type { BuckingAnswers } from "../job/readBucking";
import type { Pane } from "../pane";

/** The boxes for one stem; what is typed stays in the pane until the stem is to be cut. */
export function stemFields(pane: Pane, bucking: BuckingAnswers) {
  const { form = formOf(bucking), tried } = pane.state.buck;
  const { problems } = readStem(form);
  const shown = tried ? problems : {};
  const flaws = parseFlaws(form.flaws);
  const set = (change: Partial<StemForm>) => pane.set({ buck: { ...pane.state.buck, form: { ...form, ...change } } });
  const byHeight = form.road === "height";
  return html`
    <div
      class="stem-fields"
      @keydown=${(event: KeyboardEvent) => {
        if (event.key === "Enter" && event.target instanceof HTMLInputElement) void cut(pane, form);
      }}
    >
      <div class="pair">
        ${textField({
          id: "stem-species",
          label: byHeight ? "Species or code" : "Species, if known",
          value: form.species,
          onInput: (species) => set({ species }),
          problem: shown.species,
        })}
        ${textField({
          id: "stem-dbh",
          label: "DBH",
          unit: "in",
          numeric: true,
          value: form.dbh,
          onInput: (dbh) => set({ dbh }),
          problem: shown.dbh,
        })}
      </div>
      ${radioField({
        name: "stem-road",
        label: "Which height did you measure?",
        options: [
          { id: "height", title: "Total height" },
          { id: "logs", title: "16-ft logs" },
        ],
        value: form.road,
        onChoose: (road) => road !== form.road && set({ road: road === "logs" ? "logs" : "height", measure: "" }),
      })}
      ${textField({
        id: "stem-measure",
        label: byHeight ? "Total height" : "Logs of 16 ft",
        ...(byHeight && { unit: "ft" }),
        numeric: true,
        value: form.measure,
        onInput: (measure) => set({ measure }),
        hint: byHeight ? "To the tip it has, or had before it broke." : "To the half log, such as 2.5.",
        problem: shown.measure,
      })}
      ${textField({
        id: "stem-flaws",
        label: "Rot, crooks, breaks",
        value: form.flaws,
        onInput: (typed) => set({ flaws: typed }),
        hint:
          "flaws" in flaws && flaws.flaws.length > 0
            ? sayFlaws(flaws.flaws)
            : "In feet above the ground, such as rot 26-29, crook 47, broken 62. Blank for a sound stem.",
        problem: shown.flaws,
      })}
      <div class="actions">
        ${actionButton({ label: "Cut this stem", kind: "main", onPress: () => void cut(pane, form) })}
      </div>
    </div>
  `;
}

async function cut(pane: Pane, form: StemForm): Promise<void> {
  const { stem, problems } = readStem(form);
  if (!stem) {
    pane.set({ buck: { ...pane.state.buck, form, tried: true } });
    const [first] = Object.keys(problems);
    if (first) pane.focus(`stem-${first}`);
    return;
  }
  const done = await pane.run("Cutting the stem", () => putStem(pane.host, stem));
  if (!done) return;
  await pane.refresh();
  pane.set({ buck: firstBuck });
  pane.say("The stem is on the sheet Bucking.");
}
