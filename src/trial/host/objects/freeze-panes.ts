import { bottomOf, isWholeColumns, isWholeRows, LAST_COLUMN, LAST_ROW, parseBox, rightOf } from "../../book/address";
import type { Sheet } from "../../book/book";
import { invalidArgument, itemNotFound } from "../../book/errors";
import { type Found, HostObject, NULL_OBJECT, isRange } from "../protocol/object";
import type { HostState, RangeObject } from "../protocol/state";

export class FreezePanes extends HostObject {
  readonly type = "WorksheetFreezePanes";
  readonly scalars = [];
  private readonly sheet: Sheet;

  constructor(state: HostState, sheet: Sheet) {
    super(state);
    this.sheet = sheet;
  }

  FreezeRows(count: number | null): null {
    return this.freeze(count ?? 0, 0);
  }
  FreezeColumns(count: number | null): null {
    return this.freeze(0, count ?? 0);
  }
  Unfreeze(): null {
    return this.freeze(0, 0);
  }

  /** Rows down to the bottom of the range, columns up to its right; whole rows freeze rows only. */
  FreezeAt(range: RangeObject | string): null {
    const box = isRange(range) ? range.box : parseBox(range);
    if (!box) throw invalidArgument(undefined, "WorksheetFreezePanes.freezeAt");
    return this.freeze(isWholeColumns(box) ? 0 : bottomOf(box) + 1, isWholeRows(box) ? 0 : rightOf(box) + 1);
  }

  GetLocation(): RangeObject {
    const location = this.GetLocationOrNullObject();
    if (location === NULL_OBJECT) throw itemNotFound("WorksheetFreezePanes.getLocation");
    return location;
  }

  GetLocationOrNullObject(): Found<RangeObject> {
    const { frozenRows, frozenColumns } = this.sheet;
    if (frozenRows === 0 && frozenColumns === 0) return NULL_OBJECT;
    return this.state.make.range(this.sheet, { row: 0, column: 0, rows: frozenRows || LAST_ROW, columns: frozenColumns || LAST_COLUMN });
  }

  private freeze(rows: number, columns: number): null {
    this.sheet.frozenRows = rows;
    this.sheet.frozenColumns = columns;
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
    return null;
  }
}
