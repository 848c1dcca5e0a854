/** How a cell of the book looks in the grid: its shown text, its style, its table's bands, the conditional formats that hold. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IBorderStyleData,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { Book, Border, Cell, CellStyle, FormatRule, Sheet, Table } from "../book/book";
import { showCell } from "../book/show";
import { FONT, FONT_SIZE } from "./text-width";

export interface Look {
  readonly text: string;
  readonly style: IStyleData;
}
/** Heading and band colours for a table style's accent; the accents go round as Excel's numbers do. */
const ACCENTS: readonly { heading: string; band: string }[] = [
  { heading: "#3B4A54", band: "#EEF1F3" },
  { heading: "#1F5F7A", band: "#E8F1F5" },
  { heading: "#8A4B12", band: "#F8EFE6" },
  { heading: "#4F5B66", band: "#EFF1F2" },
  { heading: "#7A6212", band: "#F7F2E1" },
  { heading: "#28568F", band: "#E9EFF8" },
  { heading: "#3E6B3A", band: "#EBF3EA" },
];
export function lookOf(book: Book, sheet: Sheet, row: number, column: number, rules: readonly FormatRule[]): Look | null {
  const cell = sheet.cell(row, column);
  const table = tableAt(book, sheet, row, column);
  if (!cell && !table && rules.length === 0) return null;
  const style: IStyleData = {};
  if (table) tableLook(style, table, row);
  if (cell) cellLook(style, cell);
  for (const rule of [...rules].reverse()) ruleLook(style, rule);
  style.ff ??= FONT;
  style.fs ??= FONT_SIZE;
  return { text: shownText(cell), style };
}
/** A number format that this page does not know shows the figure itself rather than nothing. */
function shownText(cell: Cell | undefined): string {
  try {
    return showCell(cell);
  } catch {
    return String(cell?.value ?? "");
  }
}
/** What the editor is opened with. */
export function editedText(cell: Cell | undefined): string {
  if (!cell) return "";
  if (cell.formula !== undefined) return cell.formula;
  if (cell.error !== undefined) return cell.error;
  if (typeof cell.value === "number" && cell.format !== undefined && /[dmyhs]/i.test(bare(cell.format))) {
    const withTime = !Number.isInteger(cell.value);
    return shownText({ ...cell, format: withTime ? "m/d/yyyy h:mm:ss" : "m/d/yyyy" });
  }
  if (typeof cell.value === "number" && cell.format?.includes("%")) return `${String(Number((cell.value * 100).toPrecision(15)))}%`;
  if (typeof cell.value === "number") return String(Number(cell.value.toPrecision(15)));
  return shownText({ value: cell.value });
}
function bare(format: string): string {
  return format.replace(/"[^"]*"|\\.|\[[^\]]*\]|general/gi, "");
}
function tableAt(book: Book, sheet: Sheet, row: number, column: number): Table | undefined {
  return book.tables.find(
    ({ sheet: on, box }) =>
      on === sheet && row >= box.row && row < box.row + box.rows && column >= box.column && column < box.column + box.columns,
  );
}
function tableLook(style: IStyleData, table: Table, row: number): void {
  const number = /(\d+)$/.exec(table.style);
  if (!number) return;
  const accent = ACCENTS[(Number(number[1]) - 1) % ACCENTS.length] ?? { heading: "#3B4A54", band: "#EEF1F3" };
  const within = row - table.box.row;
  if (within === 0) {
    Object.assign(style, { bg: { rgb: accent.heading }, cl: { rgb: "#FFFFFF" }, bl: BooleanNumber.TRUE });
  } else if (table.totals && within === table.box.rows - 1) {
    Object.assign(style, { bl: BooleanNumber.TRUE, bd: { t: line(accent.heading, BorderStyleTypes.MEDIUM) } });
  } else {
    style.bd = { b: line("#D9DEE2", BorderStyleTypes.THIN) };
    if (table.showBanded && within % 2 === 1) style.bg = { rgb: accent.band };
  }
}
function cellLook(style: IStyleData, cell: Cell): void {
  const own: CellStyle = cell.style ?? {};
  if (own.bold !== undefined) style.bl = own.bold ? BooleanNumber.TRUE : BooleanNumber.FALSE;
  if (own.italic) style.it = BooleanNumber.TRUE;
  if (own.size !== undefined) style.fs = own.size;
  if (own.fontName !== undefined) style.ff = own.fontName;
  if (own.underline !== undefined && own.underline !== "None") style.ul = { s: BooleanNumber.TRUE };
  if (own.strikethrough) style.st = { s: BooleanNumber.TRUE };
  if (own.color !== undefined) style.cl = { rgb: own.color };
  if (own.fill !== undefined && own.fill !== "") style.bg = { rgb: own.fill };
  style.ht = horizontal(cell, own);
  style.vt = own.valign === "Top" ? VerticalAlign.TOP : own.valign === "Center" ? VerticalAlign.MIDDLE : VerticalAlign.BOTTOM;
  const clipped = typeof cell.value !== "string" || own.align === "Right";
  style.tb = own.wrap ? WrapStrategy.WRAP : clipped ? WrapStrategy.CLIP : WrapStrategy.OVERFLOW;
  if (own.indent) style.pd = { l: 4 + own.indent * 9 };
  if (own.borders) {
    const { Top: t, Bottom: b, Left: l, Right: r } = own.borders;
    style.bd = { ...style.bd, ...side("t", t), ...side("b", b), ...side("l", l), ...side("r", r) };
  }
}
/** As Excel: figures right, logical values and errors in the middle, text left. */
function horizontal(cell: Cell, own: CellStyle): HorizontalAlign {
  if (own.align === "Left") return HorizontalAlign.LEFT;
  if (own.align === "Center") return HorizontalAlign.CENTER;
  if (own.align === "Right") return HorizontalAlign.RIGHT;
  if (cell.error !== undefined || typeof cell.value === "boolean") return HorizontalAlign.CENTER;
  return typeof cell.value === "number" ? HorizontalAlign.RIGHT : HorizontalAlign.LEFT;
}
function ruleLook(style: IStyleData, rule: FormatRule): void {
  if (rule.fill !== undefined) style.bg = { rgb: rule.fill };
  if (rule.color !== undefined) style.cl = { rgb: rule.color };
  if (rule.bold !== undefined) style.bl = rule.bold ? BooleanNumber.TRUE : BooleanNumber.FALSE;
  if (rule.italic !== undefined) style.it = rule.italic ? BooleanNumber.TRUE : BooleanNumber.FALSE;
  if (rule.strikethrough) style.st = { s: BooleanNumber.TRUE };
}
function side(name: "t" | "b" | "l" | "r", border: Border | undefined): Record<string, IBorderStyleData> {
  if (!border || border.style === "None") return {};
  const heavy =
    border.weight === "Thick" ? BorderStyleTypes.THICK : border.weight === "Medium" ? BorderStyleTypes.MEDIUM : BorderStyleTypes.THIN;
  return { [name]: line(border.color, heavy) };
}
function line(color: string, style: BorderStyleTypes): IBorderStyleData {
  return { s: style, cl: { rgb: color } };
}
