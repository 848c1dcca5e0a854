import { describe, expect, it } from "vitest";
import { CATEGORIES, CATEGORIES_LOWER } from "../../fixtures/ropes";
import { good, judged, kindTests } from "../helpers";
import { counted, refusesResistant, seenOnRopes, slimmer } from "./ropes";

const ISO = "ISO 4309:2010 Table 3, restated";
const CATEGORY_10 = { ropeCategory: "10", ropeLay: "ordinary", drumLayers: "single", broken6d: 0, broken30d: 0 };

kindTests(
  "running rope",
  [
    ...counted("running-rope.broken-wires-in-a-lay", "brokenLay", "from", 6),
    ...counted("running-rope.broken-wires-in-one-strand", "brokenStrand", "from", 3),
    ...counted("running-rope.broken-wires-in-a-valley", "brokenValley", "from", 1, ["standard"], "ASME B30 crane practice, restated"),
    ...counted(
      "running-rope.broken-wires-at-the-end",
      "brokenEnd",
      "from",
      2,
      ["standard"],
      "ASME B30.5-2011, restated: 2 at an end connection",
    ),
    ...slimmer("running-rope"),
    // Category 10, ordinary lay: 10 in 6 diameters, 19 in 30.
    {
      criterion: "running-rope.broken-wires-in-6-diameters.iso",
      source: ISO,
      inside: [{ ...CATEGORY_10, broken6d: 5 }, "KEEP"],
      edge: [{ ...CATEGORY_10, broken6d: 10 }, "REMOVE"],
      past: [{ ...CATEGORY_10, broken6d: 11 }, "REMOVE"],
    },
    {
      criterion: "running-rope.broken-wires-in-30-diameters.iso",
      source: ISO,
      inside: [{ ...CATEGORY_10, broken30d: 10 }, "KEEP"],
      edge: [{ ...CATEGORY_10, broken30d: 19 }, "REMOVE"],
      past: [{ ...CATEGORY_10, broken30d: 20 }, "REMOVE"],
    },
    // Outer wire 1.2 mm as new: 1/3 is 0.4 mm, so 0.8 mm is out. 1.1 mm has used a quarter.
    {
      criterion: "running-rope.outer-wire-wear.standard",
      source: "Mich. R 408.40834(1)(b): 1/3 of the original diameter",
      inside: [{ wireNew: "1.2 mm", wireNow: "1.1 mm" }, "KEEP"],
      edge: [{ wireNew: "1.2 mm", wireNow: "0.8 mm" }, "REMOVE"],
      past: [{ wireNew: "1.2 mm", wireNow: "0.79 mm" }, "REMOVE"],
    },
  ],
  seenOnRopes("running-rope"),
);

refusesResistant("running rope");

const rope = good("running rope");

describe("broken wires by rope category number", () => {
  const out = (cells: object, over: "6d" | "30d", count: number): string | undefined =>
    judged({ ...rope, broken6d: 0, broken30d: 0, ...cells, [`broken${over}`]: count }, "iso").findings.find(
      (f) => f.check === `broken wires in ${over.replace("d", "")} diameters`,
    )?.decision;
  for (const [rcn, , o6, o30, l6, l30, m6, m30] of CATEGORIES) {
    const lower = CATEGORIES_LOWER.find(([category]) => category === rcn);
    const ways: [words: string, cells: object, six: number, thirty: number][] = [
      ["ordinary lay", { ropeLay: "ordinary", drumLayers: "single" }, o6, o30],
      ["Lang lay", { ropeLay: "Lang", drumLayers: "single" }, l6, l30],
      ["neither lay nor drum recorded", {}, l6, l30],
      ["a drum of several layers", { ropeLay: "ordinary", drumLayers: "multi" }, lower?.[1] ?? m6, lower?.[2] ?? m30],
    ];
    for (const [words, cells, six, thirty] of ways)
      it(`category ${rcn}, ${words}: out from ${String(six)} in 6 diameters and ${String(thirty)} in 30 (${ISO})`, () => {
        for (const ropeCategory of [rcn, Number(rcn), `RCN ${rcn}`]) {
          const at = { ...cells, ropeCategory };
          expect(
            [out(at, "6d", six - 1), out(at, "6d", six), out(at, "30d", thirty - 1), out(at, "30d", thirty)].map((d) => d === "REMOVE"),
          ).toEqual([false, true, false, true]);
        }
      });
  }
  it("wants the category, and takes no neighbour of it", () => {
    expect(out({ ropeCategory: "" }, "6d", 0)).toBe("NO VERDICT");
    for (const ropeCategory of ["14", "23-2", "0", "steel"]) expect(out({ ropeCategory }, "6d", 0), ropeCategory).toBe("NO VERDICT");
  });
  it("wants words for lay and layers that it knows", () => {
    expect(out({ ropeCategory: "04", ropeLay: "left" }, "6d", 0)).toBe("NO VERDICT");
    expect(out({ ropeCategory: "04", drumLayers: "some" }, "6d", 0)).toBe("NO VERDICT");
  });
  it("is asked for only where ISO 4309 is in force", () => {
    expect(judged(rope).decision).toBe("KEEP");
    expect(judged({ ...rope, broken6d: 0, broken30d: 0 }, "standard,iso").reason).toContain("Rope category no.");
    expect(judged(rope, "standard,iso").missing).toEqual(
      expect.arrayContaining([
        "broken wires in 6 diameters (Rope category no.)",
        "broken wires in 30 diameters (Broken wires in 30 diameters)",
      ]),
    );
  });
  it("stands beside the counts of the law, and the strictest decides", () => {
    const item = { ...rope, ropeCategory: "10", ropeLay: "ordinary", drumLayers: "single", broken6d: 7, broken30d: 9, brokenLay: 7 };
    expect(
      judged(item, "iso")
        .findings.filter((f) => f.basis === "iso")
        .map((f) => f.decision),
    ).toEqual(["KEEP", "KEEP"]);
    expect(judged(item, "standard,iso").decision).toBe("REMOVE");
  });
});

describe("a hoist rope that is rotation resistant", () => {
  it("5 broken wires in a lay and 2 in a strand are no WATCH, whether its name or its construction says so", () => {
    const broken = { ...rope, brokenLay: 5, brokenStrand: 2 };
    expect(judged({ ...broken, gear: "Hoist rope", construction: "19x7 rotation resistant" }).decision).toBe("NO VERDICT");
    expect(judged({ ...broken, gear: "Hoist rope 19x7" }).missing).toContain("broken wires in 6 diameters (Broken wires in 6 diameters)");
    expect(judged({ ...broken, gear: "Hoist rope", construction: "6x36" }).decision).toBe("WATCH");
  });
});
