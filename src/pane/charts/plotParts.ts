/** The parts of the chart library that the pane draws with; loaded as one piece when the first chart shows. */
export { barY, dot, line, plot, ruleY } from "@observablehq/plot";
