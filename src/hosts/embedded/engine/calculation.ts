import type { ICommandInfo, IExecutionOptions } from "@univerjs/core";
import {
  IActiveDirtyManagerService,
  IFunctionService,
  RemoveSuperTableMutation,
  SetDefinedNameMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetSuperTableMutation,
} from "@univerjs/engine-formula";
import {
  InsertColMutation,
  InsertRowMutation,
  MoveRangeMutation,
  RemoveColMutation,
  RemoveRowMutation,
  SetRangeValuesMutation,
} from "@univerjs/sheets";
import { filter, firstValueFrom, Subject, timeout } from "rxjs";
import { Spills } from "./spills";
import type { Spreadsheet } from "./spreadsheet";

const LONGEST_CALCULATION_MS = 120_000;
const MOVES_CELLS = new Set(
  [InsertRowMutation, RemoveRowMutation, InsertColMutation, RemoveColMutation, MoveRangeMutation].map(({ id }) => id),
);

/** Knows whether the grid's answers are up to date, and keeps the engine from answering out of an old parse. */
export class Calculation {
  private awaited = false;
  private running = false;
  private readonly turned = new Subject<void>();
  private readonly spills: Spills;

  constructor(
    private readonly spreadsheet: Spreadsheet,
    /** Is called when rows, columns or blocks moved, so that what was noted by cell no longer holds. */
    private readonly cellsMoved: () => void,
  ) {
    this.spills = new Spills(spreadsheet);
    spreadsheet.api.onCommandExecuted((command, options) => this.follow(command, options));
  }

  /** Resolves when every formula shows its answer; at once when nothing is being calculated. */
  async settled(): Promise<void> {
    while (!this.idle) {
      await firstValueFrom(
        this.turned.pipe(
          filter(() => this.idle),
          timeout(LONGEST_CALCULATION_MS),
        ),
      );
      await new Promise((resolve) => setTimeout(resolve, 0));
    }
  }

  /** Calculates every formula anew. */
  all(): void {
    this.awaited = true;
    this.spreadsheet.api.getFormula().executeCalculation();
  }

  private get idle(): boolean {
    return !this.awaited && !this.running;
  }

  /** The engine starts calculating a tenth of a second after the last change; until then the change is awaited. */
  private follow({ id, params }: Readonly<ICommandInfo>, options?: IExecutionOptions): void {
    if (id === SetFormulaCalculationStartMutation.id) {
      this.awaited = false;
      this.running = true;
    } else if (id === SetFormulaCalculationNotificationMutation.id && isEnd(params)) {
      this.running = false;
      this.followSpills();
      this.turned.next();
    }
    this.forgetParses(id, params);
    if (MOVES_CELLS.has(id)) this.cellsMoved();
    if (id === SetRangeValuesMutation.id && options?.onlyLocal) return;
    if (id === SetRangeValuesMutation.id && !changesContent(params)) return;
    if (this.spreadsheet.injector.get(IActiveDirtyManagerService).get(id)) this.awaited = true;
  }

  /** Lets the formulas that look into changed spills be calculated too, and those that look into theirs, until all rest. */
  private followSpills(): void {
    if (this.awaited) return;
    const dirtyRanges = this.spills.changed();
    if (dirtyRanges.length === 0) return;
    this.awaited = true;
    setTimeout(() => {
      this.spreadsheet.api.syncExecuteCommand(
        SetFormulaCalculationStartMutation.id,
        {
          options: null,
          forceCalculation: false,
          dirtyRanges,
          dirtyNameMap: {},
          dirtyDefinedNameMap: {},
          dirtyUnitFeatureMap: {},
          dirtyUnitOtherFormulaMap: {},
          clearDependencyTreeCache: {},
        },
        { onlyLocal: true },
      );
    });
  }

  /**
   * The engine keeps each formula as once parsed, with the table's old extent, or as a lasting #NAME? when the table or
   * name came later. What is forgotten here is parsed anew.
   */
  private forgetParses(id: string, params: { readonly tableName?: string; readonly name?: string } | undefined): void {
    const token =
      id === SetSuperTableMutation.id || id === RemoveSuperTableMutation.id
        ? params?.tableName
        : id === SetDefinedNameMutation.id
          ? params?.name
          : undefined;
    if (token) this.spreadsheet.injector.get(IFunctionService).deleteFormulaAstCacheKey(token);
  }
}

const STYLE_TRIGGERS = new Set([
  "sheet.command.set-style",
  "sheet.command.set-border",
  "sheet.command.clear-selection-format",
]);

/** The engine also tells of its stages, without a state; its answers are in the cells by the time it tells the state. */
const isEnd = (params: object | undefined): boolean =>
  (params as { functionsExecutedState?: number } | undefined)?.functionsExecutedState !== undefined;

const changesContent = (params: object | undefined): boolean =>
  !STYLE_TRIGGERS.has(String((params as { trigger?: string } | undefined)?.trigger));
