import { field, FIELD_IDS, type FieldId } from "../../engine/columns";
import { key } from "../../engine/log/match-headings";
import type { CellValue } from "../../engine/reading/cell-value";
import { REGISTER_SHEET } from "../kit/sheets";
import { WorkbookError } from "../kit/workbook-error";
import { RESULT_HEADINGS } from "./columns";

/** The register as it stands: headings, and the typed cells below them. */
export interface OldRegister {
  readonly headings: readonly string[];
  /** Values of the typed columns; the worked-out ones are blank here. */
  readonly values: readonly (readonly CellValue[])[];
  /** Typed cells that hold a formula. */
  isFormula(row: number, column: number): boolean;
}
export type OldShape =
  | {
      readonly ok: true;
      readonly columns: ReadonlyMap<FieldId, number>;
      readonly extras: readonly { readonly heading: string; readonly column: number }[];
    }
  | { readonly ok: false; readonly why: string };
/** Headings that every register has had; a log that has them all is a copy of one. */
const ALWAYS = ["Verdict", "Reason", "Due state", "Overload sign"];
/** Whether headings are those of a register, this one or a copy of it. */
export function looksLikeRegister(headings: readonly string[]): boolean {
  const keys = new Set(headings.map(key));
  return ALWAYS.every((heading) => keys.has(key(heading)));
}
/** Whether a table is a register of this add-in: its own headings, with an Id and the result columns. */
export function shapeOf(old: Pick<OldRegister, "headings">): OldShape {
  const byHeading = new Map(FIELD_IDS.map((id) => [key(field(id).heading), id]));
  const columns = new Map<FieldId, number>();
  const extras: { heading: string; column: number }[] = [];
  const results = new Set(RESULT_HEADINGS.map(key));
  old.headings.forEach((heading, column) => {
    const id = byHeading.get(key(heading));
    if (results.has(key(heading))) return;
    if (id !== undefined) columns.set(id, column);
    else extras.push({ heading, column });
  });
  const missing = ["Verdict", "Reason"].filter((h) => !old.headings.some((o) => key(o) === key(h)));
  if (!columns.has("id") || missing.length > 0)
    return { ok: false, why: `its table has no column ${[...(columns.has("id") ? [] : ["Id"]), ...missing].join(", ")}` };
  return { ok: true, columns, extras };
}
export function otherShape(why: string, sheet: string = REGISTER_SHEET): WorkbookError {
  return new WorkbookError(
    "other shape",
    `The sheet "${sheet}" is no register of this add-in: ${why}. Rename that sheet, then build again; nothing was written.`,
  );
}
