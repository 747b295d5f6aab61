/** The parts of the chart library that the pane draws with; loaded as one piece when the first chart shows. */
export { barX, barY, dot, line, plot, ruleX, ruleY } from "@observablehq/plot";
