import { sentenceOf } from "../../../src/engine/check/sentences";
import { describe, expect, it } from "vitest";
import { CALIFORNIA_8497, FEDERAL_1918 } from "../../fixtures/clips";
import { good, judged, kindTests, onEveryFitting, onSight, PRACTICE } from "../helpers";

const FEDERAL = "29 CFR Part 1918 Appendix II Table 1";
const TABLE_19 = "WAC 296-155-33900 Table 19, compression hardware";

kindTests(
  "clips",
  [
    // Rope 3/4 in: 4 drop-forged clips or 5 of other material, 4 1/2 in apart, 18 in turned back, 130 lb-ft.
    ...(["law", "practice"] as const).flatMap((basis) => [
      {
        criterion: `clips.clip-count.${basis}`,
        source: FEDERAL,
        inside: [{ clips: 5 }, "KEEP"],
        edge: [{ clips: 4 }, "KEEP"],
        past: [{ clips: 3 }, "REMOVE"],
      } as const,
      {
        criterion: `clips.clip-count-other-material.${basis}`,
        source: FEDERAL,
        inside: [{ clipType: "other material", clips: 6 }, "KEEP"],
        edge: [{ clipType: "other material", clips: 5 }, "KEEP"],
        past: [{ clipType: "other material", clips: 4 }, "REMOVE"],
      } as const,
      {
        criterion: `clips.clip-spacing.${basis}`,
        source: FEDERAL,
        inside: [{ clipSpacing: 6 }, "KEEP"],
        edge: [{ clipSpacing: "4 1/2" }, "KEEP"],
        past: [{ clipSpacing: 4.49 }, "REMOVE"],
      } as const,
    ]),
    {
      criterion: "clips.turn-back.standard",
      source: "Cal. 8 CCR 8497 Table 1",
      inside: [{ turnBack: 20 }, "KEEP"],
      edge: [{ turnBack: 18 }, "KEEP"],
      past: [{ turnBack: 17.9 }, "REMOVE"],
    },
    {
      criterion: "clips.clip-torque.standard",
      source: "Cal. 8 CCR 8497 Table 1",
      inside: [{ clipTorque: 140 }, "KEEP"],
      edge: [{ clipTorque: 130 }, "KEEP"],
      past: [{ clipTorque: 129 }, "EXAMINE"],
    },
  ],
  [
    ...onSight("clips", "saddle on live end", "liveEnd", {
      law: "29 CFR 1915.112(b)(3): the U bears on the dead end",
      standard: "WAC 296-155-33915(1)(b)",
      practice: PRACTICE,
    }),
    ...onSight("clips", "rope slipped", "ropeSlipped", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("clips", "rope damaged", "ropeDamaged", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("clips", "wrong parts", "wrongParts", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("clips", "threads", "threads", { standard: TABLE_19, practice: PRACTICE }),
    ...onSight("clips", "fasteners", "fasteners", { standard: TABLE_19, practice: PRACTICE }),
    ...onEveryFitting("clips", TABLE_19),
  ],
);

const clips = good("clips");

describe("the federal clip table", () => {
  for (const row of FEDERAL_1918) {
    it(`${row.rope} in rope: ${String(row.forged)} clips ${row.spacing} in apart stay, one fewer or a hundredth nearer is REMOVE (${FEDERAL})`, () => {
      const item = { ...clips, size: row.rope, clips: row.forged, clipSpacing: row.spacing };
      expect(
        judged(item, "law")
          .findings.filter((f) => f.check.startsWith("clip "))
          .map((f) => f.decision),
      ).toEqual(["KEEP", "KEEP"]);
      expect(judged({ ...item, clips: row.forged - 1 }, "law").decision).toBe("REMOVE");
      expect(judged({ ...item, clipSpacing: row.inches - 0.01 }, "law").decision).toBe("REMOVE");
    });
    it(`${String(row.cm * 10)} mm rope: the same count, ${String(row.spacingCm)} cm apart`, () => {
      const item = {
        ...clips,
        unit: "mm",
        size: `${String(row.cm * 10)} mm`,
        clips: row.forged,
        clipSpacing: `${String(row.spacingCm)} cm`,
      };
      expect(
        judged(item, "law")
          .findings.filter((f) => f.check.startsWith("clip "))
          .map((f) => f.decision),
      ).toEqual(["KEEP", "KEEP"]);
      expect(judged({ ...item, clips: row.forged - 1 }, "law").decision).toBe("REMOVE");
      expect(judged({ ...item, clipSpacing: `${String(row.spacingCm * 10 - 0.1)} mm` }, "law").decision).toBe("REMOVE");
    });
  }
  it("has one row for 1/2 in and less: 3 clips 3 in apart on 3/8 in rope, although six diameters are 2 1/4 in", () => {
    expect(judged({ ...clips, size: "3/8", clips: 3, clipSpacing: 3 }).decision).toBe("KEEP");
    expect(judged({ ...clips, size: "3/8", clips: 2, clipSpacing: 3 }).decision).toBe("REMOVE");
    expect(judged({ ...clips, size: "3/8", clips: 3, clipSpacing: 2.5 }).decision).toBe("REMOVE");
  });
  for (const size of ["9/16", "1 5/8", "17 mm"])
    it(`has no row for ${size}: NO VERDICT, never the neighbour's`, () => {
      const verdict = judged({ ...clips, size, clips: 9, clipSpacing: 20 });
      expect(verdict.decision).toBe("NO VERDICT");
      expect(verdict.reason).toContain("is not in the federal clip table");
    });
});

describe("the California clip table", () => {
  for (const row of CALIFORNIA_8497)
    it(`${row.rope} in rope: ${row.turnBack} in turned back stays, a tenth less is REMOVE (Cal. 8 CCR 8497 Table 1)`, () => {
      const turned = (turnBack: unknown): readonly string[] =>
        judged({ ...clips, size: row.rope, clips: row.clips, turnBack: turnBack as string }, "standard")
          .findings.filter((f) => f.criterion === "clips.turn-back.standard")
          .map((f) => f.decision);
      expect(turned(row.turnBack)).toEqual(["KEEP"]);
      expect(turned(row.inches - 0.1)).toEqual(["REMOVE"]);
    });
});

describe("more clips than tabled", () => {
  it("need a longer turn-back in proportion: 8 clips on 3/4 in rope, tabled 4 with 18 in, need 36 in (Cal. 8 CCR 8497 Table 1, note)", () => {
    const turned = (count: number, turnBack: number) =>
      judged({ ...clips, clips: count, turnBack }, "standard").findings.find((f) => f.criterion === "clips.turn-back.standard")?.decision;
    expect([turned(8, 36), turned(8, 35.9), turned(5, 22.5), turned(5, 22.4), turned(4, 18), turned(3, 18)]).toEqual([
      "KEEP",
      "REMOVE",
      "KEEP",
      "REMOVE",
      "KEEP",
      "KEEP",
    ]);
  });
});

describe("the spacing of clips and the gauge", () => {
  it("far more than enough is enough, whatever the tape reads to", () => {
    expect(judged({ ...clips, clipSpacing: 6, gauge: "1/4" }).decision).toBe("KEEP");
  });
  it("within half of the tape's resolution of the least is EXAMINE", () => {
    expect(judged({ ...clips, clipSpacing: 4.55, gauge: "1/4" }).decision).toBe("EXAMINE");
    expect(judged({ ...clips, clipSpacing: 4.45, gauge: "1/4" }).decision).toBe("EXAMINE");
    expect(judged({ ...clips, clipSpacing: 4.3, gauge: "1/4" }).decision).toBe("REMOVE");
  });
});

describe("clips of other material than drop forged", () => {
  for (const row of FEDERAL_1918)
    it(`${row.rope} in rope: ${String(row.other)} stay, one fewer is REMOVE (${FEDERAL})`, () => {
      const item = { ...clips, clipType: "malleable iron", size: row.rope, clipSpacing: row.spacing };
      expect(
        [row.other, row.other - 1].map(
          (count) => judged({ ...item, clips: count }, "law").findings.find((f) => f.check === "clip count")?.decision,
        ),
      ).toEqual(["KEEP", "REMOVE"]);
    });
  it("where the type is not recorded, only what holds for every type is judged", () => {
    // 3/4 in: 4 drop forged, 5 of other material.
    const count = (n: number) => judged({ ...clips, clipType: "", clips: n }).findings.find((f) => f.check === "clip count");
    expect([5, 4, 3].map((n) => count(n)?.decision)).toEqual(["KEEP", "NO VERDICT", "REMOVE"]);
    expect(sentenceOf(count(4)!)).toBe(
      'Clip count 4 depends on the clip type, which is not recorded: KEEP as drop forged U-bolt, KEEP as drop forged fist grip, REMOVE as other material; fill "Clip type".',
    );
  });
  it("the gear's own name may give the type away", () => {
    expect(judged({ ...clips, gear: "fist grip clip", clipType: "" }).decision).toBe("KEEP");
    expect(judged({ ...clips, gear: "malleable wire rope clip", clipType: "" }).decision).toBe("REMOVE");
  });
  it("words that name no type are NO VERDICT", () => {
    expect(judged({ ...clips, clipType: "the blue ones" }).reason).toContain("drop forged U-bolt, drop forged fist grip, other material");
  });
});

describe("the torque of clips", () => {
  for (const row of CALIFORNIA_8497)
    it(`${row.rope} in rope: ${String(row.torque)} lb-ft stays, one less is EXAMINE (Cal. 8 CCR 8497 Table 1)`, () => {
      const at = (clipTorque: string | number) =>
        judged({ ...clips, size: row.rope, clipTorque }, "standard").findings.find((f) => f.check === "clip torque")?.decision;
      expect([at(row.torque), at(row.torque - 1)]).toEqual(["KEEP", "EXAMINE"]);
    });
  it("is read in newton metres too: 130 lb-ft are 176.26 N·m", () => {
    expect(
      ["177 Nm", "176 N·m", "176 N.m", "130 ft-lb", "129 lbf ft"].map(
        (clipTorque) => judged({ ...clips, clipTorque }, "standard").findings.find((f) => f.check === "clip torque")?.decision,
      ),
    ).toEqual(["KEEP", "EXAMINE", "EXAMINE", "KEEP", "EXAMINE"]);
  });
  it("of fist grips is in no table that was read, so it is not judged", () => {
    expect(judged({ ...clips, clipType: "fist grip", clipTorque: 20 }).findings.filter((f) => f.check === "clip torque")).toEqual([]);
  });
  it("in another unit is refused", () => {
    expect(judged({ ...clips, clipTorque: "18 kgm" }).reason).toContain("no unit of torque");
  });
});
