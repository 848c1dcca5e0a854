/** End connections of wire rope by themselves: sockets, swaged fittings, splices and thimbles. Clips and wedge sockets are kinds of their own. */
import type { GearKind } from "./kind";
import { examinedOnSight, practiceWear, removedOnSight, seen } from "./shared/records";
import { count } from "./shared/ropes";

const LIST = ["CFR 1926.1413", "(a)(2)(i)"] as const;
export const endConnection: GearKind = {
  id: "end connection",
  plural: "wire rope end connections",
  names: [
    "end connection",
    "rope end connection",
    "wire rope termination",
    "spelter socket",
    "poured socket",
    "resin socket",
    "swaged socket",
    "swage socket",
    "swage fitting",
    "swaged fitting",
    "open socket",
    "closed socket",
    "thimble splice",
    "wire rope ferrule",
  ],
  parts: { socket: "moderate", pin: "moderate", body: "moderate" },
  partNames: { ferrule: "socket", thimble: "body", splice: "body" },
  checks: [
    { kind: "count", name: "broken wires at the end", part: "socket", measured: "brokenEnd", required: true },
    { kind: "loss", name: "pin wear", part: "pin", original: "pinNew", measured: "pinNow", required: false },
    // Rust where a rope ends is never slight.
    { ...seen("corrosion", "socket", "corrosion", true), kind: "seen", measured: "corrosion", plainWords: true },
    seen("cracks", "socket", "cracks", true),
    seen("deformation", "socket", "deformed", true, true),
    seen("fitting and seating", "socket", "endFittings", true),
    seen("fasteners", "pin", "fasteners", false),
    seen("heat damage", "socket", "heat", false),
    seen("field weld or change", "socket", "fieldChange", false),
    seen("identification", "socket", "tag", false),
  ],
  criteria: [
    // The federal count at an end is for pendants and standing ropes alone.
    ...count("end-connection", "broken wires at the end", "from", 2, "B30.5", "end connection", ["standard"], "restated"),
    ...(["corrosion", "cracks", "deformation", "fitting and seating"] as const).flatMap((check) => [
      ...examinedOnSight("end-connection", check, { law: LIST }),
      ...removedOnSight("end-connection", check, { practice: ["practice", ""] }),
    ]),
    ...practiceWear("end-connection", ["pin wear"], ["most"]),
    ...removedOnSight("end-connection", "fasteners", { practice: ["practice", ""] }),
    ...examinedOnSight("end-connection", "heat damage", { law: LIST }),
    ...removedOnSight("end-connection", "heat damage", { practice: ["practice", ""] }),
    ...removedOnSight("end-connection", "field weld or change", {
      standard: ["WAC 33900", "(2), applied to end connections"],
      practice: ["practice", ""],
    }),
    ...removedOnSight("end-connection", "identification", { practice: ["practice", ""] }),
  ],
};
