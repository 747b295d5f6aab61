import { html, nothing } from "lit";
import { localForms } from "../../core/tree/local";
import { LOCAL_VOLUME } from "../../workbook/sheets/localVolumeCells";
import { named } from "../../workbook/tables";
import { localChart, sayCurves } from "../charts/localChart";
import { actionButton } from "../components/actionButton";
import { chartFigure } from "../components/chartFigure";
import { checkField } from "../components/checkField";
import { choiceField } from "../components/choiceField";
import { dataTable } from "../components/dataTable";
import { emptyState } from "../components/emptyState";
import { message } from "../components/message";
import { waiting } from "../components/waiting";
import { figure } from "../figures";
import type { Job } from "../job/job";
import type { LocalFit, LocalVolumeAnswers } from "../job/readLocalVolume";
import { localCurves, offBy } from "../local/localCurves";
import { fitFinding, sayError } from "../local/sayFit";
import type { Pane } from "../pane";
import { cautionOn } from "./cautionOn";
import { felledFields } from "./felledFields";

/** The owner's own volume table: felled trees, the equation fitted to them with its error, and whether it is used. */
export function localView(pane: Pane) {
  const { job, localVolume } = pane.state;
  if (job === undefined || job === "none" || localVolume === "none") {
    return emptyState(
      "A volume table from trees that you felled will be here once there is a workbook with a sheet Local volume.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  if (!localVolume) return pane.state.unread ? html`` : waiting("Reading the sheet Local volume");
  const { fit, lacking } = localVolume;
  return html`
    ${fit ? fitted(pane, job, localVolume, fit) : message({ kind: "note", text: lacking })}
    ${felledFields(pane, localVolume)} ${fit ? nothing : formField(pane, localVolume)}
    <div class="actions">
      ${actionButton({
        label: `Go to ${LOCAL_VOLUME}`,
        onPress: () => void pane.run("Going to the sheet", () => pane.host.select({ sheet: LOCAL_VOLUME, at: "A1" })),
      })}
    </div>
    ${cautionOn(pane, "Estimate")}
  `;
}

function fitted(pane: Pane, job: Job, answers: LocalVolumeAnswers, fit: LocalFit) {
  const { felled, units, used } = answers;
  const curves = localCurves(fit, felled);
  return html`
    ${chartFigure({
      finding: fitFinding(fit),
      data: { felled, curves, units },
      draw: localChart,
      table: dataTable(
        "Felled trees, and how far the equation is off each",
        ["Tree", `DBH, ${units.diameter}`, `Height, ${units.distance}`, `Wood, ${units.volume}`, "Off, %"],
        felled.map((tree) => {
          const off = offBy(fit, tree);
          return [
            tree.name,
            figure(tree.dbh, 1),
            figure(tree.height, 1),
            figure(tree.volume, 1),
            off === undefined ? "none" : figure(off, 1),
          ];
        }),
        "Read as a list",
      ),
    })}
    <p class="hint">${sayCurves(curves, units)}</p>
    <p class="meaning">${sayError(fit, units)}</p>
    ${formField(pane, answers)}
    ${checkField({
      id: "local-use",
      label: "Use it in place of the national equation",
      checked: used,
      onChange: () => {
        pane.set({ localVolume: { ...answers, used: !used } }); // the tick holds while the sheet is written
        void change(pane, { [named.localUse]: used ? null : "Yes" });
      },
    })}
    ${choiceField({
      id: "local-species",
      label: "For the species",
      options: [
        { id: "", title: "every species" },
        ...job.species.map(({ code, name }) => ({ id: code, title: `${code} ${name}` })),
      ],
      value: answers.species,
      onChoose: (species) => void change(pane, { [named.localSpecies]: species === "" ? null : species }),
      hint: "Trees with a total height then take their wood from it, on Trees and on Products. It ends a tenth beyond the felled sizes.",
    })}
  `;
}

const formField = (pane: Pane, { form, fit }: LocalVolumeAnswers) =>
  choiceField({
    id: "local-form",
    label: "Form of the curve",
    options: localForms.map(({ title, equation }) => ({ id: title, title: `${title}: ${equation}` })),
    value: form,
    onChoose: (title) => void change(pane, { [named.localForm]: title }),
    ...(fit && { hint: `Furnival index ${figure(fit.furnivalIndex, 2)}: the form with the smaller one fits better.` }),
  });

async function change(pane: Pane, names: Parameters<Pane["host"]["writeNames"]>[0]): Promise<void> {
  const done = await pane.run("Changing the local table", () => pane.host.writeNames(names));
  await pane.refresh();
  if (done) pane.say("The local volume table was changed.");
}
