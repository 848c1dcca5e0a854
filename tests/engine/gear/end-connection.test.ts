import { describe, expect, it } from "vitest";
import { good, judged, kindTests, onSight, PRACTICE } from "../helpers";
import { counted } from "./ropes";

const LIST = "29 CFR 1926.1413(a)(2)(i): corrosion, heat, improperly applied end connections";

kindTests(
  "end connection",
  [
    // The federal count at an end is for pendants and standing ropes alone.
    ...counted(
      "end-connection.broken-wires-at-the-end",
      "brokenEnd",
      "from",
      2,
      ["standard"],
      "ASME B30.5-2011, restated: 2 at an end connection",
    ),
    // 20 mm as new: 10 % is 2 mm.
    {
      criterion: "end-connection.pin-wear.practice",
      source: PRACTICE,
      inside: [{ pinNew: "20 mm", pinNow: "19.5 mm" }, "KEEP"],
      edge: [{ pinNew: "20 mm", pinNow: "18 mm" }, "REMOVE"],
      past: [{ pinNew: "20 mm", pinNow: "17.99 mm" }, "REMOVE"],
    },
  ],
  [
    ...onSight("end-connection", "corrosion", "corrosion", { law: LIST }, "EXAMINE"),
    ...onSight("end-connection", "corrosion", "corrosion", { practice: PRACTICE }),
    ...onSight("end-connection", "cracks", "cracks", { law: LIST }, "EXAMINE"),
    ...onSight("end-connection", "cracks", "cracks", { practice: PRACTICE }),
    ...onSight("end-connection", "deformation", "deformed", { law: LIST }, "EXAMINE"),
    ...onSight("end-connection", "deformation", "deformed", { practice: PRACTICE }),
    ...onSight("end-connection", "fitting and seating", "endFittings", { law: LIST }, "EXAMINE"),
    ...onSight("end-connection", "fitting and seating", "endFittings", { practice: PRACTICE }),
    ...onSight("end-connection", "fasteners", "fasteners", { practice: PRACTICE }),
    ...onSight("end-connection", "heat damage", "heat", { law: LIST }, "EXAMINE"),
    ...onSight("end-connection", "heat damage", "heat", { practice: PRACTICE }),
    ...onSight("end-connection", "field weld or change", "fieldChange", {
      standard: "WAC 296-155-33900(2), applied to end connections",
      practice: PRACTICE,
    }),
    ...onSight("end-connection", "identification", "tag", { practice: PRACTICE }),
  ],
);

describe("rust at an end connection", () => {
  it.each(["light surface rust", "surface rust", "slight rust"])("%s is never in order there", (corrosion) => {
    expect(judged({ ...good("end connection"), corrosion }).decision).toMatch(/^(REMOVE|NO VERDICT)$/);
  });
});
