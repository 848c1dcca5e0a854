/** What the eye finds. */
import { field } from "../../columns";
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { readSeen } from "../../reading/observation";
import { cite } from "../../rules/documents";
import { finding } from "../finding";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { missingFinding, refusedFinding } from "../read-sizes";
import { capital } from "../../words";

export function seenCheck(check: Check & { kind: "seen" }, cells: Cells, situation: Situation): CheckResult {
  const { type, soundWords: own = [], faultWords = [], advice } = field(check.measured);
  const soundWords = check.plainWords === true ? [] : own;
  const read = readSeen(cells.value(check.measured), type === "fault" ? "fault" : "sound", {
    mayBeAbsent: check.mayBeAbsent === true,
    sound: soundWords,
    fault: faultWords,
  });
  if (read.kind === "refused") return { findings: [refusedFinding(check, cells, check.measured, read)], notes: [] };
  if (read.kind === "missing") return check.required ? { findings: [missingFinding(check, cells, check.measured)], notes: [] } : NOTHING;
  const criteria = criteriaFor(check, situation, "high", false);
  const [first] = criteria;
  const measured = read.text;
  if (read.value === "sound")
    return {
      findings: [finding("seen", "KEEP", check, { measured, ...(first && { basis: first.basis, source: cite(first.source) }) })],
      notes:
        advice !== undefined && soundWords.some((word) => measured.toLowerCase().includes(word))
          ? [`${capital(check.name)} "${measured}": ${advice}`]
          : [],
    };
  const overload = check.overload === true;
  if (!first) return { findings: [finding("no rule", "EXAMINE", check, { measured, overload })], notes: [] };
  return {
    findings: criteria.map((c) =>
      finding("seen", c.beyond, check, { criterion: c.id, measured, basis: c.basis, source: cite(c.source), overload }),
    ),
    notes: [],
  };
}
