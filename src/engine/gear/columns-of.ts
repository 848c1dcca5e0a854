/** The columns that a check reads. */
import type { FieldId } from "../columns";
import type { Check } from "./kind";

export function fieldsOf(check: Check): readonly FieldId[] {
  switch (check.kind) {
    case "loss":
      return [
        check.original,
        check.measured,
        ...(check.ownOriginal ? [check.ownOriginal] : []),
        ...(check.acrossOriginal ? [check.acrossOriginal] : []),
        ...(check.acrossMeasured ? [check.acrossMeasured] : []),
      ];
    case "growth":
      return [check.original, check.measured];
    case "maker":
      return [check.measured, check.figure];
    case "least":
    case "ratio":
    case "enough":
      return [check.size, check.measured];
    case "category":
      return [check.measured, check.category, check.lay, check.layers];
    case "nick":
      return [check.measured, check.at, check.sectionNew, check.sectionNow];
    default:
      return [check.measured];
  }
}
/** The columns without which a check has no reading: one direction of a section is enough, lay and layers may be taken as the worse. */
export function neededFieldsOf(check: Check): readonly FieldId[] {
  if (check.kind === "loss") return [check.original, check.measured];
  return check.kind === "category" ? [check.measured, check.category] : fieldsOf(check);
}
