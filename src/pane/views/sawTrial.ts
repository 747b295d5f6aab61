import { html, nothing } from "lit";
import { products } from "../../core/sawing/resawn";
import { actionButton } from "../components/actionButton";
import { choiceField } from "../components/choiceField";
import { radioField } from "../components/radioField";
import { textField } from "../components/textField";
import { figure } from "../figures";
import type { SawingAnswers } from "../job/readSawing";
import type { Pane } from "../pane";
import { choiceTable } from "../sawing/choiceTable";
import { clearTrials, putTrial } from "../sawing/putTrial";
import { firstTrial, readTrial, type TrialForm } from "../sawing/trial";

/** What other kerfs would make of the log, and one product more, which is typed here and put on the sheet Sawing. */
export function sawTrial(pane: Pane, sawing: SawingAnswers) {
  const { log, whatIf, tried } = sawing;
  return html`<section>
    <h2>What if</h2>
    ${choiceTable(`What if log ${log} were sawn otherwise`, "Other kerfs, one product more", whatIf)}
    <details class="more">
      <summary>Try one product more</summary>
      ${trialFields(pane, sawing)}
    </details>
    ${
      tried > 0
        ? html`<div class="actions">
            ${actionButton({
              label: "Clear",
              name: "Clear the products that are tried",
              onPress: () => void clear(pane),
            })}
          </div>`
        : nothing
    }
  </section>`;
}

function trialFields(pane: Pane, { priced, unit }: SawingAnswers) {
  const { trial } = pane.state;
  const problems = trial.tried ? readTrial(trial, priced).problems : {};
  const set = (change: Partial<TrialForm>) => pane.set({ trial: { ...pane.state.trial, ...change } });
  return html`<div
    class="stem-fields"
    @keydown=${(event: KeyboardEvent) => {
      if (event.key === "Enter" && event.target instanceof HTMLInputElement && event.target.type === "text")
        void tryIt(pane, priced);
    }}
  >
    <div class="pair">
      ${textField({
        id: "trial-thickness",
        label: "Thickness",
        unit,
        numeric: true,
        value: trial.thickness,
        onInput: (thickness) => set({ thickness }),
        problem: problems.thickness,
      })}
      ${textField({
        id: "trial-width",
        label: "Width as sawn",
        unit,
        value: trial.width,
        onInput: (width) => set({ width }),
        problem: problems.width,
      })}
    </div>
    ${radioField({
      name: "trial-way",
      label: "Which thickness is that?",
      options: [
        { id: "sawn", title: "As it comes off the saw" },
        { id: "finished", title: "Finished, dry and planed" },
      ],
      value: trial.way,
      onChoose: (way) => set({ way: way === "finished" ? "finished" : "sawn" }),
    })}
    ${choiceField({
      id: "trial-product",
      label: "Product",
      options: products.map(({ title }) => ({ id: title, title })),
      value: trial.product,
      onChoose: (product) => set({ product }),
      ...(trial.product !== firstTrial.product && { hint: "Give the size of the blank that they are sawn from." }),
    })}
    ${
      priced
        ? textField({
            id: "trial-price",
            label: "Price",
            unit: "$ per MBF",
            numeric: true,
            value: trial.price,
            onInput: (price) => set({ price }),
            problem: problems.price,
          })
        : nothing
    }
    <div class="actions">
      ${actionButton({ label: "Try it", kind: "main", onPress: () => void tryIt(pane, priced) })}
    </div>
  </div>`;
}

async function tryIt(pane: Pane, priced: boolean): Promise<void> {
  const { row, problems } = readTrial(pane.state.trial, priced);
  if (!row) {
    pane.set({ trial: { ...pane.state.trial, tried: true } });
    const [first] = Object.keys(problems);
    if (first) pane.focus(`trial-${first}`);
    return;
  }
  const done = await pane.run("Trying the product", () => putTrial(pane.host, row));
  if (!done) return;
  await pane.refresh();
  pane.set({ trial: firstTrial });
  const { sawing } = pane.state;
  pane.say(typeof sawing === "object" ? outcome(sawing) : "The product stands on the sheet Sawing.");
}

/** The last line of the answer in words. */
function outcome({ whatIf }: SawingAnswers): string {
  const last = whatIf.filter(([name]) => typeof name === "string" && name !== "").at(-1);
  const [name, pieces, boardFeet, , more, gain] = last ?? [];
  if (typeof name !== "string" || typeof boardFeet !== "number")
    return typeof pieces === "string" && pieces !== "" ? pieces : "The product stands on the sheet Sawing.";
  const by = typeof more === "number" ? `, ${signed(more, "bf")}` : "";
  const worth = typeof gain === "number" ? `, ${gain < 0 ? "-" : "+"}$${figure(Math.abs(gain), 2)}` : "";
  return `${name}: ${figure(boardFeet, 1)} bf${by}${worth}. The plan itself is not changed.`;
}

const signed = (value: number, unit: string) => `${value < 0 ? "-" : "+"}${figure(Math.abs(value), 1)} ${unit}`;

async function clear(pane: Pane): Promise<void> {
  const done = await pane.run("Clearing the products", () => clearTrials(pane.host));
  if (done) await pane.refresh();
}
