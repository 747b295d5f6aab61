import { html, nothing } from "lit";
import { SPECIES, species as heading } from "../../workbook/tables";
import { actionButton } from "../components/actionButton";
import { emptyState } from "../components/emptyState";
import type { Job } from "../job/job";
import type { Pane } from "../pane";
import { speciesRow } from "../species/pickSpecies";
import { proposeCode } from "../species/proposeCode";
import type { FoundSpecies } from "../species/speciesSearch";
import type { KnownSpecies } from "../tally/tallyTree";
import { speciesFinder } from "./speciesFinder";

const FINDER = "species-find";

/** The owner's own short codes, what each stands for, and a search to add one or to settle what one means. */
export function speciesView(pane: Pane) {
  const { job, settling } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "Your species codes stand here once there is a cruise. The plan has a list of them to start from.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  const settled = job.species.find(({ code }) => code === settling);
  return html`
    ${speciesFinder(pane, {
      id: FINDER,
      label: settled ? `Which species is "${settled.code}"?` : "Add a species to your list",
      onPick: (found) => void (settled ? settle(pane, settled, found) : add(pane, job, found)),
    })}
    ${settled ? actionButton({ label: "Leave it", kind: "quiet", onPress: () => pane.set({ settling: "" }) }) : nothing}
    <h2>Your codes (${job.species.length})</h2>
    <ul class="lines">
      ${job.species.map((one) => line(pane, one))}
    </ul>
    <p class="hint">Codes, form class and weight of a species are changed on the sheet Setup, below the settings.</p>
  `;
}

function line(pane: Pane, one: KnownSpecies) {
  const { code, name, scientific, fia, check = "" } = one;
  const facts = [scientific, fia === undefined ? undefined : `FIA ${fia}`].filter((fact) => fact !== undefined);
  return html`<li>
    <span
      ><strong>${code}</strong>
      ${name}${facts.length > 0 ? html` <span class="unit">${facts.join(", ")}</span>` : nothing}
      ${check ? html`<span class="doubt"><strong>Check:</strong> ${check}</span>` : nothing}</span
    >
    <span class="line-actions">
      ${actionButton({
        label: check ? "Find it" : "Change",
        kind: "quiet",
        name: `${check ? "Find it:" : "Change"} what ${code} stands for`,
        onPress: () => {
          pane.set({ settling: code, sought: check ? name : "" });
          pane.focus(FINDER);
        },
      })}
    </span>
  </li>`;
}

async function add(pane: Pane, job: Job, found: FoundSpecies): Promise<void> {
  const listed = job.species.find(({ fia }) => fia === found.fia);
  if (listed) return pane.say(`${found.name} is in your list already, as ${listed.code}.`);
  const code = proposeCode(found.name, job.species);
  const done = await pane.run("Adding the species", async () => {
    await pane.host.appendRows(SPECIES, [speciesRow(code, found)]);
    await pane.refresh();
  });
  if (done) pane.say(`${code} now stands for ${found.name}.`);
}

async function settle(pane: Pane, { code, row }: KnownSpecies, found: FoundSpecies): Promise<void> {
  if (row === undefined) return;
  // What is picked next, while this is still being written, is meant for the list.
  pane.set({ settling: "" });
  const done = await pane.run("Changing the species", async () => {
    await pane.host.updateRow(SPECIES, row, {
      [heading.name]: found.name,
      [heading.fia]: found.fia,
      [heading.scientific]: found.scientific,
    });
    await pane.refresh();
  });
  pane.set(done ? { said: `${code} now stands for ${found.name}.` } : { settling: code });
}
