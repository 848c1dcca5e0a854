/** Hidden rows and columns. */
import type { Sheet } from "../../book/book";
import { accessDenied } from "../../book/errors";
import type { HostState } from "../protocol/state";

/** True or false when all are alike, null when some are hidden. */
export function hiddenAmong(hidden: ReadonlySet<number>, first: number, count: number): boolean | null {
  let found = 0;
  for (const line of hidden) if (line >= first && line < first + count) found += 1;
  return found === 0 ? false : found === count ? true : null;
}
export function setHidden(state: HostState, sheet: Sheet, hidden: Set<number>, first: number, count: number, hide: boolean): void {
  const allowed = hidden === sheet.hiddenRows ? "allowFormatRows" : "allowFormatColumns";
  if (sheet.protected && sheet.protection?.options[allowed] !== true) throw accessDenied("Range.hidden");
  if (hide) for (let line = first; line < first + count; line += 1) hidden.add(line);
  else for (const line of [...hidden]) if (line >= first && line < first + count) hidden.delete(line);
  state.book.tell({ kind: "layout", sheet });
}
