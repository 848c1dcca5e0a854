/**
 * The inspection of a gear kind in long form: one line for each thing to look at or to measure. A line fills one column of
 * the register; its label is what a person reads, and by it the line is known again.
 */
import { labelOf } from "../check/meet-limits";
import { field, FIELD_IDS, type FieldId } from "../columns";
import type { Check, GearKind } from "../gear/kind";
import { namedUnit, type Unit } from "../numbers/lengths";
import { tidy } from "../reading/text";
import { capital } from "../words";

export interface CheckLine {
  /** Column that its reading fills. */
  readonly now: FieldId;
  /** Column of what it is compared with: the as-new size, the nominal size, the maker's figure; null where there is none. */
  readonly asNew: FieldId | null;
  readonly label: string;
  readonly check: Check;
}
const line = (check: Check, now: FieldId, asNew: FieldId | null, label: string): CheckLine => ({
  now,
  asNew,
  label: capital(label),
  check,
});
function linesOfCheck(check: Check): readonly CheckLine[] {
  switch (check.kind) {
    case "loss": {
      const first = line(check, check.measured, check.ownOriginal ?? check.original, labelOf(check));
      if (check.acrossMeasured === undefined) return [first];
      return [first, line(check, check.acrossMeasured, check.acrossOriginal ?? null, `${labelOf(check)} across`)];
    }
    case "growth":
      return [line(check, check.measured, check.original, check.name)];
    case "least":
    case "ratio":
      return [line(check, check.measured, check.size, check.name)];
    case "enough":
      // A torque's unit stands in its heading: bare figures are of it.
      return [
        line(check, check.measured, check.size, field(check.measured).type === "torque" ? field(check.measured).heading : check.name),
      ];
    case "maker":
      return [line(check, check.measured, check.figure, check.name)];
    case "gap":
      return [line(check, check.measured, check.makers ?? null, check.name)];
    case "nick":
      return [
        line(check, check.measured, null, field(check.measured).heading),
        line(check, check.at, null, field(check.at).heading),
        line(check, check.sectionNow, check.sectionNew, field(check.sectionNow).heading),
      ];
    // Under these headings yes and no, none and found say which way is meant.
    default:
      return [line(check, check.measured, null, field(check.measured).heading)];
  }
}
/** Where two checks look at the same section, each goes by its own name. */
function named(lines: readonly CheckLine[]): readonly CheckLine[] {
  return lines.map((one) => {
    const shared = lines.some((other) => other.check !== one.check && other.label === one.label);
    return shared ? { ...one, label: capital(one.check.name) } : one;
  });
}
const KINDS = new WeakMap<Pick<GearKind, "checks">, readonly CheckLine[]>();
/** Every line of a kind, each column once, in the order of its checks. */
export function linesOf(kind: Pick<GearKind, "checks">): readonly CheckLine[] {
  let lines = KINDS.get(kind);
  if (lines === undefined) {
    const byColumn = new Map<FieldId, CheckLine>();
    for (const one of kind.checks.flatMap(linesOfCheck)) if (!byColumn.has(one.now)) byColumn.set(one.now, one);
    KINDS.set(kind, (lines = named([...byColumn.values()])));
  }
  return lines;
}
/** A label without its number in front and the unit behind it. */
interface Label {
  readonly key: string;
  readonly unit: Unit | null;
}
function readLabel(text: string): Label {
  const plain = tidy(text)
    .toLowerCase()
    .replace(/^\d{1,2}[.)]? /, "");
  const [, name = plain, bracketed, behind = ""] = /^(.*\S) ?(?:\(([^)]+)\)|, (in|mm))$/.exec(plain) ?? [];
  const named = namedUnit(bracketed ?? behind);
  return named?.times.equals(1) === true ? { key: name, unit: named.unit } : { key: plain, unit: null };
}
/** What a line of a list stands for: a check of the kind, or another column of the register such as Construction. */
export interface NamedLine {
  readonly now: FieldId;
  readonly asNew: FieldId | null;
  /** Unit that the label names for bare sizes. */
  readonly unit: Unit | null;
}
const COLUMNS = new Map(FIELD_IDS.map((id) => [field(id).heading.toLowerCase(), id]));
/** Finds a line by its label, by the name of its check, or by the heading of the column that it fills; null where nothing is called so. */
export function lineNamed(kind: GearKind, text: string): NamedLine | null {
  const { key, unit } = readLabel(text);
  const lines = linesOf(kind);
  const found =
    lines.find(({ label }) => label.toLowerCase() === key) ??
    lines.find(({ now }) => field(now).heading.toLowerCase() === key) ??
    lines.find(({ check }) => check.name === key);
  if (found) return { now: found.now, asNew: found.asNew, unit };
  const column = COLUMNS.get(key);
  return column === undefined ? null : { now: column, asNew: null, unit };
}
