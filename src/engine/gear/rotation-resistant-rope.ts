/** Rotation-resistant ropes: counted over rope diameters, since their lays are hard to tell. */
import type { GearKind } from "./kind";
import { A2, count, DIAMETER, onSight, PARTS, SEEN, share } from "./shared/ropes";

export const rotationResistantRope: GearKind = {
  id: "rotation resistant rope",
  plural: "rotation-resistant ropes",
  names: ["rotation resistant rope", "rotation resistant"],
  parts: PARTS,
  checks: [
    { kind: "count", name: "broken wires in 6 diameters", part: "body", measured: "broken6d", required: true },
    { kind: "count", name: "broken wires in 30 diameters", part: "body", measured: "broken30d", required: true },
    { kind: "count", name: "broken wires at the end", part: "end fitting", measured: "brokenEnd", required: false },
    DIAMETER,
    ...SEEN,
  ],
  criteria: [
    ...count("rotation-resistant-rope", "broken wires in 6 diameters", "from", 2, "CFR 1926.1413", `${A2}(A)(2)`),
    ...count("rotation-resistant-rope", "broken wires in 30 diameters", "from", 4, "CFR 1926.1413", `${A2}(A)(2)`),
    ...count("rotation-resistant-rope", "broken wires at the end", "from", 2, "B30.5", "end connection", ["standard"], "restated"),
    ...share("rotation-resistant-rope", "diameter loss", "above", "0.05", "CFR 1926.1413", A2),
    ...onSight("rotation-resistant-rope"),
  ],
};
