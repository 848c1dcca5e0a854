/**
 * The book as an .xlsx file. The file library (exceljs) does the bulk; `xlsx/` adds what it leaves out. Not kept: what
 * `Book.notKept` names after reading. Document settings live on a very hidden sheet (`xlsx/settings.ts`).
 */
import ExcelJS from "exceljs";
import { addressOf, bottomOf, parseBox, quoteSheet, rightOf } from "../book/address";
import { Book, type Box, type Sheet } from "../book/book";
import { finish } from "./finish";
import { formulaFromFile, formulaToFile } from "./formulas";
import { readLayout, writeLayout } from "./layout";
import { forLibrary, partsNotKept, type RawBook, readRaw, stoppingPriorities } from "./raw";
import { readCells } from "./read-cells";
import { readRules, writeRules } from "./rules";
import { readSettings, SETTINGS_SHEET, writeSettings } from "./settings";
import { placeTable, readTables } from "./tables";
import { readValidations } from "./validations";
import { writeCells } from "./write-cells";
import { elementsOf } from "./xml";
import { Archive, NOT_A_WORKBOOK } from "./zip";

export interface XlsxOptions {
  /** Dotted names of add-in functions beside those of the namespace GEAR. */
  functions?: readonly string[];
}
/** Throws an Error with one sentence when the bytes are no whole workbook. */
export async function readXlsx(bytes: Uint8Array, options: XlsxOptions = {}): Promise<Book> {
  const raw = await readRaw(Archive.read(bytes));
  const file = await loaded(await forLibrary(raw));
  const book = new Book();
  book.notKept.push(...partsNotKept(raw.archive));
  const told = { theme: raw.theme, functions: options.functions ?? [] };
  for (const from of file.worksheets) {
    if (from.name === SETTINGS_SHEET) {
      readSettings(book, from);
      continue;
    }
    const to = book.addSheet(from.name);
    const xml = raw.sheets.get(from.name) ?? "";
    readLayout(from, to, raw.theme);
    to.merges = readMerges(xml);
    readCells(from, to, told);
    readTables(book, from, to, raw.tables);
    readRules(book, from, to, stoppingPriorities(xml), raw.theme);
    to.validations = readValidations(xml, file.properties.date1904);
  }
  const first = book.sheets.find((sheet) => sheet.visibility === "Visible");
  if (!first) throw new Error(NOT_A_WORKBOOK);
  const chosen = raw.order[(file.views as ExcelJS.Workbook["views"] | null)?.[0]?.activeTab ?? 0];
  const active = chosen === undefined ? undefined : book.sheet(chosen);
  book.active = active?.visibility === "Visible" ? active : first;
  readNames(book, raw, told.functions);
  return book;
}
async function loaded(bytes: Uint8Array): Promise<ExcelJS.Workbook> {
  const file = new ExcelJS.Workbook();
  try {
    // Read from the part itself: the library would unroll validation of a whole column, or a merged area, into a million cells.
    const ignoreNodes = ["dataValidations", "mergeCells", "drawing", "picture"];
    await file.xlsx.load(bytes as unknown as Parameters<ExcelJS.Xlsx["load"]>[0], { ignoreNodes });
  } catch (fault) {
    throw new Error(NOT_A_WORKBOOK, { cause: fault });
  }
  return file;
}
function readMerges(xml: string): Box[] {
  return elementsOf(xml, "mergeCell")
    .map(({ attributes }) => parseBox(attributes["ref"] ?? ""))
    .filter((box) => box !== null);
}
/** Names of one sheet alone are not modelled, except the print ranges, which belong to the page setup. */
function readNames(book: Book, raw: RawBook, functions: readonly string[]): void {
  const ofSheets: string[] = [];
  for (const { name, formula, sheet } of raw.names) {
    if (name.startsWith("_xlnm.")) continue;
    if (sheet !== null) ofSheets.push(name);
    else book.names.set(name, formulaFromFile(formula, functions));
  }
  if (ofSheets.length > 3) book.notKept.push(`${String(ofSheets.length)} names, which belong to one sheet each`);
  else for (const name of ofSheets) book.notKept.push(`the name ${name}, which belongs to one sheet`);
}
export async function writeXlsx(book: Book, options: XlsxOptions = {}): Promise<Uint8Array> {
  const functions = options.functions ?? [];
  const file = new ExcelJS.Workbook();
  for (const sheet of book.sheets) {
    const to = file.addWorksheet(sheet.name, { state: fileVisibility(sheet) });
    writeLayout(sheet, to, book.active === sheet);
    for (const table of book.tables) if (table.sheet === sheet) placeTable(table, to);
    writeCells(book, sheet, to, functions);
    for (const box of sheet.merges) to.mergeCellsWithoutStyle(box.row + 1, box.column + 1, bottomOf(box) + 1, rightOf(box) + 1);
    writeRules(sheet, to);
  }
  writeSettings(book, file);
  file.views = [
    {
      x: 0,
      y: 0,
      width: 24_000,
      height: 14_000,
      firstSheet: 0,
      activeTab: Math.max(0, book.sheets.indexOf(book.active)),
      visibility: "visible",
    },
  ];
  const names = namesOf(book, functions);
  // The library unrolls names into cells; it is handed the finished list instead.
  Object.defineProperty(file.definedNames, "model", { get: () => names, set: () => undefined });
  return finish(new Uint8Array(await file.xlsx.writeBuffer()), book, functions);
}
function fileVisibility(sheet: Sheet): "visible" | "hidden" | "veryHidden" {
  return ({ Visible: "visible", Hidden: "hidden", VeryHidden: "veryHidden" } as const)[sheet.visibility];
}
function namesOf(book: Book, functions: readonly string[]): { name: string; ranges: string[]; localSheetId?: number }[] {
  const names = [...book.names].map(([name, formula]) => ({ name, ranges: [formulaToFile(formula, null, functions)] }));
  const ofSheets = book.sheets.flatMap((sheet, at) => {
    const { printArea, titleRows, titleColumns } = sheet.page;
    const on = (address: string): string => `${quoteSheet(sheet.name)}!${address}`;
    const area = parseBox(printArea ?? "");
    const titles = [titleColumns, titleRows].filter((address) => address !== undefined).map(on);
    return [
      ...(area ? [{ name: "_xlnm.Print_Area", ranges: [on(addressOf(area, true))], localSheetId: at }] : []),
      ...(titles.length > 0 ? [{ name: "_xlnm.Print_Titles", ranges: titles, localSheetId: at }] : []),
    ];
  });
  return [...names, ...ofSheets];
}
