import { percent, squareFeet } from "../core/basis/units";
import { smallEndRule } from "../core/log/findLogRule";
import { basalArea as basalAreaOf } from "../core/tree/basalArea";
import { USUAL_FORM_CLASS } from "../core/tree/formClass";
import { treeLogs as logsOf } from "../core/tree/treeLogs";
import { treeVolume as volumeOf } from "../core/tree/treeVolume";
import { answered, eachCell, spilled } from "./shell/answers";
import { measuredDbh, single } from "./shell/measuredIn";
import { measured, oneText, optionalNumber } from "./shell/readings";
import { saidIn } from "./shell/saidIn";
import { unitSystem } from "./shell/unitSystem";

/**
 * Log rules.
 * @customenum {string}
 */
export enum TreeVolumeRule {
  /** Doyle: scales small logs low. */
  Doyle = "Doyle",
  /** Scribner as a smooth formula. */
  Scribner = "Scribner (from memory)",
  /** Scribner Decimal C, from its table. */
  ScribnerDecimalC = "Scribner Decimal C",
  /** International rule for a 1/4 inch saw kerf. */
  InternationalQuarter = "International 1/4",
  /** International rule for a 1/8 inch saw kerf. */
  InternationalEighth = "International 1/8",
}

/**
 * Units of what is given and of the answer.
 * @customenum {string}
 */
export enum TreeUnits {
  /** Inches, feet, square feet. */
  Imperial = "imperial",
  /** Centimeters, meters, square meters. */
  Metric = "metric",
}

const logCount = (given: unknown) =>
  measured(given, "Logs", (logs) => logs, { unit: "logs of 16 ft", low: 0.1, high: 10 });

/** A form class of 0 means nothing, and some spreadsheets hand over a blank as 0: both stand for the usual one. */
const formClassReading = (given: unknown) =>
  optionalNumber(given, "Form class", (value) => (value === 0 ? USUAL_FORM_CLASS : percent(value)), {
    unit: "%",
    low: 0,
    high: 100,
  });

/**
 * Cross-section of a tree at breast height.
 * @customfunction BASALAREA
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Square feet (square meters when metric), in the shape that was given.
 */
export function basalArea(dbh: any[][], units?: TreeUnits): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    return eachCell({ dbh: measuredDbh(dbh, system) }, ({ dbh }) =>
      squareFeet(basalAreaOf(dbh) * system.treeArea.perOurs),
    );
  });
}

/**
 * Board feet in a standing tree, by its 16-foot logs and its form class, under a log rule.
 * @customfunction TREEVOLUME
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param logs Merchantable height, in logs of 16 feet, half logs as 0.5.
 * @param rule Log rule: Doyle, Scribner, Scribner Decimal C, International 1/4 ...
 * @param [form_class] Girard form class, in percent. Left out or 0: 78.
 * @param [units] Units of DBH: imperial or metric. Left out: imperial. The answer stays in board feet.
 * @returns Board feet, in the shape that was given.
 */
export function treeVolume(
  dbh: any[][],
  logs: any[][],
  rule: TreeVolumeRule,
  form_class?: any[][],
  units?: TreeUnits,
): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const scaledBy = smallEndRule(oneText(rule, "Rule"));
    const tree = {
      dbh: measuredDbh(dbh, system),
      logs: logCount(logs),
      formClass: formClassReading(form_class),
    };
    return eachCell(
      tree,
      saidIn(system, (one) => volumeOf(one, scaledBy)),
    );
  });
}

/**
 * The 16-foot logs of one standing tree, butt log first, with the diameters that feed scaling and sawing.
 * @customfunction TREELOGS
 * @param dbh Diameter at breast height, over bark, in inches (cm when metric).
 * @param logs Merchantable height, in logs of 16 feet, half logs as 0.5.
 * @param [form_class] Girard form class, in percent. Left out or 0: 78.
 * @param [units] Units: imperial or metric. Left out: imperial.
 * @returns Rows of log, small end and large end inside bark, and length.
 */
export function treeLogs(dbh: any[][], logs: any[][], form_class?: any[][], units?: TreeUnits): any[][] {
  return answered(() => {
    const system = unitSystem(units);
    const { diameter, distance } = system;
    const header = ["Log", `Small end ${diameter.name}`, `Large end ${diameter.name}`, `Length ${distance.name}`];
    const tree = {
      dbh: single(measuredDbh(dbh, system)),
      logs: single(logCount(logs)),
      formClass: single(formClassReading(form_class)) ?? USUAL_FORM_CLASS,
    };
    if (tree.dbh === undefined || tree.logs === undefined) return spilled(header, [["No trees yet"]]);
    const cut = saidIn(system, logsOf)({ dbh: tree.dbh, logs: tree.logs, formClass: tree.formClass });
    return spilled(
      header,
      cut.map(({ log, smallEnd, largeEnd, length }) => [
        log,
        smallEnd * diameter.perOurs,
        largeEnd * diameter.perOurs,
        length * distance.perOurs,
      ]),
    );
  });
}
