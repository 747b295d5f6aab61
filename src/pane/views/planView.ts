import { html, nothing } from "lit";
import { menuRules } from "../../core/log/rules";
import { BAND, bafOptions } from "../../core/cruise/bafOptions";
import { choiceField } from "../components/choiceField";
import { radioField } from "../components/radioField";
import { textField } from "../components/textField";
import { figure } from "../figures";
import { feetPerChain } from "../plan/chains";
import { measuredVariation } from "../plan/measuredVariation";
import { gauges, mixtures, type PlanForm } from "../plan/planForm";
import { readPlan, variationOf } from "../plan/readPlan";
import type { Pane } from "../pane";
import { planBuild } from "./planBuild";
import { methods, sizeBox, strataBox } from "./planMethod";
import { planNumbers } from "./planNumbers";
import { planSpecies } from "./planSpecies";

/** Acres, how mixed, the margin one can live with: and from them points, gauge, spacing, and the workbook itself. */
export function planView(pane: Pane) {
  const { plan } = pane.state;
  const { job } = pane.state;
  // The spread of an invented stand says nothing of the owner's.
  const invented = typeof job === "object" && job.invented;
  const measured = invented ? undefined : measuredVariation(pane.state.stand);
  const reading = readPlan(plan, measured);
  const set = (change: Partial<PlanForm>) => pane.set({ plan: { ...plan, ...change } });
  const box = (field: keyof typeof reading.problems, label: string, unit: string, hint?: string) =>
    textField({
      id: `plan-${field}`,
      label,
      unit,
      numeric: true,
      value: field === "variation" ? variationOf(plan, measured) : plan[field],
      onInput: (value) => set({ [field]: value }),
      problem: reading.problems[field],
      ...(hint && { hint }),
    });

  return html`
    ${textField({ id: "plan-stand", label: "Stand", value: plan.stand, onInput: (stand) => set({ stand }) })}
    <div class="pair">${box("acres", "Acres", "ac")} ${box("acresMargin", "Give or take", "ac")}</div>

    <h2>How many points</h2>
    ${radioField({
      name: "plan-mixture",
      label: "How mixed is the stand?",
      options: mixtures,
      value: plan.mixture,
      onChoose: (id) =>
        set({ mixture: id, variation: String(mixtures.find((one) => one.id === id)?.variation ?? plan.variation) }),
    })}
    ${box("variation", "Variation between points (CV)", "%", variationHint(measured))}
    <div class="pair">${box("target", "Margin you can live with", "%")} ${box("confidence", "Confidence", "%")}</div>
    ${planNumbers(reading, plan.target)}

    <h2>How trees are picked</h2>
    ${choiceField({
      id: "plan-method",
      label: "Method",
      options: methods,
      value: plan.method,
      onChoose: (method) => set({ method }),
    })}
    ${plan.method === "Point" ? nothing : sizeBox(plan.method, box)}
    <div ?hidden=${plan.method !== "Point"}>
      ${box("expected", "Basal area you expect", "ft² per acre", "90 is a guess of ours; your own look at the stand is better.")}
      ${choiceField({
        id: "plan-gauge",
        label: "Basal area factor (BAF)",
        options: gauges.map((gauge) => ({ id: String(gauge), title: gaugeTitle(gauge, plan.expected) })),
        value: plan.gauge,
        onChoose: (gauge) => set({ gauge }),
        hint: "Trees per point = basal area ÷ BAF. Enough to tell points apart, few enough to count without slips. 4 to 8 are taught.",
      })}
    </div>

    <h2>Points and workbook</h2>
    ${textField({
      id: "plan-points",
      label: "Points to take",
      numeric: true,
      value: plan.points === "" && reading.needed !== undefined ? String(reading.points ?? "") : plan.points,
      onInput: (points) => set({ points }),
      problem: reading.problems.points,
    })}
    <p class="answer">
      ${
        reading.spacing === undefined
          ? "Type the acres to see how far apart the points are."
          : html`Spacing <strong>${figure(reading.spacing)} ft</strong> = ${figure(reading.spacing / feetPerChain, 1)}
              chains, on a square grid`
      }
    </p>
    ${choiceField({
      id: "plan-rule",
      label: "Log rule",
      options: menuRules.map(({ title }) => ({ id: title, title })),
      value: plan.rule,
      onChoose: (rule) => set({ rule }),
    })}
    ${box("formClass", "Form class", "%", "78 where you have not measured your own.")} ${planSpecies(pane)}
    ${strataBox(plan.strata, reading.points, (strata) => set({ strata }))} ${planBuild(pane, reading)}
  `;
}

const variationHint = (measured: number | undefined) =>
  measured === undefined
    ? "25, 45 and 65 are guesses of ours to start from."
    : `Your own points vary by ${figure(measured)} %; that counts for more than a guess.`;

function gaugeTitle(gauge: number, expected: string): string {
  const basalArea = Number(expected);
  if (!(basalArea > 0)) return String(gauge);
  const [option] = bafOptions(basalArea, [gauge]);
  const fits = option?.band === "fits" ? `, in the band of ${BAND.low} to ${BAND.high}` : "";
  return `${gauge}: about ${figure(basalArea / gauge, 1)} trees per point${fits}`;
}
