import type { Sheet } from "../../book/book";
import { accessDenied } from "../../book/errors";
import { HostObject } from "../protocol/object";
import type { HostState } from "../protocol/state";

export class WorksheetProtection extends HostObject {
  readonly type = "WorksheetProtection";
  readonly scalars = ["Protected", "Options"];
  private readonly sheet: Sheet;

  constructor(state: HostState, sheet: Sheet) {
    super(state);
    this.sheet = sheet;
  }

  get Protected(): boolean {
    return this.sheet.protected;
  }
  get Options(): Record<string, unknown> {
    return this.sheet.protection?.options ?? {};
  }

  Protect(options: Record<string, unknown> | null, password: string | null): null {
    if (this.sheet.protected) throw accessDenied("WorksheetProtection.protect");
    this.sheet.protected = true;
    this.sheet.protection = { options: options ?? {}, ...(password !== null && { password }) };
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
    return null;
  }

  Unprotect(password: string | null): null {
    const { protection } = this.sheet;
    // A file carries only a digest of its password, against which nothing is checked here.
    const wrong = protection?.password !== undefined ? protection.password !== password : protection?.digest !== undefined;
    if (this.sheet.protected && wrong) throw accessDenied("WorksheetProtection.unprotect");
    this.sheet.protected = false;
    this.sheet.protection = null;
    this.state.book.tell({ kind: "layout", sheet: this.sheet });
    return null;
  }
}
