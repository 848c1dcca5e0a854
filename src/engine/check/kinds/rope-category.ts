/** Broken wires over 6 or 30 rope diameters, by rope category number. */
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { exact, ZERO } from "../../numbers/exact";
import { showDecimal } from "../../numbers/lengths";
import { readCount } from "../../reading/number";
import { recordedText } from "../../reading/text";
import { cite } from "../../rules/documents";
import { brokenWiresFrom, type Spooling } from "../../tables/rope";
import type { Figure } from "../allowance";
import { finding, type Finding } from "../finding";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { CHOOSE_BASIS, meet, NO_LIMIT } from "../meet-limits";
import { missingFinding, refusedFinding } from "../read-sizes";

type CategoryCheck = Check & { kind: "category" };
interface Rope {
  readonly rcn: string;
  readonly spooling: Spooling;
  readonly words: string;
  readonly notes: readonly string[];
}
const HAND = "((right|left|rh|lh)[- ]?(hand(ed)?)? )?";
const ORDINARY = new RegExp(`^(${HAND}(ordinary|regular)( lay)?|[rl]hrl)$`, "i");
const LANG = new RegExp(`^(${HAND}lang'?s?( lay)?|[rl]hll)$`, "i");
const SINGLE = /^(single|1|one)([- ]layer)?$/i;
const MULTI = /^(multi|multiple|several|two|three|[2-9])([- ]?layers?)?$/i;
/** Category, lay and layers of a rope, or the findings that stand in the way. */
function readRope(check: CategoryCheck, cells: Cells): Rope | readonly Finding[] {
  const refuse = (id: typeof check.lay, text: string, why: string): readonly Finding[] => [refusedFinding(check, cells, id, { text, why })];
  const category = recordedText(cells.value(check.category));
  if (category === "") return [missingFinding(check, cells, check.category)];
  const digits = /^(?:rcn ?)?0*(\d{1,2})$/i.exec(category)?.[1];
  const rcn = digits?.padStart(2, "0");
  if (rcn === undefined || brokenWiresFrom(rcn, "ordinary", check.over) === null)
    return refuse(check.category, category, "it is no row of ISO 4309 Table 3, which has 01 to 13; a neighbouring row is never used");
  const lay = recordedText(cells.value(check.lay));
  const spelled = lay === "" || LANG.test(lay) ? "lang" : ORDINARY.test(lay) ? "ordinary" : null;
  if (spelled === null) return refuse(check.lay, lay, "type ordinary or Lang");
  const layers = recordedText(cells.value(check.layers));
  const multi = layers === "" || SINGLE.test(layers) ? false : MULTI.test(layers) ? true : null;
  if (multi === null) return refuse(check.layers, layers, "type single or multi");
  const notes = [
    ...(lay === "" && !multi ? ["Lay is not recorded: judged as Lang lay, which has the lower counts"] : []),
    ...(layers === "" ? ["Layers on the drum are not recorded: judged as a single layer, which has the lower counts"] : []),
  ];
  return {
    rcn,
    spooling: multi ? "multi" : spelled,
    words: `category ${rcn}, ${multi ? "multi-layer drum" : `${spelled === "lang" ? "Lang" : "ordinary"} lay on a single layer`}`,
    notes,
  };
}
export function category(check: CategoryCheck, cells: Cells, situation: Situation): CheckResult {
  const count = readCount(cells.value(check.measured));
  if (count.kind === "missing" && !check.required) return NOTHING;
  const rope = readRope(check, cells);
  const unread =
    count.kind === "missing"
      ? [missingFinding(check, cells, check.measured)]
      : count.kind === "refused"
        ? [refusedFinding(check, cells, check.measured, count)]
        : [];
  if (!("rcn" in rope)) return { findings: [...unread, ...rope], notes: [] };
  if (count.kind !== "value") return { findings: unread, notes: rope.notes };
  const show = (value: typeof count.value): string => showDecimal(value, 0);
  const figure: Figure = {
    used: count.value,
    base: null,
    comesOut: "larger",
    unit: null,
    show,
    measured: { typed: show(count.value) },
    original: null,
    blur: ZERO,
    gauge: "",
  };
  const least = brokenWiresFrom(rope.rcn, rope.spooling, check.over);
  const criteria = criteriaFor(check, situation, "high", false);
  if (least === null || criteria.length === 0)
    return {
      findings: [finding("no limit", "NO VERDICT", check, { because: NO_LIMIT, type: CHOOSE_BASIS, measured: figure.measured.typed })],
      notes: [],
    };
  const findings = criteria.map((criterion) => {
    if (!("table" in criterion.limit) || criterion.limit.table !== "rope category")
      throw new Error(`${criterion.id} is no limit by rope category [${cite(criterion.source)}]`);
    return meet(check, figure, criterion, { allowance: exact(least), word: "from", rule: `${String(least)} or more in ${rope.words}` });
  });
  return { findings, notes: rope.notes };
}
/** "broken wires in 6 diameters at 4 or more", as far as the category is known. */
export function categoryComesOut(check: CategoryCheck, cells: Cells, situation: Situation): string | null {
  const rope = readRope(check, cells);
  if (!("rcn" in rope) || criteriaFor(check, situation, "high", false).length === 0) return null;
  const least = brokenWiresFrom(rope.rcn, rope.spooling, check.over);
  return least === null ? null : `${check.name} at ${String(least)} or more`;
}
