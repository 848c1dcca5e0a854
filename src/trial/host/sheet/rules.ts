/** Conditional formats of a sheet, first rule first. */
import { addressOf, holds, intersection } from "../../book/address";
import type { Box, FormatRule, Sheet } from "../../book/book";
import { notModelled } from "../../book/errors";
import type { HostState } from "../protocol/state";

export function rulesIn(sheet: Sheet, box: Box): FormatRule[] {
  return sheet.rules.filter((rule) => intersection(rule.box, box) !== null);
}
/** Takes the rules off a box. A rule that reaches out of it would have to be cut in parts: not modelled. */
export function clearRules(state: HostState, sheet: Sheet, box: Box): void {
  const touched = rulesIn(sheet, box);
  if (touched.length === 0) return;
  const part = touched.find((rule) => !holds(box, rule.box));
  if (part) throw notModelled(`clearing ${addressOf(box)} of a conditional format that covers ${addressOf(part.box)}`);
  sheet.rules = sheet.rules.filter((rule) => !touched.includes(rule));
  state.book.tell({ kind: "rules", sheet });
}
export function removeRule(state: HostState, sheet: Sheet, rule: FormatRule): void {
  sheet.rules = sheet.rules.filter((other) => other !== rule);
  state.book.tell({ kind: "rules", sheet });
}
