/** Words and readings that leave a doubt never take the looser limit; words that say nothing stop nothing. */
import { describe, expect, it } from "vitest";
import { matchKind } from "../../src/engine/names/gear-name";
import { torqueUnitOfHeading } from "../../src/engine/reading/torque";
import { good, judged } from "./helpers";

describe("lay and layers on the drum", () => {
  const rope = { ...good("running rope"), ropeCategory: "04", broken6d: 4, broken30d: 4 };
  const six = (cells: object) =>
    judged({ ...rope, ...cells }, "iso").findings.find((f) => f.check === "broken wires in 6 diameters")?.decision;
  it("doubtful words are refused, never read as the one with the higher count", () => {
    for (const ropeLay of ["ordinary?", "ordinary or Lang", "ordinary (unconfirmed)"]) expect(six({ ropeLay }), ropeLay).toBe("NO VERDICT");
    for (const drumLayers of ["multi?", "multi or single", "2-1"])
      expect(six({ ropeLay: "Lang", drumLayers }), drumLayers).toBe("NO VERDICT");
  });
  it("the trade's ways of saying it are read: category 04 is out from 5 in ordinary lay, from 2 in Lang", () => {
    for (const ropeLay of ["ordinary", "regular lay", "right regular lay", "RHRL", "right hand ordinary lay", "LH regular"])
      expect(six({ ropeLay, broken6d: 3 }), ropeLay).not.toBe("REMOVE");
    for (const ropeLay of ["Lang", "lang's lay", "RHLL", "n/a", "-", ""]) expect(six({ ropeLay }), ropeLay).toBe("REMOVE");
  });
});

describe("the material of clips", () => {
  it("in the gear's name comes before the form", () => {
    for (const gear of ["malleable fist grip clip", "fist grip clip, stainless", "stainless steel wire rope clip"])
      expect(judged({ ...good("clips"), gear, clipType: "" }).decision, gear).toBe("REMOVE");
  });
  it("that contradicts the column is NO VERDICT", () => {
    expect(judged({ ...good("clips"), gear: "malleable clip", clipType: "fist grip" }).reason).toContain(
      'does not go with "malleable clip", which is other material',
    );
  });
});

describe("a torque heading", () => {
  it.each([
    ["Torque (Nm)", "N·m"],
    ["Clip torque lb-ft", "lb-ft"],
    ["Torque ft.lb", "lb-ft"],
    ["Torque N·m", "N·m"],
    ["Torque", null],
    ["Torque (Nm / lb-ft)", null],
    ["Torque (lb-ft or Nm)", null],
    ["Torque (Nm/lb-ft)", null],
  ] as const)("%s is %s", (heading, unit) => {
    expect(torqueUnitOfHeading(heading)).toBe(unit);
  });
});

describe("an end connection", () => {
  it("is only what is nothing else: gear and ropes with one are not it", () => {
    for (const text of [
      "shackle with swaged fitting",
      "boom pendant with swaged sockets",
      "guy with poured socket",
      "closed socket pendant",
      "winch line with thimble splice",
      "wire rope with swaged fitting",
      "open socket wrench",
      "pipe swage fitting",
    ]) {
      const match = matchKind(text);
      expect(match.ok && match.kind.id === "end connection", text).toBe(false);
    }
    for (const text of ["Open socket", "poured socket, 1 in", "Swaged socket", "wire rope termination", "End connection", "spelter socket"])
      expect(matchKind(text), text).toMatchObject({ ok: true, kind: { id: "end connection" } });
  });
});

describe("a shackle and the table of new shackles", () => {
  const from = (gear: string, asNewFrom: string, more: object = {}) =>
    judged({ ...good("shackle"), gear, sectionNew: "", pinNew: "", ratedLoad: "1 t", sectionNow: 13, pinNow: 15, asNewFrom, ...more });
  it("of another pattern than its name says is refused", () => {
    expect(from("bow shackle", "dee mild steel table").decision).toBe("NO VERDICT");
    expect(from("anchor shackle", "dee mild steel table").decision).toBe("NO VERDICT");
    expect(from("dee shackle", "bow mild steel table").decision).toBe("NO VERDICT");
    expect(from("dee shackle", "dee mild steel table").decision).toBe("KEEP");
  });
  it("n/a in the as-new cells is as good as blank", () => {
    expect(from("dee shackle", "dee mild steel table", { sectionNew: "n/a", pinNew: "-" }).decision).toBe("KEEP");
  });
});

describe("a nick", () => {
  it("with n/a beside it is judged like one with blanks", () => {
    expect(judged({ ...good("hook"), nickDepth: 0.02, nickPart: "saddle", nickNew: "n/a", nickNow: "n/a" }).decision).toBe("DRESS");
    expect(judged({ ...good("hook"), nickDepth: 0.02, nickPart: "n/a" }).decision).toBe("DRESS");
  });
  it("as deep as the section leaves nothing, and never less than nothing", () => {
    const verdict = judged({ ...good("hook"), nickDepth: 5, nickPart: "saddle" });
    expect(verdict.decision).toBe("REMOVE");
    expect(verdict.reason).toContain("5 in deep at the saddle, which leaves nothing");
  });
});

describe("words that say that nothing is tagged out", () => {
  it.each(["nil", "no.", "not applicable", "not tagged out", "0", "—"])("%s", (tagged) => {
    expect(judged({ ...good("link"), tagged }).decision).toBe("KEEP");
  });
});

describe("constructions of strand laid rope", () => {
  it.each(["6x36", "6x36 IWRC", "6x25", "7x19", "6 x 26"])("%s", (construction) => {
    expect(judged({ ...good("wire rope sling"), construction }).decision).toBe("KEEP");
  });
});
