import { cardOf } from "../scaleCard";
import { unitSystem } from "../unitSystem";
import { scaleSteps } from "./scaleSteps";
import type { Working } from "./working";

export const cardScale: Working = {
  title: "CARDSCALE",
  takes: 9,
  steps([diameter, length, card, ...rest]) {
    const system = unitSystem(rest[5]);
    return scaleSteps(cardOf(card, system), [diameter, length, ...rest], system);
  },
};
