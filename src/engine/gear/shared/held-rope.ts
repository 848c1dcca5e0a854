/** What holds a rope by pressure: wedge sockets and clips. */
import type { Criterion } from "../../rules/criterion";
import type { Check } from "../kind";
import { removedOnSight, seen } from "./records";

/** Table 19: slipped rope, damaged rope, parts that do not belong or are put together wrongly. */
export const held = (part: string): readonly Check[] => [
  seen("rope slipped", part, "ropeSlipped", false),
  seen("rope damaged", part, "ropeDamaged", false),
  seen("wrong parts", part, "wrongParts", false),
];
export const heldOnSight = (kind: string): readonly Criterion[] =>
  held("").flatMap((check) => removedOnSight(kind, check.name, { standard: ["WAC 33900", ""], practice: ["practice", ""] }));
