/** What the eye finds. */
import { field } from "../../columns";
import type { Check } from "../../gear/kind";
import type { Cells } from "../../log/cells";
import { readSeen } from "../../reading/observation";
import { cite } from "../../rules/documents";
import { type CheckResult, criteriaFor, NOTHING, type Situation } from "../in-force";
import { missingFinding, plain, refusedFinding } from "../read-sizes";
import { tellSeen, tellSound, tellUnruled } from "../sentences";

export function seenCheck(check: Check & { kind: "seen" }, cells: Cells, situation: Situation): CheckResult {
  const { type, soundWords = [] } = field(check.measured);
  const read = readSeen(cells.value(check.measured), type === "fault" ? "fault" : "sound", {
    mayBeAbsent: check.mayBeAbsent === true,
    sound: soundWords,
  });
  if (read.kind === "refused") return { findings: [refusedFinding(check, cells, check.measured, read)], notes: [] };
  if (read.kind === "missing") return check.required ? { findings: [missingFinding(check, cells, check.measured)], notes: [] } : NOTHING;
  const criteria = criteriaFor(check, situation, "high", false);
  const [first] = criteria;
  if (read.value === "sound")
    return {
      findings: [
        plain(check, "KEEP", tellSound(check.name, read.text, first ? cite(first.source) : null, first?.basis ?? null), {
          measured: read.text,
        }),
      ],
      notes: [],
    };
  if (!first)
    return {
      findings: [plain(check, "EXAMINE", tellUnruled(check.name, read.text), { measured: read.text, overload: check.overload === true })],
      notes: [],
    };
  return {
    findings: criteria.map((c) =>
      plain(check, c.beyond, tellSeen(check.name, read.text, cite(c.source), c.basis), {
        criterion: c.id,
        measured: read.text,
        basis: c.basis,
        source: cite(c.source),
        overload: check.overload === true,
      }),
    ),
    notes: [],
  };
}
