import type { Box, CellStyle, Sheet } from "../../book/book";
import { accessDenied, invalidArgument, notModelled } from "../../book/errors";
import { showCell } from "../../book/show";
import { HostObject } from "../protocol/object";
import type { HostState } from "../protocol/state";
import { forEachCell } from "../sheet/cells";
import { columnsOf, linesOf, restyle, sharedStyle } from "../sheet/style";
import { RangeBorderCollection } from "./range-borders";
import { FormatProtection, RangeFill, RangeFont } from "./range-look";

/** Points: 8.43 characters of Calibri 11 and one line of it. */
export const STANDARD_WIDTH = 48;
export const STANDARD_HEIGHT = 15;
const POINTS_PER_CHARACTER = 5.25;
const MOST_ROWS_SET = 100_000;
export class RangeFormat extends HostObject {
  readonly type = "RangeFormat";
  readonly scalars = ["WrapText", "HorizontalAlignment", "VerticalAlignment", "ColumnWidth", "RowHeight", "IndentLevel"];
  private readonly sheet: Sheet;
  private readonly box: Box;

  constructor(state: HostState, sheet: Sheet, box: Box) {
    super(state);
    this.sheet = sheet;
    this.box = box;
  }

  get Fill(): RangeFill {
    return new RangeFill(this.state, this.sheet, this.box);
  }
  get Font(): RangeFont {
    return new RangeFont(this.state, this.sheet, this.box);
  }
  get Borders(): RangeBorderCollection {
    return new RangeBorderCollection(this.state, this.sheet, this.box);
  }
  get Protection(): FormatProtection {
    return new FormatProtection(this.state, this.sheet, this.box);
  }

  get WrapText(): boolean | null {
    return sharedStyle(this.sheet, this.box, (style) => style?.wrap ?? false);
  }
  set WrapText(given: unknown) {
    this.restyle("wrapText", (style) => {
      style.wrap = given === true;
    });
  }

  get HorizontalAlignment(): string | null {
    return sharedStyle(this.sheet, this.box, (style) => style?.align ?? "General");
  }
  set HorizontalAlignment(given: string | null) {
    const align = (["General", "Left", "Center", "Right"] as const).find((known) => known === given);
    if (!align) throw notModelled(`RangeFormat.HorizontalAlignment ${String(given)}`);
    this.restyle("horizontalAlignment", (style) => {
      style.align = align;
    });
  }

  get VerticalAlignment(): string | null {
    return sharedStyle(this.sheet, this.box, (style) => style?.valign ?? "Bottom");
  }
  set VerticalAlignment(given: string | null) {
    const valign = (["Top", "Center", "Bottom"] as const).find((known) => known === given);
    if (!valign) throw notModelled(`RangeFormat.VerticalAlignment ${String(given)}`);
    this.restyle("verticalAlignment", (style) => {
      style.valign = valign;
    });
  }

  get IndentLevel(): number | null {
    return sharedStyle(this.sheet, this.box, (style) => style?.indent ?? 0);
  }
  set IndentLevel(given: unknown) {
    const indent = Number(given);
    if (!Number.isInteger(indent) || indent < 0 || indent > 250) throw invalidArgument(undefined, "RangeFormat.indentLevel");
    this.restyle("indentLevel", (style) => {
      style.indent = indent;
    });
  }

  get ColumnWidth(): number | null {
    const widths = new Set(columnsOf(this.box).map((column) => this.sheet.columnWidths.get(column) ?? STANDARD_WIDTH));
    return widths.size === 1 ? ([...widths][0] ?? null) : null;
  }
  set ColumnWidth(given: unknown) {
    const points = this.layoutPoints("allowFormatColumns", given, "columnWidth");
    for (const column of columnsOf(this.box)) this.sheet.columnWidths.set(column, points);
    this.tellLayout();
  }

  get RowHeight(): number | null {
    let set = 0;
    const heights = new Set<number>();
    for (const [row, height] of this.sheet.rowHeights) {
      if (row < this.box.row || row >= this.box.row + this.box.rows) continue;
      set += 1;
      heights.add(height);
    }
    if (set < this.box.rows) heights.add(STANDARD_HEIGHT);
    return heights.size === 1 ? ([...heights][0] ?? null) : null;
  }
  set RowHeight(given: unknown) {
    const points = this.layoutPoints("allowFormatRows", given, "rowHeight");
    if (this.box.rows > MOST_ROWS_SET) throw notModelled(`RangeFormat.RowHeight of ${String(this.box.rows)} rows`);
    for (const row of linesOf(this.box.row, this.box.rows)) this.sheet.rowHeights.set(row, points);
    this.tellLayout();
  }

  /** Wide enough for the longest text, measured in characters: there is no font here to measure with. */
  AutofitColumns(): null {
    this.layoutPoints("allowFormatColumns", 0, "autofitColumns");
    const longest = new Map<number, number>();
    forEachCell(this.sheet, this.box, (cell, _row, column) => {
      const lines = showCell(cell)
        .split("\n")
        .map((line) => line.length);
      longest.set(column, Math.max(longest.get(column) ?? 0, ...lines));
    });
    for (const [column, characters] of longest)
      if (characters > 0) this.sheet.columnWidths.set(column, Math.min(255, characters + 1) * POINTS_PER_CHARACTER);
    this.tellLayout();
    return null;
  }

  AutofitRows(): null {
    this.layoutPoints("allowFormatRows", 0, "autofitRows");
    for (const row of [...this.sheet.rowHeights.keys()])
      if (row >= this.box.row && row < this.box.row + this.box.rows) this.sheet.rowHeights.delete(row);
    this.tellLayout();
    return null;
  }

  private restyle(member: string, change: (style: CellStyle) => void): void {
    restyle(this.state, this.sheet, this.box, `RangeFormat.${member}`, change);
  }

  /** A width or a height that may be set; throws else. */
  private layoutPoints(allowed: string, points: unknown, member: string): number {
    const location = `RangeFormat.${member}`;
    if (typeof points !== "number" || points < 0 || points > 1790) throw invalidArgument(undefined, location);
    if (this.sheet.protected && this.sheet.protection?.options[allowed] !== true) throw accessDenied(location);
    return points;
  }

  private tellLayout(): void {
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
  }
}
