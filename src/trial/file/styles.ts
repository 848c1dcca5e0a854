/** Cell styles between the book and the file library. */
import type ExcelJS from "exceljs";
import type { Border, CellStyle, Edge } from "../book/book";
import { fileColor, readColor } from "./colors";

const EDGES: Readonly<Record<Edge, "top" | "bottom" | "left" | "right">> = { Top: "top", Bottom: "bottom", Left: "left", Right: "right" };
/** Line in the file: style and weight in the client library's words. */
const LINES: readonly [line: ExcelJS.BorderStyle, style: string, weight: string][] = [
  ["thin", "Continuous", "Thin"],
  ["medium", "Continuous", "Medium"],
  ["thick", "Continuous", "Thick"],
  ["hair", "Continuous", "Hairline"],
  ["double", "Double", "Thick"],
  ["dotted", "Dot", "Thin"],
  ["dashed", "Dash", "Thin"],
  ["mediumDashed", "Dash", "Medium"],
  ["dashDot", "DashDot", "Thin"],
  ["mediumDashDot", "DashDot", "Medium"],
  ["dashDotDot", "DashDotDot", "Thin"],
  ["mediumDashDotDot", "DashDotDot", "Medium"],
  ["slantDashDot", "SlantDashDot", "Medium"],
];
const UNDERLINES: Readonly<Record<string, string>> = {
  single: "Single",
  double: "Double",
  singleAccounting: "SingleAccountant",
  doubleAccounting: "DoubleAccountant",
};
const HORIZONTAL: Readonly<Record<string, NonNullable<CellStyle["align"]>>> = { left: "Left", center: "Center", right: "Right" };
const VERTICAL: Readonly<Record<string, NonNullable<CellStyle["valign"]>>> = { top: "Top", middle: "Center" };
/** The style of a cell; null when it has none worth keeping. */
export function readStyle(style: Partial<ExcelJS.Style>, theme: readonly string[]): CellStyle | null {
  const { font, fill, alignment, border, protection } = style;
  const found: CellStyle = {};
  const color = readColor(font?.color, theme);
  if (font?.bold) found.bold = true;
  if (font?.italic) found.italic = true;
  if (font?.strike) found.strikethrough = true;
  if (font?.underline) found.underline = UNDERLINES[String(font.underline)] ?? "Single";
  if (font?.size !== undefined && font.size !== 11) found.size = font.size;
  if (font?.name !== undefined && font.name !== "Calibri") found.fontName = font.name;
  if (color !== null && color !== "#000000") found.color = color;
  const background =
    fill?.type === "pattern" && fill.pattern !== "none"
      ? readColor(fill.pattern === "solid" ? fill.fgColor : (fill.bgColor ?? fill.fgColor), theme)
      : null;
  if (background !== null) found.fill = background;
  const align = HORIZONTAL[alignment?.horizontal ?? ""],
    valign = VERTICAL[alignment?.vertical ?? ""];
  if (align) found.align = align;
  if (valign) found.valign = valign;
  if (alignment?.wrapText) found.wrap = true;
  if (alignment?.indent) found.indent = alignment.indent;
  if (protection?.locked === false) found.locked = false;
  const borders = readBorders(border, theme);
  if (Object.keys(borders).length > 0) found.borders = borders;
  return Object.keys(found).length > 0 ? found : null;
}
function readBorders(border: Partial<ExcelJS.Borders> | undefined, theme: readonly string[]): Partial<Record<Edge, Border>> {
  const found: Partial<Record<Edge, Border>> = {};
  for (const [edge, name] of Object.entries(EDGES) as [Edge, "top" | "bottom" | "left" | "right"][]) {
    const side = border?.[name];
    const line = LINES.find(([known]) => known === side?.style);
    if (line) found[edge] = { style: line[1], weight: line[2], color: readColor(side?.color, theme) ?? "#000000" };
  }
  return found;
}
/** What the file library takes for a style and a number format. */
export function writeStyle(style: CellStyle | undefined, format: string | undefined): Partial<ExcelJS.Style> {
  const written: Partial<ExcelJS.Style> = {};
  if (format !== undefined && format !== "General") written.numFmt = format;
  if (!style) return written;
  const { bold, italic, strikethrough, underline, size, fontName, color } = style;
  const underlined = Object.entries(UNDERLINES).find(([, name]) => name === underline)?.[0] as ExcelJS.Font["underline"] | undefined;
  if (bold || italic || strikethrough || underlined || size !== undefined || fontName !== undefined || color !== undefined) {
    written.font = {
      name: fontName ?? "Calibri",
      size: size ?? 11,
      ...(bold && { bold }),
      ...(italic && { italic }),
      ...(strikethrough && { strike: true }),
      ...(underlined && { underline: underlined }),
      ...(color !== undefined && { color: fileColor(color) }),
    };
  }
  if (style.fill !== undefined) written.fill = { type: "pattern", pattern: "solid", fgColor: fileColor(style.fill) };
  const alignment: Partial<ExcelJS.Alignment> = {};
  if (style.align && style.align !== "General") alignment.horizontal = style.align.toLowerCase() as "left" | "center" | "right";
  if (style.valign && style.valign !== "Bottom") alignment.vertical = style.valign === "Center" ? "middle" : "top";
  if (style.wrap) alignment.wrapText = true;
  if (style.indent) alignment.indent = style.indent;
  if (Object.keys(alignment).length > 0) written.alignment = alignment;
  if (style.locked === false) written.protection = { locked: false };
  if (style.borders) written.border = writeBorders(style.borders);
  return written;
}
function writeBorders(borders: Partial<Record<Edge, Border>>): Partial<ExcelJS.Borders> {
  const written: Partial<ExcelJS.Borders> = {};
  for (const [edge, border] of Object.entries(borders) as [Edge, Border][]) {
    const line =
      LINES.find(([, style, weight]) => style === border.style && weight === border.weight) ??
      LINES.find(([, style]) => style === border.style);
    if (line) written[EDGES[edge]] = { style: line[0], color: fileColor(border.color) };
  }
  return written;
}
