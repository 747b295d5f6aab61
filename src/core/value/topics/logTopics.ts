import { cordSources } from "../../log/cordVolume";
import { cubicFormulas } from "../../log/cubic";
import { smalian } from "../../log/cubic/smalian";
import { deductionSources as deductions } from "../../log/deduction";
import { defectKinds } from "../../log/defects";
import { diameterRoundings, twoReadings } from "../../log/diameterRounding";
import { logTaperSources as logTaper } from "../../log/logTaper";
import { overrunSources as overrun } from "../../log/overrun";
import { logRules } from "../../log/rules";
import { scaleCardSources as scaleCard } from "../../log/scaleCard";
import { scalingLengthSources as scalingLength } from "../../log/scalingLength";
import { segmentsSources as segments } from "../../log/segments";
import { sourcesOf, type TopicsOf } from "./topicsOf";

const rules = sourcesOf(logRules);
const roundedDiameters = sourcesOf(diameterRoundings);

/** What the functions that scale a log rest on. */
export const logTopics = {
  LOGSCALE: [...rules, ...segments, ...roundedDiameters, ...logTaper],
  LOGSCALERULES: rules,
  LOGCUBIC: sourcesOf(cubicFormulas),
  SCALINGDIAMETER: [...twoReadings, ...roundedDiameters],
  SCALINGLENGTH: scalingLength,
  DEFECTPERCENT: [...sourcesOf(defectKinds), ...deductions],
  TOTALDEDUCTION: deductions,
  SCALESHEET: [...rules, ...segments, ...scaleCard],
  CARDSCALE: [...scaleCard, ...segments],
  LOGTAPER: logTaper,
  LOGWEIGHT: smalian.sources,
  CORDVOLUME: cordSources,
  OVERRUN: overrun,
} satisfies TopicsOf;
