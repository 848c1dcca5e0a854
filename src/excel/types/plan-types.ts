/** What a new sheet of gear types holds: columns for the kinds of the log, and a row for each type that lacks sizes. Pure. */
import { field, FIELD_IDS, type FieldId } from "../../engine/columns";
import { GEAR } from "../../engine/gear/index";
import { readText, recordedText } from "../../engine/reading/text";
import type { Report } from "../../engine/report/model";
import { asNewFields, WHERE_HEADING } from "../../engine/types/gear-types";

export interface TypesPlan {
  readonly headings: readonly string[];
  /** Type, gear and size of each row to fill in. */
  readonly rows: readonly (readonly [type: string, gear: string, size: string])[];
}
export function planTypes({ items }: Pick<Report, "items">): TypesPlan {
  const held = new Set(items.flatMap(({ gear }) => gear ?? []));
  const kinds = held.size === 0 ? GEAR : GEAR.filter(({ id }) => held.has(id));
  const sizes = new Set<FieldId>(kinds.flatMap(asNewFields));
  const rows = new Map<string, readonly [string, string, string]>();
  for (const { gear, cells, verdict } of items) {
    const type = recordedText(cells.get("gearType"));
    if (gear === null || type === "" || !verdict.lacking.some((id) => id.endsWith("New"))) continue;
    const row = [type, gear, readText(cells.get("size"))] as const;
    rows.set(row.join("\n").toLowerCase(), row);
  }
  return {
    headings: [
      field("gearType").heading,
      field("gear").heading,
      field("size").heading,
      ...FIELD_IDS.filter((id) => sizes.has(id)).map((id) => field(id).heading),
      field("unit").heading,
      WHERE_HEADING,
    ],
    rows: [...rows.values()].sort((a, b) => a.join(" ").localeCompare(b.join(" "), "en", { numeric: true })),
  };
}
