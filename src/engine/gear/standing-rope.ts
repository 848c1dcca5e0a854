/** Standing ropes, pendants and guys. */
import type { GearKind } from "./kind";
import { A2, count, DIAMETER, NOT_RESISTANT, onSight, PARTS, SEEN, share } from "./shared/ropes";

export const standingRope: GearKind = {
  id: "standing rope",
  plural: "standing ropes",
  names: ["standing rope", "pendant", "guy rope", "guy line", "stay rope"],
  parts: PARTS,
  variants: NOT_RESISTANT,
  checks: [
    { kind: "count", name: "broken wires in a lay", part: "body", measured: "brokenLay", required: true },
    { kind: "count", name: "broken wires at the end", part: "end fitting", measured: "brokenEnd", required: true },
    DIAMETER,
    ...SEEN,
  ],
  criteria: [
    ...count("standing-rope", "broken wires in a lay", "above", 2, "CFR 1926.1413", `${A2}, beyond the end connection`),
    ...count("standing-rope", "broken wires at the end", "above", 1, "CFR 1926.1413", `${A2}, at the end connection`),
    ...share("standing-rope", "diameter loss", "above", "0.05", "CFR 1926.1413", A2),
    ...onSight("standing-rope"),
  ],
};
