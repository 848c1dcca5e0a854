import { describe, expect, it } from "vitest";
import { good, judged, kindTests } from "../helpers";
import { counted, refusesResistant, seenOnRopes, slimmer } from "./ropes";

kindTests(
  "standing rope",
  [
    ...counted("standing-rope.broken-wires-in-a-lay", "brokenLay", "above", 2),
    // No count of its own: wires of one strand are wires of the lay.
    ...counted("standing-rope.broken-wires-in-one-strand", "brokenStrand", "above", 2),
    ...counted("standing-rope.broken-wires-at-the-end", "brokenEnd", "above", 1),
    ...slimmer("standing-rope"),
  ],
  seenOnRopes("standing-rope"),
);

refusesResistant("standing rope");

describe("a pendant by its own words (29 CFR 1926.1413(a)(2)(ii)(A)(3))", () => {
  it("2 broken wires in a lay, both in one strand, are WATCH; a third is REMOVE", () => {
    const pendant = { ...good("standing rope"), gear: "pendant" };
    expect(judged({ ...pendant, brokenLay: 2, brokenStrand: 2 }).decision).toBe("WATCH");
    expect(judged({ ...pendant, brokenLay: 3, brokenStrand: 2 }).decision).toBe("REMOVE");
    expect(judged({ ...pendant, brokenLay: 2, brokenStrand: 3 }).decision).toBe("REMOVE");
  });
});
