import {
  type Injector,
  LocaleType,
  LogLevel,
  mergeLocales,
  Univer,
  type Plugin,
  type PluginCtor,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel, IDependencyManagerService } from "@univerjs/engine-formula";
import conditionalFormatTexts from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import coreTexts from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import validationTexts from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import filterTexts from "@univerjs/preset-sheets-filter/locales/en-US";
import { UniverSheetsFilterPreset } from "@univerjs/preset-sheets-filter";
import noteTexts from "@univerjs/preset-sheets-note/locales/en-US";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import sortTexts from "@univerjs/preset-sheets-sort/locales/en-US";
import { UniverSheetsSortPreset } from "@univerjs/preset-sheets-sort";
import tableTexts from "@univerjs/preset-sheets-table/locales/en-US";
import { UniverSheetsTablePlugin, UniverSheetsTablePreset } from "@univerjs/preset-sheets-table";
import { Dependencies } from "./dependencies";
import { FormulaData } from "./formulaData";
import { reckonIndents } from "./overflowRoom";
import { tableThemes } from "./tableThemes";

/** The running grid: its programming interface, and the values that spilled formulas leave in cells. */
export interface Spreadsheet {
  readonly api: FUniver;
  readonly injector: Injector;
  readonly formulaData: FormulaDataModel;
}

type Registration = readonly [PluginCtor<Plugin>, object?];

/**
 * Starts the grid and its formula engine without a workbook. The parts are put together here, one by one,
 * because the ready-made bundle of all parts brings in packages that are not free.
 */
export function startSpreadsheet(container: HTMLElement, darkMode: boolean): Spreadsheet {
  reckonIndents();
  const univer = new Univer({
    logLevel: LogLevel.ERROR,
    locale: LocaleType.EN_US,
    locales: {
      [LocaleType.EN_US]: mergeLocales(
        coreTexts,
        tableTexts,
        validationTexts,
        conditionalFormatTexts,
        filterTexts,
        sortTexts,
        noteTexts,
      ),
    },
    darkMode,
  });
  for (const [plugin, options] of registrations(container)) univer.registerPlugin(plugin, options);
  const injector = univer.__getInjector();
  injector.replace([IDependencyManagerService, { useClass: Dependencies }]);
  injector.replace([FormulaDataModel, { useClass: FormulaData }]);
  return { api: FUniver.newAPI(univer), injector, formulaData: injector.get(FormulaDataModel) };
}

/** Parts that several presets bring along are registered once, with the options of the last one. */
function registrations(container: HTMLElement): Iterable<Registration> {
  const presets = [
    UniverSheetsCorePreset({ container, ribbonType: "simple", menu: {} }),
    UniverSheetsTablePreset(),
    UniverSheetsDataValidationPreset(),
    UniverSheetsConditionalFormattingPreset(),
    UniverSheetsFilterPreset(),
    UniverSheetsSortPreset(),
    UniverSheetsNotePreset(),
  ];
  const byName = new Map<string, Registration>();
  for (const one of presets.flatMap((preset) => preset.plugins)) {
    const registration = (Array.isArray(one) ? one : [one]) as unknown as Registration;
    byName.delete(registration[0].pluginName);
    byName.set(registration[0].pluginName, registration);
  }
  const tables = byName.get(UniverSheetsTablePlugin.pluginName);
  if (tables) byName.set(UniverSheetsTablePlugin.pluginName, [tables[0], { userThemes: tableThemes }]);
  return byName.values();
}
