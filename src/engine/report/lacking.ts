/** What a log lacks before its items can be kept: kind by kind, what is not recorded, and whether the log has a column for it. */
import { field, type FieldId } from "../columns";
import { GEAR } from "../gear/index";
import { capital, count, showNumber } from "../words";
import type { ItemResult, KindLack, Report } from "./model";

/** The kinds of a log that lack something, most items first. */
export function lackingOf(items: readonly ItemResult[], there: ReadonlySet<FieldId>): readonly KindLack[] {
  return GEAR.flatMap((kind): readonly KindLack[] => {
    const mine = items.filter(({ gear }) => gear === kind.id);
    const columns = new Map<FieldId, { missing: number; unreadable: number }>();
    let lacking = 0;
    for (const { verdict } of mine) {
      const lacked = new Set<FieldId>();
      for (const { why, field: id } of verdict.findings) {
        if (id === undefined || lacked.has(id) || (why !== "missing" && why !== "unreadable")) continue;
        lacked.add(id);
        const counts = columns.get(id) ?? { missing: 0, unreadable: 0 };
        counts[why] += 1;
        columns.set(id, counts);
      }
      if (lacked.size > 0) lacking += 1;
    }
    if (lacking === 0) return [];
    const list = [...columns].map(([id, counts]) => ({ field: id, ...counts, there: there.has(id) }));
    return [
      {
        kind: kind.id,
        items: lacking,
        of: mine.length,
        columns: list.sort((a, b) => Number(a.there) - Number(b.there) || b.missing + b.unreadable - a.missing - a.unreadable),
      },
    ];
  }).sort((a, b) => b.items - a.items);
}
/** "12 of 14 hooks: no column for Throat as-new and Latch works; Cracks is blank for 3." */
export function tellLack({ kind, items, of, columns }: KindLack): string {
  const many = GEAR.find(({ id }) => id === kind)?.plural ?? kind;
  const absent = columns.filter(({ there }) => !there).map(({ field: id }) => field(id).heading);
  const partly = columns
    .filter(({ there }) => there)
    .map(({ field: id, missing, unreadable }) => {
      const said = [
        ...(missing === 0 ? [] : [`is blank for ${missing === of ? "all" : showNumber(missing)}`]),
        ...(unreadable === 0 ? [] : [`cannot be read for ${unreadable === of ? "all" : showNumber(unreadable)}`]),
      ];
      return `${field(id).heading} ${said.join(" and ")}`;
    });
  const parts = [...(absent.length === 0 ? [] : [`no column for ${listed(absent)}`]), ...partly];
  const who = items === of ? count(of, kind, many) : `${showNumber(items)} of ${count(of, kind, many)}`;
  return `${capital(who)}: ${parts.join("; ")}.`;
}
function listed(words: readonly string[]): string {
  const [last = "", ...first] = [...words].reverse();
  return first.length === 0 ? last : `${first.reverse().join(", ")} and ${last}`;
}
/** Fields that the items of a log need and that no column of it gives, each once, what most items wait for first. */
export function lackedColumns({ lacking }: Pick<Report, "lacking">): readonly FieldId[] {
  return [...new Set(lacking.flatMap(({ columns }) => columns.filter(({ there }) => !there).map(({ field: id }) => id)))];
}
/** Items that lack an as-new size, which a sheet of gear types could lend. */
export function lackAsNew(items: readonly ItemResult[]): number {
  return items.filter(({ verdict }) => verdict.findings.some(({ why, field: id }) => why === "missing" && id?.endsWith("New") === true))
    .length;
}
