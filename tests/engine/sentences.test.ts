/** What a reason and "comes out at" say beside the verdict: figures that agree with it. */
import { describe, expect, it } from "vitest";
import { good, judged } from "./helpers";

describe("where a part comes out", () => {
  const both = { ...good("shackle"), acrossNew: 30, acrossNow: 29.5 };
  it("follows the limit for wear in two directions where the readings show it", () => {
    const verdict = judged({ ...both, sectionNow: 18.9 });
    expect(verdict.decision).toBe("REMOVE");
    expect(verdict.reason).toContain("it comes out below 19 mm");
    expect(verdict.comesOut).toBe("bow section below 19 mm; bow section across below 28.5 mm; pin section at 19.8 mm or less");
  });
  it("keeps the wider limit where one direction is worn", () => {
    expect(judged({ ...both, acrossNow: 30, sectionNow: 18.9 }).comesOut).toBe(
      "bow section at 18 mm or less; bow section across at 27 mm or less; pin section at 19.8 mm or less",
    );
    expect(judged({ ...good("shackle"), sectionNow: 18.9 }).comesOut).toBe("bow section at 18 mm or less; pin section at 19.8 mm or less");
  });
  it("is told before anything is measured", () => {
    expect(judged({ ...good("shackle"), sectionNow: "", pinNow: "" }).comesOut).toBe(
      "bow section at 18 mm or less; pin section at 19.8 mm or less",
    );
  });
});

describe("what a limit counts from", () => {
  it("is as new for a pair of sizes", () => {
    expect(judged({ ...good("shackle"), sectionNow: 19 }).reason).toContain("Bow section 19 mm, as new 20 mm, is nearest");
  });
  it("is the new link for chain with a metric size of its own", () => {
    // 3/8 in chain is 10 mm, 0.3937 in; 0.36 in has lost 0.0337 of the 0.0394 in that are 10 %: 86 %.
    const { reason, findings } = judged({ ...good("chain sling"), sectionNow: 0.36 });
    expect(reason).toContain(
      "Link thickness 0.36 in, nominal 0.375 in (3/8), a new link 0.3937 in (10 mm), is inside the limit but near it, 86 % of the allowance used: it comes out at 0.3543 in or less (10 % of a new 10 mm link)",
    );
    expect(reason).not.toContain("as new");
    expect(findings.find((f) => f.criterion !== null && f.check === "link thickness")?.countsFrom).toBe(
      "nominal 0.375 in (3/8), a new link 0.3937 in (10 mm)",
    );
    expect(judged({ ...good("chain sling"), unit: "mm", sectionNow: 9.5 }).reason).toContain(
      "Link thickness 9.5 mm, nominal 0.375 in (3/8), a new link 10 mm, is",
    );
  });
  it("is the nominal size where the new link is no thicker than that", () => {
    // 7/8 in is 22.225 mm, more than the 22 mm of the table.
    const { reason } = judged({ ...good("chain sling"), size: "7/8", sectionNow: 0.8 });
    expect(reason).toContain("nominal 0.875 in (7/8), is");
    expect(reason).toContain("(10 % of nominal)");
    expect(judged({ ...good("chain sling"), size: "10 mm", unit: "mm", sectionNow: 9.5 }).reason).toContain(
      "Link thickness 9.5 mm, nominal 10 mm, is",
    );
  });
  it("is the nominal size of a rope", () => {
    const { reason } = judged({ ...good("running rope"), ropeNow: 0.48 });
    expect(reason).toContain("nominal 0.5 in (1/2)");
    expect(reason).not.toContain("as new");
  });
  it("is the new groove for the rope of a sheave", () => {
    const { reason } = judged({ ...good("sheave"), groove: 0.512 });
    expect(reason).toContain(
      "Groove diameter 0.512 in, for rope 0.5 in (1/2), a new groove 0.53 in, is beyond the limit: it comes out below 0.5125 in (least groove for the rope)",
    );
    expect(reason).not.toMatch(/as new|thickness/);
  });
});

describe("the short reason", () => {
  it("of a nick that can be ground out says so and what that leaves, and fits a line", () => {
    // 0.015 in off a saddle of 0.744 in leaves 0.729 in of 0.75 in: 2.8 %, inside 5 %.
    const { decision, short } = judged({ ...good("hook"), sectionNew: 0.75, sectionNow: 0.744, nickDepth: "1/64", nickPart: "saddle" });
    expect(decision).toBe("DRESS");
    expect(short).toBe("Nick 0.0156 in leaves 0.7284 in: grind it out");
  });
  it("gives a fraction as a decimal alone, and a place without what everybody knows", () => {
    const { decision, short } = judged({ ...good("hook"), sectionNew: "1", sectionNow: "15/16" });
    expect(decision).toBe("REMOVE");
    expect(short).toBe("Saddle 0.9375 in, out at 0.95 in or less");
    expect(judged({ ...good("hook"), sectionNow: "" }).short).toBe("Section: not recorded");
  });
});
