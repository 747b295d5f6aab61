import { boardMeasureSources as boardMeasure } from "../../lumber/boardMeasure";
import { driedSizeSources as driedSize } from "../../lumber/driedSize";
import { lumberKinds } from "../../lumber/dressedSize";
import { equilibriumMoistureSources as equilibriumMoisture } from "../../lumber/equilibriumMoisture";
import { kerfRecoverySources as kerfRecovery } from "../../lumber/kerfRecovery";
import { lumberWeightSources as lumberWeight } from "../../lumber/lumberWeight";
import { surfaceMeasureSources as surfaceMeasure } from "../../lumber/surfaceMeasure";
import { tallyMeasures } from "../../lumber/tallyMeasure";
import { targetThicknessSources as targetThickness } from "../../lumber/targetThickness";
import { woodSources as woods } from "../../lumber/wood";
import { sources as areaBound } from "../../sawing/areaBound";
import { sources as grain } from "../../sawing/grain";
import { sources as headSettings } from "../../sawing/headSettings";
import { sources as largestCant } from "../../sawing/largestCant";
import { sources as logsForCutList } from "../../sawing/logsForCutList";
import { sources as millLimits } from "../../sawing/millLimits";
import { sources as planValue } from "../../sawing/planValue";
import { sawingPatterns } from "../../sawing/patterns";
import { sources as resawn } from "../../sawing/resawn";
import { sources as solidLog } from "../../sawing/sawLog";
import { sourcesOf, type TopicsOf } from "./topicsOf";

const sawing = [...sourcesOf(sawingPatterns), ...solidLog, ...resawn, ...boardMeasure];

/** What the functions for sawing, and for the boards that come of it, rest on. */
export const sawingTopics = {
  KERFRECOVERY: kerfRecovery,
  TARGETTHICKNESS: targetThickness,
  SAWPLAN: sawing,
  SAWYIELD: sawing,
  SAWLAYOUT: [...sawing, ...grain],
  SAWWHATIF: sawing,
  SAWBOUND: [...areaBound, ...sawing],
  SAWVALUE: [...planValue, ...sawing],
  MILLFITS: millLimits,
  LARGESTCANT: largestCant,
  HEADSETTINGS: headSettings,
  LOGSFORCUTLIST: [...logsForCutList, ...sawing],
  BOARDFEET: boardMeasure,
  BOARDTALLY: sourcesOf(tallyMeasures),
  SURFACEMEASURE: surfaceMeasure,
  DRESSEDSIZE: sourcesOf(lumberKinds),
  DRIEDSIZE: [...driedSize, ...woods],
  EQUILIBRIUMMC: equilibriumMoisture,
  LUMBERWEIGHT: [...lumberWeight, ...woods],
} satisfies TopicsOf;
