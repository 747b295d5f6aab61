import type { SamplingMethod } from "../samplingMethod";
import { fixedPlots } from "./fixedPlots";
import { fullTally } from "./fullTally";
import { pointAndFixed } from "./pointAndFixed";
import { pointSample } from "./pointSample";
import { strips } from "./strips";

/** Every way of picking trees that a cell may name. */
export const samplingMethods: readonly SamplingMethod[] = [pointSample, fixedPlots, strips, fullTally, pointAndFixed];
