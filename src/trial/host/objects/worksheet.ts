import type { Sheet } from "../../book/book";
import { colorOf } from "../../book/colors";
import { HostError, invalidArgument, itemNotFound } from "../../book/errors";
import { type Found, HostObject, NULL_OBJECT } from "../protocol/object";
import type { HostState } from "../protocol/state";
import { usedBox } from "../sheet/cells";
import { boxOnSheet, WHOLE_SHEET } from "../sheet/named-range";
import { deleteSheet, renameSheetTo } from "../sheet/sheets";
import { AutoFilter } from "./auto-filter";
import { FreezePanes } from "./freeze-panes";
import { PageLayout } from "./page-layout";
import { WorksheetProtection } from "./protection";
import { Range } from "./range";
import { TableCollection } from "./tables";

export class Worksheet extends HostObject {
  readonly type = "Worksheet";
  readonly scalars = ["Id", "Name", "Position", "Visibility", "TabColor", "ShowGridlines"];
  override readonly events = ["DataChanged", "SelectionChanged", "Activated", "Deactivated", "ProtectionChanged"];
  readonly sheet: Sheet;

  constructor(state: HostState, sheet: Sheet) {
    super(state);
    this.sheet = sheet;
  }

  get Id(): string {
    return this.sheet.id;
  }

  get Name(): string {
    return this.sheet.name;
  }
  set Name(name: string) {
    renameSheetTo(this.state, this.sheet, name);
  }

  get Position(): number {
    return this.state.book.sheets.indexOf(this.sheet);
  }
  set Position(position: number) {
    const { sheets } = this.state.book;
    if (!Number.isInteger(position) || position < 0 || position >= sheets.length) throw invalidArgument(undefined, "Worksheet.position");
    sheets.splice(sheets.indexOf(this.sheet), 1);
    sheets.splice(position, 0, this.sheet);
    this.state.book.tell({ kind: "sheets" });
  }

  get Visibility(): Sheet["visibility"] {
    return this.sheet.visibility;
  }
  set Visibility(given: string) {
    const visibility = (["Visible", "Hidden", "VeryHidden"] as const).find((known) => known === given);
    if (!visibility) throw invalidArgument(undefined, "Worksheet.visibility");
    const others = this.state.book.sheets.filter((other) => other !== this.sheet && other.visibility === "Visible");
    if (visibility !== "Visible" && others.length === 0)
      throw new HostError("InvalidOperation", "A workbook needs a visible sheet.", "Worksheet.visibility");
    this.sheet.visibility = visibility;
    const next = others[0];
    if (visibility !== "Visible" && this.state.book.active === this.sheet && next) new Worksheet(this.state, next).Activate();
    this.state.book.tell({ kind: "sheets" });
  }

  get TabColor(): string {
    return this.sheet.tabColor;
  }
  set TabColor(given: unknown) {
    this.sheet.tabColor = given === "" ? "" : colorOf(given, "Worksheet.tabColor");
    this.state.book.tell({ kind: "sheets" });
  }

  get ShowGridlines(): boolean {
    return this.sheet.showGridlines;
  }
  set ShowGridlines(show: boolean) {
    this.sheet.showGridlines = show;
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
  }

  /** The library reads `ShowGridlines` and writes `Gridlines`. */
  get Gridlines(): boolean {
    return this.ShowGridlines;
  }
  set Gridlines(show: boolean) {
    this.ShowGridlines = show;
  }

  get Tables(): TableCollection {
    return new TableCollection(this.state, this.sheet);
  }
  get Protection(): WorksheetProtection {
    return new WorksheetProtection(this.state, this.sheet);
  }
  get FreezePanes(): FreezePanes {
    return new FreezePanes(this.state, this.sheet);
  }
  get PageLayout(): PageLayout {
    return new PageLayout(this.state, this.sheet);
  }
  get AutoFilter(): AutoFilter {
    return new AutoFilter(this.state, null);
  }

  Activate(): null {
    if (this.sheet.visibility !== "Visible")
      throw new HostError("InvalidOperation", "A hidden sheet can't be activated.", "Worksheet.activate");
    this.state.select(this.sheet, this.state.selections.get(this.sheet) ?? { row: 0, column: 0, rows: 1, columns: 1 }, "add-in");
    return null;
  }

  Delete(): null {
    deleteSheet(this.state, this.sheet);
    return null;
  }

  async Calculate(): Promise<null> {
    await this.state.calculate(true);
    return null;
  }

  /** An address, a defined name, a table's name, or nothing for the whole sheet. */
  GetRange(address: string | null): Range {
    return new Range(this.state, this.sheet, boxOnSheet(this.state, this.sheet, address));
  }

  GetCell(row: number, column: number): Range {
    return new Range(this.state, this.sheet, { row, column, rows: 1, columns: 1 });
  }
  GetRangeByIndexes(row: number, column: number, rows: number, columns: number): Range {
    return new Range(this.state, this.sheet, { row, column, rows, columns });
  }
  GetUsedRange(valuesOnly: boolean | null): Range {
    return new Range(
      this.state,
      this.sheet,
      usedBox(this.sheet, WHOLE_SHEET, valuesOnly ?? false) ?? { row: 0, column: 0, rows: 1, columns: 1 },
    );
  }
  GetUsedRangeOrNullObject(valuesOnly: boolean | null): Found<Range> {
    const used = usedBox(this.sheet, WHOLE_SHEET, valuesOnly ?? false);
    return used ? new Range(this.state, this.sheet, used) : NULL_OBJECT;
  }
  _GetSheetById(id: string): Worksheet {
    const sheet = this.state.book.sheets.find((other) => other.id === id);
    if (!sheet) throw itemNotFound("Worksheet");
    return new Worksheet(this.state, sheet);
  }
}
