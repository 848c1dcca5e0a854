/** Running ropes of cranes, hoists and winches. */
import type { Criterion } from "../rules/criterion";
import type { GearKind } from "./kind";
import { CHECKED, from } from "./shared/records";
import { A2, count, DIAMETER, NOT_RESISTANT, onSight, PARTS, SEEN, share } from "./shared/ropes";

/** Read where ISO 4309 is in force; the counts in a lay stay what the law asks for. */
const CATEGORY = { category: "ropeCategory", lay: "ropeLay", layers: "drumLayers", required: true, under: ["iso"] } as const;
const byCategory = (check: string): Criterion => ({
  id: `running-rope.${check.replaceAll(" ", "-")}.iso`,
  check,
  basis: "iso",
  limit: { word: "from", table: "rope category" },
  beyond: "REMOVE",
  source: from("ISO 4309", "Table 3"),
  status: "restated",
  checked: CHECKED,
});
export const runningRope: GearKind = {
  id: "running rope",
  plural: "running ropes",
  names: ["running rope", "hoist rope", "crane rope", "load line", "hoist line", "winch rope", "load rope"],
  parts: { ...PARTS, "outer wire": "moderate" },
  variants: NOT_RESISTANT,
  checks: [
    { kind: "count", name: "broken wires in a lay", part: "body", measured: "brokenLay", required: true },
    { kind: "count", name: "broken wires in one strand", part: "body", measured: "brokenStrand", required: true },
    { kind: "count", name: "broken wires in a valley", part: "body", measured: "brokenValley", required: false },
    { kind: "count", name: "broken wires at the end", part: "end fitting", measured: "brokenEnd", required: false },
    { kind: "category", name: "broken wires in 6 diameters", part: "body", measured: "broken6d", over: "6d", ...CATEGORY },
    { kind: "category", name: "broken wires in 30 diameters", part: "body", measured: "broken30d", over: "30d", ...CATEGORY },
    DIAMETER,
    { kind: "loss", name: "outer wire wear", part: "outer wire", original: "wireNew", measured: "wireNow", required: false },
    ...SEEN,
  ],
  criteria: [
    ...count("running-rope", "broken wires in a lay", "from", 6, "CFR 1926.1413", `${A2}(A)(1)`),
    ...count("running-rope", "broken wires in one strand", "from", 3, "CFR 1926.1413", `${A2}(A)(1)`),
    ...count("running-rope", "broken wires in a valley", "from", 1, "B30.5", "crane practice", ["standard"], "restated"),
    ...count("running-rope", "broken wires at the end", "from", 2, "B30.5", "end connection", ["standard"], "restated"),
    ...share("running-rope", "diameter loss", "above", "0.05", "CFR 1926.1413", A2),
    ...share("running-rope", "outer wire wear", "from", "1/3", "Mich 40834", "(1)(b)", ["standard"]),
    byCategory("broken wires in 6 diameters"),
    byCategory("broken wires in 30 diameters"),
    ...onSight("running-rope"),
  ],
};
