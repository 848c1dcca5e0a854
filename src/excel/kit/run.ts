/** Running a batch, and a sentence for what can go wrong in one. */
import { WorkbookError } from "./workbook-error";

/** What a request that failed leaves behind: nothing, or cells that stand and that the next build finishes. */
const NOTHING = "nothing was written";
const BEGUN = "the register was begun, and what was typed stands as it was";
const SENTENCES: Record<string, readonly [WorkbookError["kind"], string]> = {
  AccessDenied: ["protected", `A sheet is protected. Unprotect it under Review, then try again; ${NOTHING}.`],
  InvalidOperationInCellEditMode: ["editing", "A cell is being edited. Press Enter or Esc in the sheet, then try again."],
  RequestPayloadSizeLimitExceeded: ["too large", "The log is too large for one step. Split it over two sheets, then try again."],
  ResponsePayloadSizeLimitExceeded: ["too large", "The log is too large for one step. Split it over two sheets, then try again."],
  ActivityLimitReached: ["host", "The workbook is busy. Wait a moment, then try again."],
  ApiNotFound: ["host", "This version of the spreadsheet program is too old for the add-in. Update it, then try again."],
};
/** Runs a batch; failures of the workbook come out as a sentence with the next step. */
export async function inWorkbook<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run(batch);
  } catch (fault) {
    throw asWorkbookError(fault);
  }
}
/** A failure after the first write: its sentence says that something stands, and what to do. */
export function whileWriting(fault: unknown): WorkbookError {
  const { kind, message, renamed } = asWorkbookError(fault);
  if (kind === "too large")
    return new WorkbookError(
      "too large",
      `A cell or a row is too large for one step; ${BEGUN}. Shorten the longest remarks, then build again.`,
    );
  const told = message.includes(NOTHING)
    ? message.replace(NOTHING, BEGUN)
    : `${message} ${BEGUN.charAt(0).toUpperCase()}${BEGUN.slice(1)}; build again to finish it.`;
  return new WorkbookError(kind, told, renamed);
}
export function asWorkbookError(fault: unknown): WorkbookError {
  if (fault instanceof WorkbookError) return fault;
  const code = typeof fault === "object" && fault !== null && "code" in fault ? String(fault.code) : "";
  const known = SENTENCES[code];
  if (known) return new WorkbookError(known[0], known[1]);
  const detail = fault instanceof Error ? fault.message : String(fault);
  return new WorkbookError(
    "host",
    `The workbook did not do what was asked (${code === "" ? detail : `${code}: ${detail}`}). Try again; if it happens again, save and open the workbook anew.`,
  );
}
