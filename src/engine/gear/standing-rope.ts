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
    { kind: "count", name: "broken wires in one strand", part: "body", measured: "brokenStrand", required: false },
    { kind: "count", name: "broken wires at the end", part: "end fitting", measured: "brokenEnd", required: true },
    DIAMETER,
    ...SEEN,
  ],
  criteria: [
    ...count("standing-rope", "broken wires in a lay", "above", 2, "CFR 1926.1413", `${A2}(A)(3), beyond the end connections`),
    // No count of its own: wires of one strand are wires of the lay.
    ...count("standing-rope", "broken wires in one strand", "above", 2, "CFR 1926.1413", `${A2}(A)(3), as wires of the lay`),
    ...count("standing-rope", "broken wires at the end", "above", 1, "CFR 1926.1413", `${A2}(A)(3), at an end connection`),
    ...share("standing-rope", "diameter loss", "above", "0.05", "CFR 1926.1413", A2),
    ...onSight("standing-rope"),
  ],
};
