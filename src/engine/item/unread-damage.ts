/**
 * Readings that stand in a row and that no check of its gear kind reads: broken wires at the end of a web sling, a bent
 * beam. They are never silent: what shows damage is EXAMINE, what cannot be told is NO VERDICT.
 */
import { finding, type Finding } from "../check/finding";
import { inUse, isFor, type Situation } from "../check/in-force";
import { columnOf } from "../check/read-sizes";
import { evaluate } from "../check/run-check";
import { field, type FieldId } from "../columns";
import { fieldsOf } from "../gear/columns-of";
import { GEAR } from "../gear/index";
import type { Check, GearKind } from "../gear/kind";
import { practiceWear } from "../gear/shared/records";
import type { Cells } from "../log/cells";
import type { CellValue } from "../reading/cell-value";
import { readSeen } from "../reading/observation";
import { readText } from "../reading/text";

/** The column that shows the damage. */
const shows = (check: Check): FieldId => check.measured;
/** One check for each column of damage that any gear kind reads: the first kind's. A least number, a clearance or a groove says nothing without its kind. */
const ALL: ReadonlyMap<FieldId, Check> = new Map(
  [...GEAR.flatMap((kind) => kind.checks)]
    .filter(
      (check) =>
        check.kind !== "enough" &&
        (check.kind !== "ratio" || check.over !== true) &&
        check.kind !== "gap" &&
        check.kind !== "category" &&
        (check.kind !== "least" || check.measured === "ropeNow"),
    )
    .reverse()
    .map((check) => [shows(check), loosened(check)]),
);
/** The check without what holds for its own kind only. */
function loosened(check: Check): Check {
  return Object.assign({}, check, { required: false, onlyFor: undefined, under: undefined });
}
/** One size without the other shows nothing. */
const PAIRS: ReadonlySet<Check["kind"]> = new Set<Check["kind"]>(["loss", "growth", "least"]);
const UNREAD = new WeakMap<GearKind, Map<string, readonly Check[]>>();
/** Checks of columns that no check of the kind reads under these rule sets and for this variant. */
function unreadBy(kind: GearKind, { bases, variant }: Pick<Situation, "bases" | "variant">): readonly Check[] {
  const byCase = UNREAD.get(kind) ?? new Map<string, readonly Check[]>();
  UNREAD.set(kind, byCase);
  const id = `${variant ?? ""}|${[...bases].join(",")}`;
  let unread = byCase.get(id);
  if (!unread) {
    const read = new Set(kind.checks.filter((check) => inUse(check, bases) && isFor(check, variant)).flatMap((check) => fieldsOf(check)));
    byCase.set(id, (unread = [...ALL].filter(([column]) => !read.has(column)).map(([, check]) => check)));
  }
  return unread;
}
/** A kind that is not in the catalogue: no column is read. */
export const UNKNOWN: GearKind = {
  id: "gear of unknown kind",
  plural: "gear of unknown kinds",
  names: [],
  parts: {},
  checks: [],
  criteria: [],
};
/** What a clerk writes where gear has no such part. */
const HAS_NONE = /^(none|nil|n\/?r|(none|not|no \w+) (required|fitted|applicable)|none fitted[,;]? none required)$/i;
/** Common practice's 10 % of most areas tells which wear of a foreign section deserves a look. */
function situationFor(check: Check, kind: GearKind, situation: Omit<Situation, "kind" | "variant">): Situation {
  const bare = { ...UNKNOWN, id: kind.id };
  if (check.kind !== "loss") return { ...situation, kind: bare, variant: null, house: undefined };
  return {
    ...situation,
    kind: { ...bare, parts: { [check.part]: "moderate" }, criteria: practiceWear("unread", [check.name], ["most"]) },
    bases: new Set(["practice"]),
    variant: null,
    house: undefined,
  };
}
/** What a row records beside the checks of its kind, as far as it speaks against the item. */
export function unreadDamage(
  kind: GearKind,
  cells: Cells,
  situation: Omit<Situation, "kind" | "variant">,
  variant: string | null,
): readonly Finding[] {
  const text = (id: FieldId): string => readText(cells.value(id));
  const nothing = (check: Check): boolean =>
    (PAIRS.has(check.kind) &&
      fieldsOf(check)
        .slice(0, 2)
        .some((id) => text(id) === "")) ||
    (field(shows(check)).type === "sound" && HAS_NONE.test(text(shows(check)))) ||
    cells.value(shows(check)) === 0 ||
    /^0+([.,]0+)?$/.test(text(shows(check)));
  const unread = unreadBy(kind, { bases: situation.bases, variant });
  // A word of damage in the place of a size needs no other size.
  const named = unread
    .filter((check) => PAIRS.has(check.kind) && isFault(cells.value(shows(check))))
    .map((check) => asUnread(finding("not read", "EXAMINE", check, { measured: text(shows(check)) }), check, kind, cells));
  const judged = unread
    .filter((check) => !nothing(check))
    .flatMap((check) =>
      evaluate(check, cells, situationFor(check, kind, situation))
        .findings.filter((f) => tells(f, check))
        .map((f) => asUnread(f, check, kind, cells)),
    );
  return [...named, ...judged];
}
function isFault(cell: CellValue): boolean {
  const read = typeof cell === "string" ? readSeen(cell, "fault") : null;
  return read?.kind === "value" && read.value === "fault";
}
/** A foreign pair of sizes tells something only when it was read and shows a loss. */
function tells(finding: Finding, check: Check): boolean {
  if (finding.decision === "KEEP" || finding.decision === "WATCH" || finding.share === 0) return false;
  return finding.measured !== null || !PAIRS.has(check.kind);
}
function asUnread(found: Finding, check: Check, kind: GearKind, cells: Cells): Finding {
  if (found.measured === null) return found;
  // "no" under a heading such as Threads sound may also say that there are none.
  const sound = field(shows(check)).type === "sound";
  const next = sound ? "type n/a where there is none, else have it examined" : "have it examined by a competent person";
  return {
    ...found,
    ...columnOf(cells, shows(check)),
    why: "not read",
    decision: sound ? "NO VERDICT" : "EXAMINE",
    because: `no check of ${kind.plural} reads that column`,
    type: next,
  };
}
