/** Conditional formats of the register. Built-in formulas over its worked-out columns; functions of an add-in can't stand in rules. */
import { areaAddress, columnLetters } from "../kit/addresses";
import { HEADING_ROW } from "../kit/sheets";
import { CELL_COLORS, KEEP_FONT, SHEET_COLORS, SIGN_COLORS } from "../kit/tints";
import { judgedRuns, type Layout } from "./layout";

/** Always true, and the sign by which a rule of the add-in is known among those of people. */
const OURS = 'N("Gear Verdicts")=0';
/** Rules that earlier versions made. */
const EARLIER = /^=\$[A-Z]{1,3}5="(?:REMOVE|EXAMINE|NO VERDICT|DRESS|WATCH|OVERDUE|NO DATE|DUE SOON)"$/;
export const isOurs = (formula: string): boolean => formula.includes(OURS) || EARLIER.test(formula);
export interface Highlight {
  readonly address: string;
  readonly formula: string;
  readonly fill?: string;
  readonly font?: string;
}
/** A rule that is added comes before those already there; no two of these hold in one cell. */
export function highlightsFor(layout: Layout, count: number, top: number = HEADING_ROW): readonly Highlight[] {
  const first = String(top + 1);
  const at = (heading: string): number => layout.columns.findIndex((c) => c.heading === heading);
  const letter = (heading: string): string => `$${columnLetters(at(heading))}${first}`;
  const area = (column: number, columns = 1): string => areaAddress(top, column, count, columns);
  const rule = (column: number, test: string, look: Omit<Highlight, "address" | "formula">): Highlight => ({
    address: area(column),
    formula: `=AND(${test},${OURS})`,
    ...look,
  });
  const words = [
    ["REMOVE", SHEET_COLORS.REMOVE],
    ["EXAMINE", SIGN_COLORS.EXAMINE],
    ["NO VERDICT", SIGN_COLORS["NO VERDICT"]],
    ["DRESS", SIGN_COLORS.DRESS],
    ["WATCH", SIGN_COLORS.WATCH],
    ["KEEP", { font: KEEP_FONT }],
  ] as const;
  const signs = ["Flag", "Why"].filter((heading) => at(heading) >= 0);
  const runs = judgedRuns(layout);
  const cells = letter("Cells");
  let judged = 0;
  const needs = runs.flatMap((run) => {
    const before = judged;
    judged += run.count;
    return Array.from({ length: run.count }, (_, index) => ({ column: run.from + index, place: before + index + 1 }));
  });
  return [
    ...signs.flatMap((heading) => words.map(([word, look]) => rule(at(heading), `${letter("Verdict")}="${word}"`, look))),
    ...["OVERDUE", "NO DATE"].map((state) => rule(at("Next due"), `${letter("Due state")}="${state}"`, SHEET_COLORS.OVERDUE)),
    ...needs
      .filter(({ column }) => mayBeUnneeded(layout, column))
      .flatMap(({ column, place }) => [
        rule(column, `MID(${cells},${String(place)},1)="0"`, { fill: CELL_COLORS.notNeeded }),
        rule(column, `MID(${cells},${String(place)},1)="2"`, { fill: CELL_COLORS.missing }),
      ]),
  ];
}
/** Id, gear, dates and remarks are read for every kind. */
function mayBeUnneeded({ columns }: Layout, column: number): boolean {
  const role = columns[column]?.role;
  return role?.kind === "input" && !["id", "gear", "place", "service", "inspected", "inspector", "remarks"].includes(role.field);
}
/** The rules of the add-in that stand in a range. */
export async function standingHighlights(
  context: Excel.RequestContext,
  range: Excel.Range,
): Promise<readonly { readonly address: string; readonly formula: string; readonly id: string }[]> {
  const formats = range.conditionalFormats;
  formats.load("items/id,items/type");
  await context.sync();
  const custom = formats.items
    .filter(({ type }) => type === Excel.ConditionalFormatType.custom)
    .map((rule) => {
      const area = rule.getRangeOrNullObject();
      area.load("address");
      rule.custom.rule.load("formula");
      return { rule, area };
    });
  if (custom.length === 0) return [];
  await context.sync();
  return custom
    .filter(({ rule }) => isOurs(rule.custom.rule.formula))
    .map(({ rule, area }) => ({
      id: rule.id,
      formula: rule.custom.rule.formula,
      address: area.isNullObject ? "" : area.address.slice(area.address.lastIndexOf("!") + 1),
    }));
}
export function addHighlights(sheet: Excel.Worksheet, highlights: readonly Highlight[]): void {
  for (const { address, formula, fill, font } of highlights) {
    const rule = sheet.getRange(address).conditionalFormats.add(Excel.ConditionalFormatType.custom);
    rule.custom.rule.formula = formula;
    if (fill !== undefined) rule.custom.format.fill.color = fill;
    if (font !== undefined) rule.custom.format.font.color = font;
  }
}
