/**
 * Readings that stand in a row and that no check of its gear kind reads: broken wires at the end of a web sling, a bent
 * beam. They are never silent: what shows damage is EXAMINE, what cannot be told is NO VERDICT.
 */
import { readText } from "./cell";
import { evaluate } from "./check/evaluate";
import type { Cells } from "./check/readings";
import type { Situation } from "./check/situation";
import { field, type FieldId } from "./fields";
import { fieldsOf } from "./gear/fields-of";
import { GEAR } from "./gear/index";
import type { Check, GearKind } from "./gear/kind";
import type { Finding } from "./model";

/** The column that shows the damage. */
const shows = (check: Check): FieldId => check.measured;

/** One check for each column of damage that any gear kind reads: the first kind's. A least number or a share says nothing without its kind. */
const ALL: ReadonlyMap<FieldId, Check> = new Map(
  [...GEAR.flatMap((kind) => kind.checks)]
    .filter((check) => check.kind !== "enough" && check.kind !== "ratio" && check.kind !== "gap" && check.kind !== "category" && (check.kind !== "least" || check.measured === "ropeNow"))
    .reverse()
    .map((check) => [shows(check), loosened(check)]),
);

/** The check without what holds for its own kind only. */
function loosened(check: Check): Check {
  return Object.assign({}, check, { required: false, onlyFor: undefined, under: undefined });
}

/** One size without the other shows nothing. */
const PAIRS: ReadonlySet<Check["kind"]> = new Set<Check["kind"]>(["loss", "growth", "least"]);

const STRAYS = new WeakMap<GearKind, readonly Check[]>();

function straysOf(kind: GearKind): readonly Check[] {
  let strays = STRAYS.get(kind);
  if (!strays) {
    const read = new Set(kind.checks.flatMap((check) => fieldsOf(check)));
    STRAYS.set(kind, (strays = [...ALL].filter(([id]) => !read.has(id)).map(([, check]) => check)));
  }
  return strays;
}

/** A kind that is not in the catalogue: every column is a stray. */
export const UNKNOWN: GearKind = { id: "gear of unknown kind", plural: "gear of unknown kinds", names: [], parts: {}, checks: [], criteria: [] };

/** What a row records beside the checks of its kind, as far as it speaks against the item. */
export function strayFindings(kind: GearKind, cells: Cells, situation: Omit<Situation, "kind" | "variant">): readonly Finding[] {
  const bare: Situation = { ...situation, kind: { ...UNKNOWN, id: kind.id }, variant: null, house: undefined };
  const alone = (check: Check): boolean => PAIRS.has(check.kind) && fieldsOf(check).slice(0, 2).some((id) => readText(cells.value(id)) === "");
  return straysOf(kind).filter((check) => !alone(check)).flatMap((check) => evaluate(check, cells, bare).findings.filter((f) => f.decision !== "KEEP").map((f) => asStray(f, check, kind, cells)));
}

function asStray(finding: Finding, check: Check, kind: GearKind, cells: Cells): Finding {
  const heading = cells.heading(shows(check));
  if (finding.measured === null) return finding;
  // "no" under a heading such as Threads sound may also say that there are none.
  const sound = field(shows(check)).type === "sound";
  const next = sound ? "type n/a where there is none, else have it examined" : "have it examined by a competent person";
  return {
    ...finding,
    decision: sound ? "NO VERDICT" : "EXAMINE",
    sentence: `${check.name.charAt(0).toUpperCase()}${check.name.slice(1)}: "${finding.measured}" stands in "${heading}", and no check of a ${kind.id} reads that column; ${next}.`,
  };
}
