import { html, nothing } from "lit";
import { cutChart, cutFinding } from "../charts/cutChart";
import { actionButton } from "../components/actionButton";
import { chartFigure } from "../components/chartFigure";
import { dataTable } from "../components/dataTable";
import { emptyState } from "../components/emptyState";
import { section } from "../components/section";
import { waiting } from "../components/waiting";
import { figure } from "../figures";
import { jobTitle } from "../job/jobTitle";
import type { CutAnswers, CutLine, CutPart } from "../job/readCut";
import type { Pane } from "../pane";
import { cautionOn } from "./cautionOn";

/** Before, cut and leave beside one another in one size of type, so that what stays is seen as well as what goes. */
export function cutView(pane: Pane) {
  const { job, cut } = pane.state;
  if (job === undefined || job === "none") {
    return emptyState(
      "What a cut takes and what it leaves will be here once trees are tallied.",
      actionButton({ label: "Plan the cruise", kind: "main", onPress: () => pane.go("plan") }),
    );
  }
  if (!cut) return pane.state.unread ? html`` : waiting("Reading the sheet Cut");
  if (cut.lines.length === 0) {
    return emptyState(
      cut.lacking,
      actionButton({ label: "Tally trees", kind: "main", onPress: () => pane.go("tally") }),
    );
  }
  const marked = job.trees.filter(({ stays }) => stays).length;
  return html`
    <p class="job">${jobTitle(job)}, per acre</p>
    <p class="meaning">
      ${
        marked === 0
          ? "No tree is marked to stay, so all of them are cut here. On the sheet Trees put No under Take for each tree that stays."
          : `${figure(marked)} tally ${marked === 1 ? "row stays" : "rows stay"}: their Take says No. All others are cut.`
      }
    </p>
    ${cautionOn(pane, "Forester")} ${sideBySide(cut.lines)}
    <p class="meaning">${bestFirst(cut.lines)}</p>
    ${cut.classes.length > 0 ? section("By diameter", byDiameter(cut)) : nothing}
    ${cut.species.length > 0 ? section("By species", bySpecies(cut.species)) : nothing}
    ${cut.densities.length > 0 ? section("How crowded", crowded(cut)) : nothing} ${cautionOn(pane, "Felling")}
  `;
}

const measures: readonly (readonly [title: string, of: (line: CutLine) => number | null, decimals: number])[] = [
  ["Trees", ({ trees }) => trees, 1],
  ["Basal area, ft²", ({ basalArea }) => basalArea, 1],
  ["Mean diameter, in", ({ diameter }) => diameter, 1],
  ["Volume, bf", ({ volume }) => volume, 0],
  ["Share, %", ({ share }) => share, 0],
];

const shown = (value: number | null, decimals: number) => (value === null ? "–" : figure(value, decimals));

const sideBySide = (lines: readonly CutLine[]) =>
  html`<table class="side-by-side" aria-label="The stand per acre before the cut, what is cut and what is left">
    <thead>
      <tr>
        <td></td>
        ${lines.map(({ stand }) => html`<th scope="col">${stand}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${measures.map(
        ([title, of, decimals]) =>
          html`<tr>
            <th scope="row">${title}</th>
            ${lines.map((line) => html`<td>${shown(of(line), decimals)}</td>`)}
          </tr>`,
      )}
    </tbody>
  </table>`;

/** Taking the thick and leaving the thin is what a stand is run down by; the figures tell which way this cut goes. */
function bestFirst(lines: readonly CutLine[]): string {
  const of = (name: string) => lines.find(({ stand }) => stand === name)?.diameter ?? null;
  const [cut, leave] = [of("Cut"), of("Leave")];
  if (cut === null || leave === null) return "";
  return cut > leave
    ? `What is cut is thicker (${figure(cut, 1)} in) than what stays (${figure(leave, 1)} in). Where the best go and the poor stay, the next stand is poorer: look at what stays before you mark.`
    : `What stays is as thick (${figure(leave, 1)} in) as what is cut (${figure(cut, 1)} in) or thicker.`;
}

const withMargin = (value: number, margin: number | null) =>
  margin === null ? figure(value, 1) : `${figure(value, 1)} ± ${figure(margin, 1)}`;

const byDiameter = ({ classes, classRule }: CutAnswers) =>
  html`${chartFigure({
      finding: cutFinding(classes),
      data: classes,
      draw: cutChart,
      table: dataTable(
        "Trees per acre by diameter class, before the cut, cut and left",
        ["DBH class, in", "Before", "Cut", "Leave"],
        classes.map((one) => [
          one.name,
          withMargin(one.before, one.beforeMargin),
          figure(one.cut, 1),
          withMargin(one.leave, one.leaveMargin),
        ]),
      ),
    })}
    <p class="hint">
      Full: stays. Hatched: cut. Line: margin of the trees before. ${classRule ? `Here ${classRule}.` : ""}
    </p>`;

const bySpecies = (species: readonly CutPart[]) =>
  html`<table class="side-by-side" aria-label="Basal area per acre by species, before the cut, cut and left">
    <thead>
      <tr>
        <th scope="col">Basal area, ft²</th>
        <th scope="col">Before</th>
        <th scope="col">Cut</th>
        <th scope="col">Leave</th>
      </tr>
    </thead>
    <tbody>
      ${species.map(
        ({ name, areas }) =>
          html`<tr>
            <th scope="row">${name}</th>
            ${areas.map((area) => html`<td>${figure(area, 1)}</td>`)}
          </tr>`,
      )}
    </tbody>
  </table>`;

const crowded = ({ densities }: CutAnswers) =>
  html`<dl class="densities">
    ${densities.map(
      ({ measure, before, after, says }) =>
        html`<div>
          <dt>${measure}</dt>
          <dd>
            <strong>${shown(before, 1)}</strong> before, <strong>${shown(after, 1)}</strong> after
            <span class="hint">${says}</span>
          </dd>
        </div>`,
    )}
  </dl>`;
