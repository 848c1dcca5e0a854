import { describe, expect, it } from "vitest";
import { fivePercentNick, good, judged, kindTests, onEveryFitting, onSight, PRACTICE, tenPercent, twoWays } from "../helpers";

const TABLE_19 = "WAC 296-155-33900 Table 19, text of ASME B30.26";

kindTests(
  "wedge socket",
  [
    tenPercent("wedge-socket.socket-wear.standard", TABLE_19, "from"),
    tenPercent("wedge-socket.socket-wear.practice", PRACTICE, "from"),
    twoWays("wedge-socket.socket-wear.practice-two-ways"),
    fivePercentNick("wedge-socket.nick.practice", "socket"),
    // 1 1/4 in rope: 6 diameters are 7.5 in; 1/2 in rope: 6 in at least, where 6 diameters are 3 in.
    {
      criterion: "wedge-socket.tail-length.six-or-eight-strands.practice",
      source: "makers: 6 rope diameters, at least 6 in (restated on two pages)",
      inside: [{ construction: "6x36", size: "1 1/4 in", tail: "9 in" }, "KEEP"],
      edge: [{ construction: "6x36", size: "1 1/4 in", tail: "7.5 in" }, "KEEP"],
      past: [{ construction: "6x36", size: "1 1/4 in", tail: "7.49 in" }, "REMOVE"],
    },
    {
      criterion: "wedge-socket.tail-length.rotation-resistant.practice",
      source: "makers: 20 rope diameters (restated on one page)",
      inside: [{ construction: "19x7", size: "1/2 in", tail: "12 in" }, "KEEP"],
      edge: [{ construction: "19x7", size: "1/2 in", tail: "10 in" }, "KEEP"],
      past: [{ construction: "19x7", size: "1/2 in", tail: "9.99 in" }, "REMOVE"],
    },
    tenPercent("wedge-socket.pin-wear.standard", TABLE_19, "from", "pinNew", "pinNow"),
    tenPercent("wedge-socket.pin-wear.practice", PRACTICE, "from", "pinNew", "pinNow"),
  ],
  [
    ...onSight("wedge-socket", "wedge", "wedge", { standard: "WAC 296-155-33915(2)", practice: PRACTICE }),
    ...onSight("wedge-socket", "rope slipped", "ropeSlipped", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("wedge-socket", "rope damaged", "ropeDamaged", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("wedge-socket", "wrong parts", "wrongParts", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("wedge-socket", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onEveryFitting("wedge-socket", TABLE_19),
  ],
);

describe("the tail of a wedge socket", () => {
  const socket = good("wedge socket");
  it("is 6 in at least: 5.9 in on 1/2 in rope of six strands is REMOVE, 6 in is not", () => {
    expect(judged({ ...socket, construction: "6x19", size: "1/2 in", tail: "5.9 in" }).decision).toBe("REMOVE");
    expect(judged({ ...socket, construction: "6x19", size: "1/2 in", tail: "6 in" }).decision).toBe("KEEP");
  });
  it("of rope that is not known is asked about where the two lengths differ", () => {
    const verdict = judged({ ...socket, size: "1/2 in", tail: "8 in" });
    expect(verdict.decision).toBe("NO VERDICT");
    expect(verdict.reason).toContain("depends on the construction");
    expect(judged({ ...socket, size: "1/2 in", tail: "10 in" }).decision).toBe("KEEP");
    expect(judged({ ...socket, size: "1/2 in", tail: "5 in" }).decision).toBe("REMOVE");
  });
});
