/** A failure in one sentence with the next step; `kind` lets the pane design the state. */
export class WorkbookError extends Error {
  readonly kind: "no log" | "protected" | "editing" | "other shape" | "duplicate" | "too large" | "stopped" | "host";

  constructor(kind: WorkbookError["kind"], message: string) {
    super(message);
    this.name = "WorkbookError";
    this.kind = kind;
  }
}
