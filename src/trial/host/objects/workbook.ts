import { itemNotFound } from "../../book/errors";
import { type Found, HostObject, NULL_OBJECT } from "../protocol/object";
import { Application } from "./application";
import { NamedItemCollection } from "./names";
import { Range } from "./range";
import { TableCollection } from "./tables";
import { WorksheetCollection } from "./worksheets";

export class Workbook extends HostObject {
  readonly type = "Workbook";
  readonly scalars = ["Name", "ReadOnly"];
  override readonly events = ["SelectionChanged"];
  readonly ReadOnly = false;
  readonly _Runtime = new Runtime(this.state);
  readonly Application = new Application(this.state);

  get Name(): string {
    return this.state.book.fileName;
  }
  get Worksheets(): WorksheetCollection {
    return new WorksheetCollection(this.state);
  }
  get Tables(): TableCollection {
    return new TableCollection(this.state, null);
  }
  get Names(): NamedItemCollection {
    return new NamedItemCollection(this.state);
  }

  GetSelectedRange(): Range {
    return new Range(this.state, this.state.book.active, this.state.book.selection);
  }

  GetActiveCell(): Range {
    return new Range(this.state, this.state.book.active, { ...this.state.book.selection, rows: 1, columns: 1 });
  }

  _GetRangeForEventByReferenceId(id: string): Range {
    const range = this._GetRangeOrNullObjectForEventByReferenceId(id);
    if (range === NULL_OBJECT) throw itemNotFound("Workbook._GetRangeForEventByReferenceId");
    return range;
  }

  _GetRangeOrNullObjectForEventByReferenceId(id: string): Found<Range> {
    const range = this.state.tracked.get(id);
    return range instanceof Range ? range : NULL_OBJECT;
  }

  _RemoveReference(id: string): null {
    const object = this.state.tracked.get(id);
    if (object) object.reference = null;
    this.state.tracked.delete(id);
    return null;
  }

  _RemoveAllReferences(): null {
    this.state.tracked.clear();
    return null;
  }

  /** The library takes the root for the container of worksheet functions in their own context. */
  _SetOsfControlContainerReadyForCustomFunctions(): null {
    return null;
  }
}
/** `context.runtime`: whether the add-in hears of events. */
class Runtime extends HostObject {
  readonly type = "Runtime";
  readonly scalars = ["EnableEvents"];

  get EnableEvents(): boolean {
    return this.state.eventsEnabled;
  }
  set EnableEvents(enabled: boolean) {
    this.state.eventsEnabled = enabled;
  }
}
