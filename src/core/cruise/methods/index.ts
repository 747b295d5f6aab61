import type { SamplingMethod } from "../samplingMethod";
import { fixedPlots } from "./fixedPlots";
import { pointSample } from "./pointSample";

/** Every way of picking trees that a cell may name. */
export const samplingMethods: readonly SamplingMethod[] = [pointSample, fixedPlots];
