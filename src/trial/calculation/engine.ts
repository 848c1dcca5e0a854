/**
 * Univer's formula engine on its own: no grid, no commands, no commercial parts. A workbook of plain cells goes in,
 * results come out as they were calculated, not rounded for display. Works the same in Node and in a page.
 */
import {
  type ICellData,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import {
  type BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  type BooleanValueObject,
  CELL_INVERTED_INDEX_CACHE,
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  type FunctionVariantType,
  ICalculateFormulaService,
  IDependencyManagerService,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  IFunctionService,
  Interpreter,
  UniverFormulaEnginePlugin,
} from "@univerjs/engine-formula";
import type { Scalar } from "../book/book";

/** What a formula came to. */
export interface Result {
  readonly value: Scalar;
  readonly error?: string;
  readonly message?: string;
}
/** A result and where it stands; `spilledFrom` names the formula's cell for the other cells of an array result. */
export interface PlacedResult extends Result {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly spilledFrom?: { readonly row: number; readonly column: number };
}
/** What one cell holds: a value, or the text of a formula in addresses the engine understands. */
export interface EngineCell {
  readonly value?: Scalar;
  readonly error?: string;
  readonly formula?: string;
  /** How many rows and columns away from here the cell stands for which the formula is written; its relative addresses move with it. */
  readonly down?: number;
  readonly right?: number;
}
export interface Touched {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}
/** A calculation that comes to no result for so long is reported as stuck. */
const PATIENCE = 120_000;
const STUCK =
  "The formulas did not come to an end, so their results are not shown. Undo the last change, or open the workbook again and take fewer rows at a time.";
let engines = 0;
/** Functions that hand a text on or look at it. The engine would make a date of a literal such as "3/4" before they see it. */
const TEXT_KEEPERS = [
  "IF",
  "IFERROR",
  "IFNA",
  "IFS",
  "SWITCH",
  "CHOOSE",
  "ISNUMBER",
  "ISTEXT",
  "ISBLANK",
  "LEN",
  "CONCATENATE",
  "CONCAT",
  "TEXTJOIN",
  "EXACT",
  "T",
  "SEARCH",
  "FIND",
  "LEFT",
  "RIGHT",
  "MID",
  "TRIM",
  "UPPER",
  "LOWER",
  "SUBSTITUTE",
  "REPLACE",
];
const NUMBER = 2;
const TEXT = 1;
const LOGICAL = 3;
export class FormulaEngine {
  private readonly univer: Univer;
  private readonly calculate: ICalculateFormulaService;
  private readonly dependencies: IDependencyManagerService;
  private readonly formulas: FormulaDataModel;
  private readonly workbook: Workbook;
  /** Named apart from every other engine's workbook: parsed formulas are kept for all engines together, by this name. */
  private readonly unit = `calculation-${String((engines += 1))}`;
  private readonly patience: number;
  private results: PlacedResult[] = [];
  /** The formulas by sheet, row and column, as a calculation wants them. */
  private readonly formulaData: Record<string, Record<number, Record<number, { f: string; x: number; y: number }>>> = {};

  constructor(
    sheets: readonly { id: string; name: string }[],
    functions: readonly [new (name: string) => BaseFunction, string][],
    patience = PATIENCE,
  ) {
    this.patience = patience;
    withIteratorHelpers();
    this.univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} }, logLevel: LogLevel.ERROR });
    this.univer.registerPlugin(UniverFormulaEnginePlugin, { function: [...functions] });
    const data: Partial<IWorkbookData> = {
      id: this.unit,
      name: this.unit,
      sheetOrder: sheets.map((sheet) => sheet.id),
      sheets: Object.fromEntries(
        sheets.map((sheet) => [sheet.id, { id: sheet.id, name: sheet.name, cellData: {}, rowCount: 100, columnCount: 26 }]),
      ),
    };
    this.workbook = this.univer.createUnit<IWorkbookData, Workbook>(UniverInstanceType.UNIVER_SHEET, data);
    const injector = this.univer.__getInjector();
    this.calculate = injector.get(ICalculateFormulaService);
    this.dependencies = injector.get(IDependencyManagerService);
    this.formulas = injector.get(FormulaDataModel);
    const executors = injector.get(IFunctionService).getExecutors();
    for (const name of [...TEXT_KEEPERS, ...functions.map(([, own]) => own)]) {
      const executor = executors.get(name);
      if (executor) executor.isArgumentsIgnoreNumberPattern = () => true;
    }
    this.catchResults(injector.get(IFormulaRuntimeService));
    guard(injector.get(Interpreter));
    withOffsets(injector.get(IFormulaDependencyGenerator));
    withoutColumnIndex();
  }

  dispose(): void {
    this.univer.dispose();
  }

  /** Puts a cell in its place; a change of formula also ends what the engine knew about the old one. */
  put(sheet: string, row: number, column: number, cell: EngineCell | null): void {
    const worksheet = this.sheet(sheet);
    const matrix = worksheet.getCellMatrix();
    const before = matrix.getValue(row, column);
    if (before?.f) {
      this.dependencies.removeFormulaDependency(this.unit, sheet, row, column);
      const place = { [row]: { [column]: before } };
      this.formulas.updateArrayFormulaCellData(this.unit, sheet, place);
      this.formulas.updateArrayFormulaRange(this.unit, sheet, place);
    }
    if (cell === null) matrix.realDeleteValue(row, column);
    else matrix.setValue(row, column, engineCell(cell));
    const rows = (this.formulaData[sheet] ??= {});
    if (cell?.formula !== undefined) (rows[row] ??= {})[column] = { f: cell.formula, x: cell.right ?? 0, y: cell.down ?? 0 };
    else Reflect.deleteProperty(rows[row] ?? {}, column);
    const config = worksheet.getConfig();
    config.rowCount = Math.max(config.rowCount, row + 20);
    config.columnCount = Math.max(config.columnCount, column + 5);
  }

  /** Works out the formulas that depend on the touched cells, and the volatile ones; all of them when `everything`. */
  async run(touched: readonly Touched[], everything: boolean): Promise<readonly PlacedResult[]> {
    this.results = [];
    await new Promise<void>((resolve, reject) => {
      let reached = 0;
      const late = setInterval(() => {
        if (this.results.length === reached) finish(new Error(STUCK));
        reached = this.results.length;
      }, this.patience);
      const listening = this.calculate.executionCompleteListener$.subscribe(() => {
        finish();
      });
      function finish(failure?: Error): void {
        clearInterval(late);
        listening.unsubscribe();
        if (failure) reject(failure);
        else resolve();
      }
      this.calculate
        .execute({
          formulaData: { [this.unit]: this.formulaData },
          arrayFormulaCellData: this.formulas.getArrayFormulaCellData(),
          arrayFormulaRange: this.formulas.getArrayFormulaRange(),
          forceCalculate: everything,
          dirtyRanges: touched.map((t) => ({
            unitId: this.unit,
            sheetId: t.sheet,
            range: { startRow: t.row, endRow: t.row, startColumn: t.column, endColumn: t.column },
          })),
          dirtyNameMap: {},
          dirtyDefinedNameMap: {},
          dirtyUnitFeatureMap: {},
          dirtyUnitOtherFormulaMap: {},
        })
        .catch((reason: unknown) => {
          finish(reason instanceof Error ? reason : new Error(String(reason)));
        });
    });
    for (const result of this.results) if (!result.spilledFrom) this.keep(result);
    return this.results;
  }

  private sheet(id: string): Worksheet {
    const sheet = this.workbook.getSheetBySheetId(id);
    if (!sheet) throw new Error(`The calculation has no sheet ${id}.`);
    return sheet;
  }

  /** A formula's result stays in its cell, where dependants that are worked out later read it. */
  private keep(result: PlacedResult): void {
    const matrix = this.sheet(result.sheet).getCellMatrix();
    const cell = matrix.getValue(result.row, result.column);
    if (!cell?.f) return;
    matrix.setValue(result.row, result.column, { ...engineCell(result), f: cell.f });
  }

  /** Takes each result from the engine's own hand-over, before it is made ready for display. */
  private catchResults(runtime: IFormulaRuntimeService): void {
    const hand = runtime.setRuntimeData.bind(runtime);
    runtime.setRuntimeData = (variant: FunctionVariantType): void => {
      const { currentRow: row, currentColumn: column, currentSubUnitId: sheet } = runtime;
      const object = variant.isReferenceObject() ? (variant as BaseReferenceObject).toArrayValueObject() : (variant as BaseValueObject);
      hand(variant);
      const shown = runtime.getUnitData()[this.unit]?.[sheet]?.getValue(row, column);
      // An empty text that comes from a formula is a text; without this mark the engine would read it as a blank cell.
      if (shown && shown.v === "") shown.f = '=""';
      if (!object.isArray()) {
        this.results.push({ sheet, row, column, ...resultOf(object) });
        return;
      }
      if (shown?.v === ErrorType.SPILL) {
        this.results.push({ sheet, row, column, value: null, error: ErrorType.SPILL });
        return;
      }
      const array = object as BaseValueObject & {
        getRowCount(): number;
        getColumnCount(): number;
        get(r: number, c: number): BaseValueObject | null;
      };
      for (let r = 0; r < array.getRowCount(); r += 1) {
        for (let c = 0; c < array.getColumnCount(); c += 1) {
          const placed = { sheet, row: row + r, column: column + c, ...resultOf(array.get(r, c)) };
          this.results.push(r === 0 && c === 0 ? placed : { ...placed, spilledFrom: { row, column } });
        }
      }
    };
  }
}
function engineCell(cell: EngineCell): ICellData {
  const { value, error, formula } = cell;
  const held: ICellData = {};
  if (formula !== undefined) held.f = formula;
  if (error !== undefined) Object.assign(held, { v: error, t: TEXT });
  else if (typeof value === "number") Object.assign(held, { v: value, t: NUMBER });
  else if (typeof value === "boolean") Object.assign(held, { v: value ? 1 : 0, t: LOGICAL });
  else if (typeof value === "string") Object.assign(held, { v: value, t: TEXT });
  return held;
}
function resultOf(object: BaseValueObject | null | undefined): Result {
  // A formula that comes to a blank cell shows 0.
  if (!object || object.isNull()) return { value: 0 };
  if (object.isError()) {
    const failed = object as unknown as ErrorValueObject;
    const message = failed.getErrorContent();
    return { value: null, error: failed.getErrorType(), ...(message === "" ? {} : { message }) };
  }
  if (object.isBoolean()) return { value: (object as unknown as BooleanValueObject).getValue() };
  return { value: object.getValue() };
}
/**
 * The formulas of a column are one text, read once, and moved to each row. The engine does so for formulas of one family only,
 * which stand or fall with their first cell; here each stands for itself.
 */
function withOffsets(generator: IFormulaDependencyGenerator): void {
  interface Moved {
    refOffsetX: number;
    refOffsetY: number;
  }
  const inner = generator as unknown as { _createFDtree: (...given: unknown[]) => Moved };
  const make = inner._createFDtree.bind(generator);
  inner._createFDtree = (...given) => {
    const tree = make(...given);
    const { x = 0, y = 0 } = given[5] as { x?: number; y?: number };
    tree.refOffsetX = x;
    tree.refOffsetY = y;
    return tree;
  };
}
/** A built-in function that stumbles over its arguments shows #VALUE! in its cell instead of ending the calculation. */
function guard(interpreter: Interpreter): void {
  const run = interpreter.execute.bind(interpreter);
  interpreter.execute = (node) => {
    try {
      return run(node);
    } catch (failure) {
      return ErrorValueObject.create(ErrorType.VALUE, failure instanceof Error ? failure.message : String(failure));
    }
  };
}
/**
 * The engine keeps an index of each column's values and walks all of it for each comparison with a number or text, so
 * that time grows with the square of the rows. Without the index it compares cell by cell.
 */
function withoutColumnIndex(): void {
  const cache = CELL_INVERTED_INDEX_CACHE;
  cache.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
  cache.set = () => undefined;
  cache.setContinueBuildingCache = () => undefined;
}
/** Node 20 has no iterator helpers; the engine uses `some` on one when names are looked up. */
function withIteratorHelpers(): void {
  const prototype = Object.getPrototypeOf(Object.getPrototypeOf([][Symbol.iterator]())) as Record<string, unknown>;
  prototype["some"] ??= function some(this: Iterable<unknown>, test: (value: unknown) => boolean): boolean {
    for (const value of this) if (test(value)) return true;
    return false;
  };
}
