import "../support/customFunctions";
import { buckingRatios } from "./bucking";
import { functionsFile } from "./functionsFile";
import { cutListLines } from "./cutList";
import { logScaleRatios } from "./logScale";
import { pageRatios } from "./page";
import { printed } from "./ratio";
import { sawingRatios } from "./sawing";
import { sizes } from "./sizes";
import { standTableRatios } from "./standTables";
import { stemVolumeRatios } from "./stemVolume";
import { threeRulesRatios } from "./tallyThreeRules";
import { treeVolumeRatios } from "./treeVolume";

/** Speed as ratios measured side by side in one run; needs a build in dist/. */
console.log("| What | Ours | The other | Ratio | Aim, or less |");
console.log("| --- | ---: | ---: | ---: | ---: |");
for (const measure of [
  logScaleRatios,
  threeRulesRatios,
  treeVolumeRatios,
  stemVolumeRatios,
  buckingRatios,
  standTableRatios,
  sawingRatios,
  pageRatios,
]) {
  for (const one of await measure()) console.log(printed(one));
}

console.log("\n| Cut list | Ours | Aim, or less |\n| --- | ---: | ---: |");
for (const line of cutListLines()) console.log(line);

console.log("\n| What is loaded | Size | Aim, or less |\n| --- | ---: | ---: |");
for (const line of [...sizes(), ...(await functionsFile())]) console.log(line);
