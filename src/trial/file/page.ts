/** Page setup, headers and footers, sheet protection between the book and the file. */
import type ExcelJS from "exceljs";
import { addressOf, parseBox } from "../book/address";
import type { PageSetup, Protection, Sheet } from "../book/book";

const POINTS_PER_INCH = 72;
/** Paper sizes by the number that files use. */
const PAPER: Readonly<Record<number, string>> = { 1: "Letter", 3: "Tabloid", 5: "Legal", 7: "Executive", 8: "A3", 9: "A4", 11: "A5" };
const SIDES = ["Left", "Right", "Top", "Bottom", "Header", "Footer"] as const;
export function readPage(from: ExcelJS.Worksheet, to: Sheet): void {
  const { page } = to;
  // The library leaves null where the file says nothing.
  const setup = (from.pageSetup as ExcelJS.Worksheet["pageSetup"] | null) ?? {};
  const headings = (from.headerFooter as ExcelJS.Worksheet["headerFooter"] | null) ?? {};
  if (setup.orientation) page.orientation = setup.orientation === "landscape" ? "Landscape" : "Portrait";
  if (setup.fitToPage) {
    if (setup.fitToWidth) page.fitWide = setup.fitToWidth;
    if (setup.fitToHeight) page.fitTall = setup.fitToHeight;
  } else if (setup.scale !== undefined && setup.scale !== 100) {
    page.scale = setup.scale;
  }
  const paper = PAPER[Number(setup.paperSize)];
  if (paper !== undefined) page.paperSize = paper;
  if (setup.horizontalCentered) page.centerHorizontally = true;
  if (setup.verticalCentered) page.centerVertically = true;
  if (setup.showGridLines) page.printGridlines = true;
  const { margins } = setup;
  if (margins) page.margins = Object.fromEntries(SIDES.map((side) => [side, margins[side.toLowerCase() as "left"] * POINTS_PER_INCH]));
  // exceljs puts "NaN" where whole columns have no row number.
  const rows = absolute(setup.printTitlesRow),
    columns = absolute(setup.printTitlesColumn),
    area = parseBox(setup.printArea?.split("&&")[0]?.replaceAll("NaN", "") ?? "");
  if (rows) page.titleRows = rows;
  if (columns) page.titleColumns = columns;
  if (area) page.printArea = addressOf(area);
  Object.assign(page, partsOf(headings.oddHeader, "Header"), partsOf(headings.oddFooter, "Footer"));
}
function absolute(address: string | undefined): string | null {
  const box = parseBox(address ?? "");
  return box ? addressOf(box, true) : null;
}
/** `&Lleft&Ccenter&Rright`, each part without its mark; a part goes to its next mark. */
function partsOf(text: string | null | undefined, where: "Header" | "Footer"): Partial<PageSetup> {
  const parts: Record<string, string> = {};
  const names: Readonly<Record<string, string>> = { L: "left", C: "center", R: "right" };
  for (const found of (text ?? "").matchAll(/&([LCR])((?:(?!&[LCR])[\s\S])*)/g))
    parts[`${names[found[1] ?? ""] ?? "center"}${where}`] = found[2] ?? "";
  return parts;
}
function joinedParts(left: string | undefined, center: string | undefined, right: string | undefined): string | undefined {
  const text = (left ? `&L${left}` : "") + (center ? `&C${center}` : "") + (right ? `&R${right}` : "");
  return text === "" ? undefined : text;
}
export function writePage(from: Sheet, to: ExcelJS.Worksheet): void {
  const { page } = from;
  const setup = to.pageSetup;
  if (page.orientation) setup.orientation = page.orientation === "Landscape" ? "landscape" : "portrait";
  if (page.fitWide !== undefined || page.fitTall !== undefined) {
    // Nought pages means as many as it takes.
    Object.assign(setup, { fitToPage: true, fitToWidth: page.fitWide ?? 0, fitToHeight: page.fitTall ?? 0 });
  } else if (page.scale !== undefined) {
    setup.scale = page.scale;
  }
  const paper = Object.entries(PAPER).find(([, name]) => name === page.paperSize)?.[0];
  if (paper !== undefined) Object.assign(setup, { paperSize: Number(paper) });
  if (page.centerHorizontally) setup.horizontalCentered = true;
  if (page.centerVertically) setup.verticalCentered = true;
  if (page.printGridlines) setup.showGridLines = true;
  const { margins } = page;
  if (margins) {
    const standard = { left: 0.7, right: 0.7, top: 0.75, bottom: 0.75, header: 0.3, footer: 0.3 };
    setup.margins = {
      ...standard,
      ...Object.fromEntries(Object.entries(margins).map(([side, points]) => [side.toLowerCase(), points / POINTS_PER_INCH])),
    };
  }
  const header = joinedParts(page.leftHeader, page.centerHeader, page.rightHeader),
    footer = joinedParts(page.leftFooter, page.centerFooter, page.rightFooter);
  if (header !== undefined) to.headerFooter.oddHeader = header;
  if (footer !== undefined) to.headerFooter.oddFooter = footer;
}
/** What a protected sheet may still allow: client library's name to the file's. */
const ALLOWANCES = [
  "FormatCells",
  "FormatColumns",
  "FormatRows",
  "InsertColumns",
  "InsertRows",
  "InsertHyperlinks",
  "DeleteColumns",
  "DeleteRows",
  "Sort",
  "AutoFilter",
  "PivotTables",
].map((name) => [`allow${name}`, name.charAt(0).toLowerCase() + name.slice(1)] as const);
const DIGEST = ["algorithmName", "hashValue", "saltValue", "spinCount"];
interface Protectable {
  sheetProtection?: Record<string, unknown> | null;
}
export function readProtection(from: ExcelJS.Worksheet, to: Sheet): void {
  const { sheetProtection } = from as unknown as Protectable;
  if (!sheetProtection?.["sheet"]) return;
  to.protected = true;
  const options = Object.fromEntries(ALLOWANCES.filter(([, name]) => sheetProtection[name] === true).map(([option]) => [option, true]));
  const digest = Object.fromEntries(
    DIGEST.filter((name) => sheetProtection[name] !== undefined).map((name) => [name, sheetProtection[name]]),
  );
  to.protection = { options, ...(Object.keys(digest).length > 0 && { digest }) };
}
/** A password given here is written without its digest: the sheet stays protected, but anybody can unprotect it. */
export function writeProtection(from: Sheet, to: ExcelJS.Worksheet): void {
  if (!from.protected) return;
  const protection: Protection = from.protection ?? { options: {} };
  const allowed = Object.fromEntries(ALLOWANCES.filter(([option]) => protection.options[option] === true).map(([, name]) => [name, true]));
  (to as unknown as Protectable).sheetProtection = { sheet: true, objects: false, scenarios: false, ...allowed, ...protection.digest };
}
