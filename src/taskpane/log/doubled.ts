import type { FieldId } from "../../engine/columns";
import type { Report } from "../../engine/report/model";

/** Fields that more than one heading is read as. */
export function doubled(report: Report): FieldId[] {
  return [...new Set(report.headings.flatMap(({ also }) => (also === null ? [] : [also])))];
}
