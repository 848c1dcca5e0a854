/** One check of one item: readings from cells, every criterion in force, one finding for each. */
import type { Check } from "../gear/kind";
import { growth } from "./growth";
import { least } from "./least";
import { loss } from "./loss";
import { nick } from "./nick";
import { enough, ratio } from "./proportion";
import type { Cells } from "./readings";
import { seenCheck } from "./seen";
import { single } from "./single";
import { NOTHING, type CheckResult, type Situation } from "./situation";

/** Every finding of one check, and what else should be said. */
export function evaluate(check: Check, cells: Cells, situation: Situation): CheckResult {
  if (check.onlyFor !== undefined && situation.construction !== null && !check.onlyFor.includes(situation.construction)) return NOTHING;
  switch (check.kind) {
    case "loss": return loss(check, cells, situation);
    case "growth": return growth(check, cells, situation);
    case "least": return least(check, cells, situation);
    case "gap": case "angle": case "count": return single(check, cells, situation);
    case "nick": return nick(check, cells, situation);
    case "ratio": return ratio(check, cells, situation);
    case "enough": return enough(check, cells, situation);
    case "seen": return seenCheck(check, cells, situation);
  }
}
