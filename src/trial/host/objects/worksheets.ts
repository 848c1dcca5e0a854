import { itemNotFound } from "../../book/errors";
import { HostCollection, type Key, sameText } from "../protocol/object";
import { addSheet } from "../sheet/sheets";
import { Worksheet } from "./worksheet";

export class WorksheetCollection extends HostCollection<Worksheet> {
  readonly type = "WorksheetCollection";
  override readonly events = ["DataChanged", "SelectionChanged", "Added", "Deleted", "Activated", "Deactivated", "ProtectionChanged"];

  list(): Worksheet[] {
    return this.state.book.sheets.map((sheet) => new Worksheet(this.state, sheet));
  }

  answersTo(item: Worksheet, key: Key): boolean {
    return item.Id === key || sameText(item.Name, key);
  }

  Add(name: string | null): Worksheet {
    return new Worksheet(this.state, addSheet(this.state, name));
  }

  GetActiveWorksheet(): Worksheet {
    return new Worksheet(this.state, this.state.book.active);
  }

  GetFirst(visibleOnly: boolean | null): Worksheet {
    return this.end(this.list(), visibleOnly);
  }

  GetLast(visibleOnly: boolean | null): Worksheet {
    return this.end(this.list().reverse(), visibleOnly);
  }

  override GetCount(visibleOnly?: boolean | null): number {
    return visibleOnly ? this.list().filter((item) => item.Visibility === "Visible").length : this.list().length;
  }

  private end(sheets: Worksheet[], visibleOnly: boolean | null): Worksheet {
    const found = sheets.find((item) => !visibleOnly || item.Visibility === "Visible");
    if (!found) throw itemNotFound("WorksheetCollection");
    return found;
  }
}
