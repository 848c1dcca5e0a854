/** A failure in one sentence with the next step; `kind` lets the pane design the state. */
export class WorkbookError extends Error {
  readonly kind: "no log" | "protected" | "editing" | "other shape" | "duplicate" | "renamed" | "too large" | "stopped" | "host";
  /** Headings of the register that were renamed, with what they were: `nameBack` puts them right. */
  readonly renamed: readonly { readonly now: string; readonly was: string }[];

  constructor(kind: WorkbookError["kind"], message: string, renamed: readonly { readonly now: string; readonly was: string }[] = []) {
    super(message);
    this.name = "WorkbookError";
    this.kind = kind;
    this.renamed = renamed;
  }
}
