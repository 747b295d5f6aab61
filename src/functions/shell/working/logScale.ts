import { logRule } from "../../../core/log/findLogRule";
import { oneText } from "../readings";
import { unitSystem } from "../unitSystem";
import { scaleSteps } from "./scaleSteps";
import type { Working } from "./working";

export const logScale: Working = {
  title: "LOGSCALE",
  takes: 9,
  steps: ([diameter, length, rule, ...rest]) =>
    scaleSteps(logRule(oneText(rule, "Rule")), [diameter, length, ...rest], unitSystem(rest[5])),
};
