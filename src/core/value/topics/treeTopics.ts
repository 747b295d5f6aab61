import { sources as estimate } from "../../cruise/estimate";
import { samplingMethods } from "../../cruise/methods";
import { sources as plotSizes } from "../../cruise/plotSizes";
import { cubicFormulas } from "../../log/cubic";
import { logRules } from "../../log/rules";
import { boardMeasureSources as boardMeasure } from "../../lumber/boardMeasure";
import { sawingPatterns } from "../../sawing/patterns";
import { sources as resawn } from "../../sawing/resawn";
import { sources as solidLog } from "../../sawing/sawLog";
import { sources as biltmoreMark } from "../../tree/biltmoreMark";
import { sources as dbhFromGirth } from "../../tree/dbhFromGirth";
import { sources as formClass } from "../../tree/formClass";
import { sources as horizontalDistance } from "../../tree/horizontalDistance";
import { sources as insideBark } from "../../tree/insideBark";
import { localForms } from "../../tree/local";
import { sources as fitLocalTable } from "../../tree/local/fitLocalTable";
import { sources as localVolume } from "../../tree/local/localVolume";
import { sources as logsFromHeight } from "../../tree/logsFromHeight";
import { sources as speciesFacts } from "../../tree/national/speciesFacts";
import { sources as stemDiameter } from "../../tree/national/stemDiameter";
import { sources as stemVolume } from "../../tree/national/stemVolume";
import { sources as treeWeight } from "../../tree/national/treeWeight";
import { sources as treeHeight } from "../../tree/treeHeight";
import { sources as treeLogs } from "../../tree/treeLogs";
import { sources as treeVolume } from "../../tree/treeVolume";
import { sources as buckHabits } from "../buckHabits";
import { sources as buckPlan } from "../buckPlan";
import { sources as cutTree } from "../cutTree";
import { sources as treeLumber } from "../treeLumber";
import { sourcesOf, type TopicsOf } from "./topicsOf";

const rules = sourcesOf(logRules);
const sawing = [...sourcesOf(sawingPatterns), ...solidLog, ...resawn, ...boardMeasure];
const methods = sourcesOf(samplingMethods);
const expansion = [...methods, ...plotSizes];
const stand = [...expansion, ...estimate];

/** What the functions that measure a tree rest on. */
export const treeTopics = {
  TREEHEIGHT: treeHeight,
  HORIZONTALDISTANCE: horizontalDistance,
  DBHFROMGIRTH: dbhFromGirth,
  BILTMOREMARK: biltmoreMark,
  LOGSFROMHEIGHT: logsFromHeight,
  TREEVOLUME: treeVolume,
  TREELOGS: treeLogs,
  TREELUMBER: [...treeLumber, ...treeLogs, ...sawing],
  BUCKPLAN: [...buckPlan, ...stemDiameter, ...treeLogs, ...rules, ...sourcesOf(cubicFormulas)],
  BUCKHABITS: [...buckPlan, ...buckHabits, ...stemDiameter, ...treeLogs, ...rules, ...sourcesOf(cubicFormulas)],
  FORMCLASS: formClass,
  STEMVOLUME: stemVolume,
  LOCALFIT: [...sourcesOf(localForms), ...fitLocalTable],
  LOCALVOLUME: [...sourcesOf(localForms), ...localVolume],
  LOCALTABLE: [...sourcesOf(localForms), ...localVolume],
  STEMDIAMETER: stemDiameter,
  STEMHEIGHT: stemDiameter,
  TREEWEIGHT: treeWeight,
  SPECIESOF: speciesFacts,
  CHECKSPECIES: speciesFacts,
  INSIDEBARK: insideBark,
  PRODUCTTABLE: [...cutTree, ...stemDiameter, ...treeLogs, ...treeLumber, ...stand],
} satisfies TopicsOf;
