/** Groups of input columns, each under a name of its own and folded by the sheet's outline. */
import { field, FIELD_IDS, type FieldId } from "../../engine/columns";

export type GroupName = "the item" | "the answer" | "identity" | "sizes" | "what was seen" | "record" | "your own";
/** In sight at the left, before the answer. */
export const FRONT_FIELDS: readonly FieldId[] = ["id", "gear", "place"];
const IDENTITY: ReadonlySet<FieldId> = new Set<FieldId>([
  "size",
  "ratedLoad",
  "legs",
  "gearType",
  "asNewFrom",
  "unit",
  "gauge",
  "construction",
  "assembly",
  "ropeCategory",
  "ropeLay",
  "drumLayers",
  "clipType",
]);
const ORDER: readonly GroupName[] = ["the item", "identity", "sizes", "what was seen", "record"];
export function groupOf(id: FieldId): GroupName {
  if (FRONT_FIELDS.includes(id)) return "the item";
  if (IDENTITY.has(id)) return "identity";
  if (id === "nickPart") return "sizes";
  switch (field(id).type) {
    case "length":
    case "angle":
    case "torque":
      return "sizes";
    case "count":
    case "sound":
    case "fault":
      return "what was seen";
    default:
      return "record";
  }
}
/** Fields as a new register has them: the item's own first, then group by group. */
export function inGroups(fields: readonly FieldId[]): readonly FieldId[] {
  const place = (id: FieldId): number =>
    FRONT_FIELDS.includes(id)
      ? FRONT_FIELDS.indexOf(id)
      : 100 * ORDER.indexOf(groupOf(id)) + 100 + FIELD_IDS.indexOf(id) / FIELD_IDS.length;
  return [...fields].sort((a, b) => place(a) - place(b));
}
