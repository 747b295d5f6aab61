import { shown } from "../../core/basis/require";
import type { WhatIf } from "../../core/sawing/whatIf";
import type { UnitSystem } from "./unitSystem";

/** One row for each choice; differences are from the first, the plan as it is. */
export function choiceRows(choices: readonly WhatIf[], { diameter }: UnitSystem): unknown[][] {
  const [asIs] = choices;
  const first = typeof asIs?.gives === "object" ? asIs.gives : undefined;
  const size = (value: number) => shown(Number((value * diameter.perOurs).toFixed(4)));
  const named = ({ kerf, more }: WhatIf) => {
    if (kerf !== undefined) return `Kerf ${size(kerf)} ${diameter.name}`;
    return more ? `With ${size(more.thickness)} x ${size(more.width)} ${diameter.name} too` : "As it is";
  };
  return choices.map((choice) => {
    const { gives } = choice;
    if (typeof gives === "string") return [named(choice), gives, "", "", "", ""];
    const { pieces, boardFeet, value } = gives;
    return [
      named(choice),
      pieces,
      boardFeet,
      value,
      first && boardFeet - first.boardFeet,
      value !== undefined && first?.value !== undefined ? value - first.value : "",
    ];
  });
}
