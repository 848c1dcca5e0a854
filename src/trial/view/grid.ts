/** Univer's grid with the parts this page uses: cells, formula bar, sheet tabs. It shows and takes entries; it never calculates. */
import {
  type Injector,
  type IWorkbookData,
  LifecycleService,
  LifecycleStages,
  LocaleType,
  LogLevel,
  mergeLocales,
  ThemeService,
  Univer,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import { BaseFunction, type IFunctionInfo } from "@univerjs/engine-formula";
import {
  UniverDocsPlugin,
  UniverDocsUIPlugin,
  UniverFormulaEnginePlugin,
  UniverRenderEnginePlugin,
  UniverSheetsFormulaPlugin,
  UniverSheetsFormulaUIPlugin,
  UniverSheetsPlugin,
  UniverSheetsUIPlugin,
  UniverUIPlugin,
} from "@univerjs/preset-sheets-core";
import english from "@univerjs/preset-sheets-core/locales/en-US";
import { defaultTheme } from "@univerjs/themes";
import { FONT, FONT_SIZE } from "./text-width";
import "@univerjs/preset-sheets-core/lib/index.css";

export const UNIT = "book";
export interface Grid {
  readonly univer: Univer;
  /** Resolves when the grid has been drawn for the first time. */
  readonly drawn: Promise<void>;
  readonly injector: Injector;
  readonly workbook: Workbook;
  dark(on: boolean): void;
}
/** `functions` are offered with their descriptions while a formula is typed. */
export function openGrid(container: HTMLElement, functions: readonly IFunctionInfo[], dark: boolean): Grid {
  const univer = new Univer({
    theme: defaultTheme,
    darkMode: dark,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(english, MISSING_WORDS) },
    logLevel: LogLevel.ERROR,
  });
  // Names are enough here: formulas are worked out elsewhere.
  const names = functions.map((info) => [BaseFunction, info.functionName] as const);
  univer.registerPlugin(UniverDocsPlugin, { hasScroll: false });
  univer.registerPlugin(UniverRenderEnginePlugin);
  univer.registerPlugin(UniverUIPlugin, { container, header: true, toolbar: false, contextMenu: false });
  univer.registerPlugin(UniverDocsUIPlugin);
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: names } as never);
  univer.registerPlugin(UniverSheetsPlugin, { onlyRegisterFormulaRelatedMutations: false } as never);
  univer.registerPlugin(UniverSheetsUIPlugin, {
    formulaBar: true,
    disableForceStringAlert: true,
    disableForceStringMark: true,
    clipboardConfig: { hidePasteOptions: true },
    protectedRangeShadow: false,
    scrollConfig: { trackBackgroundColor: "rgba(0,0,0,0)", trackBorderColor: "rgba(0,0,0,0)" },
    footer: { sheetBar: true, statisticBar: false, menus: false, zoomSlider: false, addSheetButtonConfig: { show: false } },
  });
  univer.registerPlugin(UniverSheetsFormulaPlugin, { description: [...functions] });
  univer.registerPlugin(UniverSheetsFormulaUIPlugin, { functionScreenTips: true });
  const workbook = univer.createUnit<IWorkbookData, Workbook>(UniverInstanceType.UNIVER_SHEET, {
    id: UNIT,
    name: "Workbook",
    sheetOrder: ["empty"],
    sheets: { empty: { id: "empty", name: " ", rowCount: 40, columnCount: 20 } },
    defaultStyle: { ff: FONT, fs: FONT_SIZE },
  });
  const injector = univer.__getInjector();
  return {
    univer,
    drawn: injector.get(LifecycleService).onStage(LifecycleStages.Rendered),
    injector,
    workbook,
    dark: (on) => {
      injector.get(ThemeService).setDarkMode(on);
    },
  };
}
/** Words that the English locale of this version leaves out; the key would be shown instead. */
const MISSING_WORDS = {
  "sheets-formula": {
    progress: {
      calculating: "Calculating",
      "array-analysis": "Array formulas",
      "array-calculation": "Array formulas",
      analyzing: "Formulas",
      done: "Done",
    },
  },
};
