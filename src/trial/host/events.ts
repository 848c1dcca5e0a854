/** What happens to the book, told to the add-in as Excel tells it. */
import { addressOf, intersection } from "../book/address";
import type { Box, Cell, Change, Sheet } from "../book/book";
import { Range } from "./objects/range";
import type { HostState } from "./protocol/state";
import type { Entry } from "./protocol/wire";
import { isBlank } from "./sheet/cells";

const CATEGORY = 65_536;
/** Numbers of the events on the wire. */
const EVENT = {
  workbookSelection: 2,
  cells: 10,
  activated: 11,
  deactivated: 12,
  added: 13,
  selection: 14,
  deleted: 15,
  protection: 24,
  tableCells: 101,
} as const;
const WHOLE_WORKBOOK = "Workbook";
/** Ranges of so many past events can still be asked for. */
const REFERENCES_KEPT = 1000;
export class Events {
  private readonly state: HostState;
  private readonly post: (entries: Entry[]) => void;
  private sheetIds: Set<string>;
  private activeId: string;
  private readonly protectedIds = new Set<string>();
  private readonly references: string[] = [];
  readonly close: () => void;

  constructor(state: HostState, post: (entries: Entry[]) => void) {
    this.state = state;
    this.post = post;
    this.sheetIds = new Set(state.book.sheets.map((sheet) => sheet.id));
    this.activeId = state.book.active.id;
    for (const sheet of state.book.sheets) if (sheet.protected) this.protectedIds.add(sheet.id);
    this.close = state.book.listen((change) => {
      this.tell(change);
    });
  }

  private tell(change: Change): void {
    const entries = this.entriesFor(change);
    if (entries.length > 0 && this.state.eventsEnabled) this.post(entries);
  }

  private entriesFor(change: Change): Entry[] {
    switch (change.kind) {
      case "cells":
        return change.by === "calc" ? [] : this.cellsChanged(change.sheet, change.box, change.by, change.before);
      case "select":
        return [...this.activeChanged(), ...this.selectionMoved(change.sheet, change.box)];
      case "sheets":
        return [...this.sheetsChanged(), ...this.activeChanged()];
      case "layout":
        return this.protectionChanged(change.sheet);
      default:
        return [];
    }
  }

  private cellsChanged(sheet: Sheet, box: Box, by: "user" | "coauthor" | "add-in", before: Cell | undefined): Entry[] {
    // The event has a reference of its own: the add-in's are dropped at the end of its Excel.run.
    const message = {
      changeType: "RangeEdited",
      source: by === "coauthor" ? "Remote" : "Local",
      triggerSource: by === "add-in" ? "ThisLocalAddin" : "Unknown",
      worksheetId: sheet.id,
      address: addressOf(box),
      referenceId: this.reference(sheet, box),
      shiftDirection: "None",
      ...(before && detailsOf(before, sheet.cell(box.row, box.column))),
    };
    const tables = this.state.book.tables.filter((table) => table.sheet === sheet && intersection(table.box, box) !== null);
    return [
      ...toSheetAndWorkbook(EVENT.cells, sheet, message),
      ...tables.flatMap((table) => {
        const inTable = { ...message, tableId: table.id };
        return [
          entry(EVENT.tableCells, table.id, inTable),
          entry(EVENT.tableCells, sheet.id, inTable),
          entry(EVENT.tableCells, WHOLE_WORKBOOK, inTable),
        ];
      }),
    ];
  }

  private reference(sheet: Sheet, box: Box): string {
    const reference = this.state.track(new Range(this.state, sheet, box));
    this.references.push(reference);
    if (this.references.length > REFERENCES_KEPT) this.state.tracked.delete(this.references.shift() ?? "");
    return reference;
  }

  private selectionMoved(sheet: Sheet, box: Box): Entry[] {
    return [
      entry(EVENT.workbookSelection, "", {}),
      ...toSheetAndWorkbook(EVENT.selection, sheet, { address: addressOf(box), worksheetId: sheet.id }),
    ];
  }

  private sheetsChanged(): Entry[] {
    const before = this.sheetIds;
    this.sheetIds = new Set(this.state.book.sheets.map((sheet) => sheet.id));
    const added = [...this.sheetIds].filter((id) => !before.has(id));
    const deleted = [...before].filter((id) => !this.sheetIds.has(id));
    return [
      ...added.map((id) => entry(EVENT.added, WHOLE_WORKBOOK, { worksheetId: id, source: "Local" })),
      ...deleted.map((id) => entry(EVENT.deleted, WHOLE_WORKBOOK, { worksheetId: id, source: "Local" })),
    ];
  }

  private activeChanged(): Entry[] {
    const { id } = this.state.book.active;
    if (id === this.activeId) return [];
    const left = this.activeId;
    this.activeId = id;
    return [EVENT.deactivated, EVENT.activated].flatMap((event) => {
      const worksheetId = event === EVENT.activated ? id : left;
      return [entry(event, worksheetId, { worksheetId }), entry(event, WHOLE_WORKBOOK, { worksheetId })];
    });
  }

  private protectionChanged(sheet: Sheet): Entry[] {
    if (sheet.protected === this.protectedIds.has(sheet.id)) return [];
    if (sheet.protected) this.protectedIds.add(sheet.id);
    else this.protectedIds.delete(sheet.id);
    return toSheetAndWorkbook(EVENT.protection, sheet, {
      worksheetId: sheet.id,
      isProtected: sheet.protected,
      sheetName: sheet.name,
      source: "Local",
    });
  }
}
function entry(event: number, targetId: string, message: Record<string, unknown>): Entry {
  return { messageCategory: CATEGORY, messageType: event, targetId, message: JSON.stringify(message) };
}
function toSheetAndWorkbook(event: number, sheet: Sheet, message: Record<string, unknown>): Entry[] {
  return [entry(event, sheet.id, message), entry(event, WHOLE_WORKBOOK, message)];
}
function detailsOf(before: Cell, after: Cell | undefined): Record<string, unknown> {
  return {
    valueBefore: before.error ?? before.value ?? "",
    valueAfter: after?.error ?? after?.value ?? "",
    valueTypeBefore: typeOf(before),
    valueTypeAfter: typeOf(after),
  };
}
function typeOf(cell: Cell | undefined): string {
  if (!cell || isBlank(cell)) return "Empty";
  if (cell.error !== undefined) return "Error";
  return typeof cell.value === "number" ? "Double" : typeof cell.value === "boolean" ? "Boolean" : "String";
}
