/** Conditional formats with a formula between the book and the file. */
import type ExcelJS from "exceljs";
import { addressOf, parseBox } from "../book/address";
import type { Book, FormatRule, Sheet } from "../book/book";
import { slide } from "../book/formula-text";
import { fileColor, readColor } from "./colors";

interface FileRule {
  type: string;
  priority?: number;
  formulae?: unknown[];
  style?: Partial<ExcelJS.Style>;
}
interface FileRules {
  conditionalFormattings: { ref: string; rules: FileRule[] }[] | null;
}
export function readRules(book: Book, from: ExcelJS.Worksheet, to: Sheet, stopping: ReadonlySet<number>, theme: readonly string[]): void {
  const found: { priority: number; rule: FormatRule }[] = [];
  let others = 0;
  for (const { ref, rules } of (from as unknown as FileRules).conditionalFormattings ?? []) {
    for (const rule of rules) {
      if (rule.type !== "expression" || rule.formulae?.[0] === undefined) others += 1;
      else for (const read of readRule(book, ref, rule, stopping, theme)) found.push({ priority: rule.priority ?? 0, rule: read });
    }
  }
  if (others > 0) book.notKept.push(`${String(others)} conditional formats on ${to.name} that are not made by a formula`);
  to.rules = found.sort((a, b) => a.priority - b.priority).map(({ rule }) => rule);
}
/** A rule for several boxes becomes one for each; its formula is written for the top left cell of the first. */
function readRule(book: Book, ref: string, rule: FileRule, stopping: ReadonlySet<number>, theme: readonly string[]): FormatRule[] {
  const boxes = ref
    .split(/\s+/)
    .map(parseBox)
    .filter((box) => box !== null);
  const first = boxes[0];
  if (!first) return [];
  const { font, fill } = rule.style ?? {};
  const color = readColor(font?.color, theme);
  const background = fill?.type === "pattern" ? readColor(fill.bgColor ?? fill.fgColor, theme) : null;
  return boxes.map((box) => ({
    id: `{rule-${String(book.nextId())}}`,
    box,
    formula: `=${slide(String(rule.formulae?.[0]), box.row - first.row, box.column - first.column)}`,
    stopIfTrue: stopping.has(rule.priority ?? -1),
    ...(background !== null && { fill: background }),
    ...(color !== null && { color }),
    ...(font?.bold && { bold: true }),
    ...(font?.italic && { italic: true }),
    ...(font?.strike && { strikethrough: true }),
  }));
}
export function writeRules(from: Sheet, to: ExcelJS.Worksheet): void {
  from.rules.forEach((rule, at) => {
    const font = {
      ...(rule.bold && { bold: true }),
      ...(rule.italic && { italic: true }),
      ...(rule.strikethrough && { strike: true }),
      ...(rule.color !== undefined && { color: fileColor(rule.color) }),
    };
    const style: Partial<ExcelJS.Style> = {
      ...(Object.keys(font).length > 0 && { font }),
      ...(rule.fill !== undefined && { fill: { type: "pattern" as const, pattern: "solid" as const, bgColor: fileColor(rule.fill) } }),
    };
    to.addConditionalFormatting({
      ref: addressOf(rule.box),
      rules: [{ type: "expression", priority: at + 1, formulae: [rule.formula.replace(/^=/, "")], style }],
    });
  });
}
