import { choiceNamed } from "../../core/basis/choices";
import { byLogs, heightsMeasured } from "../../core/cruise/checkHeight";
import type { WorkbookHost } from "../../workbook/host";
import { usualSettings } from "../../workbook/settings";
import { BOARDS, LOGS, named, PLOTS, PRICES, SPECIES, TREES } from "../../workbook/tables";
import { number, positive, text, yes } from "./cells";
import type { Job } from "./job";
import { boardsOf, logsOf, plotsOf, pricesOf, speciesOf, treesOf } from "./readTables";

const settingNames = [
  named.stand,
  named.acres,
  named.acresMargin,
  named.method,
  named.size,
  named.confidence,
  named.target,
  named.rule,
  named.formClass,
  named.heightMeasured,
  named.minDbh,
  named.maxDbh,
  named.invented,
];

/** What the sheet Logs has on top; a workbook without logs has none of it. */
const scaleNames = [
  named.scaleRule,
  named.diameterRounding,
  named.scaleRounding,
  named.longestLength,
  named.trim,
  named.lengthStep,
];

/** Reads the cruise from the workbook; undefined when the workbook has none. */
export async function readJob(host: WorkbookHost): Promise<Job | undefined> {
  const [hasPlots, hasTrees, hasLogs, hasBoards, hasPrices] = await Promise.all(
    [PLOTS, TREES, LOGS, BOARDS, PRICES].map((name) => host.hasTable(name)),
  );
  if (!hasPlots && !hasTrees) return undefined;
  const [plots, trees, species, settings, logs, boards, prices] = await Promise.all([
    host.readTable(PLOTS),
    host.readTable(TREES),
    host.readTable(SPECIES),
    host.readNames(hasLogs ? [...settingNames, ...scaleNames] : settingNames),
    hasLogs ? host.readTable(LOGS) : undefined,
    hasBoards ? host.readTable(BOARDS) : undefined,
    hasPrices ? host.readTable(PRICES) : undefined,
  ]);
  return {
    stand: text(settings[named.stand]) || "Your woodlot",
    acres: number(settings[named.acres]),
    acresMargin: number(settings[named.acresMargin]) ?? 0,
    method: text(settings[named.method]) || "Point",
    size: number(settings[named.size]) ?? 0,
    confidence: number(settings[named.confidence]) ?? 95,
    target: number(settings[named.target]) ?? 20,
    rule: text(settings[named.rule]),
    formClass: number(settings[named.formClass]) ?? 78,
    heightMeasured: choiceNamed(settings[named.heightMeasured], heightsMeasured) ?? byLogs,
    minDbh: number(settings[named.minDbh]) ?? 1,
    maxDbh: number(settings[named.maxDbh]) ?? 60,
    invented: yes(settings[named.invented]),
    scale: {
      rule: text(settings[named.scaleRule]) || text(settings[named.rule]),
      diameterRounding: text(settings[named.diameterRounding]) || usualSettings.scale.diameterRounding,
      rounding: text(settings[named.scaleRounding]) || usualSettings.scale.rounding,
      longest: positive(settings[named.longestLength]),
      trim: number(settings[named.trim]) ?? 0,
      lengthStep: positive(settings[named.lengthStep]) ?? usualSettings.scale.lengthStep,
    },
    species: speciesOf(species),
    trees: treesOf(trees),
    plots: plotsOf(plots),
    logs: logs ? logsOf(logs) : [],
    boards: boards ? boardsOf(boards) : [],
    prices: prices ? pricesOf(prices) : [],
  };
}
