/**
 * Readings that stand in a row and that no check of its gear kind reads: broken wires at the end of a web sling, a bent
 * beam. They are never silent: what shows damage is EXAMINE, what cannot be told is NO VERDICT.
 */
import { finding, type Finding, withFacts } from "../check/finding";
import { inUse, isFor, type Situation } from "../check/in-force";
import { Remembered } from "../check/prepared-check";
import { columnOf } from "../check/read-sizes";
import { evaluate } from "../check/run-check";
import { field, type FieldId } from "../columns";
import { fieldsOf } from "../gear/columns-of";
import { GEAR } from "../gear/index";
import type { Check, GearKind } from "../gear/kind";
import { practiceWear } from "../gear/shared/records";
import type { Cells, Row } from "../log/cells";
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
function situationFor(check: Check, kind: GearKind, situation: Situation): Situation {
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
/** A column that no check of the kind reads, made ready for a log. */
export class UnreadColumn {
  private readonly memory: Remembered<Unread>;
  constructor(check: Check, situation: Situation, row: Row) {
    const { kind } = situation;
    const own = situationFor(check, kind, situation);
    this.memory = new Remembered(check, own.kind, row, () => unreadOf(check, kind, row, own));
  }
  judge(): Unread {
    return this.memory.get();
  }
  /** Places of the cells that it reads. */
  get slots(): readonly number[] {
    return this.memory.slots;
  }
}
interface Unread {
  /** A word of damage in the place of a size. */
  readonly word: Finding | null;
  readonly findings: readonly Finding[];
}
/** The columns of a log that no check of the kind reads. */
export function unreadColumns(situation: Situation, row: Row): readonly UnreadColumn[] {
  return unreadBy(situation.kind, situation)
    .filter((check) => fieldsOf(check).some((id) => row.slot(id) !== undefined))
    .map((check) => new UnreadColumn(check, situation, row));
}
/** What a row records beside the checks of its kind, as far as it speaks against the item: words of damage first. */
export function unreadDamage(columns: readonly UnreadColumn[], into: Finding[]): void {
  let later: Finding[] | null = null;
  for (const column of columns) {
    const { word, findings } = column.judge();
    if (word !== null) into.push(word);
    if (findings.length > 0) (later ??= []).push(...findings);
  }
  if (later !== null) into.push(...later);
}
const NO_DAMAGE: Unread = { word: null, findings: [] };
function unreadOf(check: Check, kind: GearKind, cells: Cells, situation: Situation): Unread {
  const shown = cells.value(shows(check));
  const text = readText(shown);
  // A word of damage in the place of a size needs no other size.
  const word =
    PAIRS.has(check.kind) && isFault(shown)
      ? asUnread(finding("not read", "EXAMINE", check, { measured: text }), check, kind, cells)
      : null;
  const nothing =
    (PAIRS.has(check.kind) &&
      fieldsOf(check)
        .slice(0, 2)
        .some((id) => readText(cells.value(id)) === "")) ||
    (field(shows(check)).type === "sound" && HAS_NONE.test(text)) ||
    shown === 0 ||
    /^0+([.,]0+)?$/.test(text);
  if (nothing) return word === null ? NO_DAMAGE : { word, findings: [] };
  const findings = evaluate(check, cells, situation)
    .findings.filter((f) => tells(f, check))
    .map((f) => asUnread(f, check, kind, cells));
  return word === null && findings.length === 0 ? NO_DAMAGE : { word, findings };
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
  return withFacts(found, {
    ...columnOf(cells, shows(check)),
    why: "not read",
    decision: sound ? "NO VERDICT" : "EXAMINE",
    because: `no check of ${kind.plural} reads that column`,
    type: next,
  });
}
