/** How the findings of one item become its verdict, from facts put together by hand. */
import { describe, expect, it } from "vitest";
import { finding, type Finding } from "../../src/engine/check/finding";
import { DECISIONS, type Decision } from "../../src/engine/decision";
import { Outcome } from "../../src/engine/check/outcome";
import { type GearKind } from "../../src/engine/gear/kind";
import { type KindFacts } from "../../src/engine/item/kind-judge";
import { JudgedItem, unjudged } from "../../src/engine/item/verdict";
import { kindNamed } from "./helpers";

const at = (check: string, decision: Decision, more: Partial<Finding> = {}): Finding =>
  finding("limit", decision, { name: check, part: "saddle" }, { criterion: `c-${check}`, measured: "1 in", ...more });
interface Given {
  readonly kind?: GearKind | null;
  readonly tagged?: boolean;
  readonly gauged?: boolean;
  readonly assumed?: readonly string[];
  readonly more?: readonly string[];
  /** Notes of the first check; where it comes out. */
  readonly notes?: readonly string[];
  readonly comesOut?: readonly (string | null)[];
}
/** The item of these findings, check by check as they stand. */
function made(findings: readonly Finding[], given: Given = {}): JudgedItem {
  const { kind = kindNamed("hook"), tagged = false, gauged = true, assumed = [], more = [], notes = [], comesOut = [] } = given;
  const checks = [...new Set(findings.map((f) => f.check))];
  const outcomes = checks.map(
    (check, index) =>
      new Outcome(
        findings.filter((f) => f.check === check),
        index === 0 ? notes : [],
        comesOut[index] ?? null,
      ),
  );
  const facts: KindFacts = { needed: ["twist"], gauged, assumed };
  return new JudgedItem(outcomes, { kind, tagged, facts, more });
}
const named = (item: JudgedItem): readonly string[] => item.findings.map((f) => `${f.check} ${f.decision}`);

describe("the decision of an item", () => {
  it("is the worst of its findings, in whatever order they stand", () => {
    for (const worst of DECISIONS)
      for (const other of DECISIONS.slice(DECISIONS.indexOf(worst))) {
        expect(made([at("a", worst), at("b", other)]).decision).toBe(worst);
        expect(made([at("b", other), at("a", worst)]).decision).toBe(worst);
      }
  });
  it("is no verdict where nothing was found out", () => {
    expect(made([])).toMatchObject({
      decision: "NO VERDICT",
      deciding: null,
      share: null,
      overload: false,
      short: "Nothing could be read",
    });
    expect(made([]).reason).toBe("Nothing could be read.");
  });
  it("rests on what is nearest: worst first, then what met a limit, then the largest share, then the strictest limit of one check", () => {
    expect(
      named(
        made([
          at("kept", "KEEP", { share: 0.1 }),
          at("no limit", "REMOVE", { criterion: null, share: 3 }),
          at("less", "REMOVE", { share: 1.1 }),
          at("more", "REMOVE", { share: 1.2 }),
          at("seen", "REMOVE"),
          at("asked", "NO VERDICT"),
        ]),
      ),
    ).toEqual(["more REMOVE", "less REMOVE", "seen REMOVE", "no limit REMOVE", "asked NO VERDICT", "kept KEEP"]);
    // Nothing used is no share of any limit: the one that allows least leads, of one check only.
    const wide = at("wear", "KEEP", { share: 0, allows: 2, criterion: "wide" });
    const narrow = at("wear", "KEEP", { share: 0, allows: 1, criterion: "narrow" });
    const none = at("wear", "KEEP", { share: 0, criterion: "none" });
    const other = at("another", "KEEP", { share: 0, allows: 0.5, criterion: "other" });
    expect(made([wide, narrow]).deciding?.criterion).toBe("narrow");
    expect(made([narrow, wide]).deciding?.criterion).toBe("narrow");
    expect(made([narrow, none]).deciding?.criterion).toBe("none");
    expect(made([wide, other]).deciding?.criterion).toBe("wide");
    expect(made([other, wide]).deciding?.criterion).toBe("other");
  });
  it("of kept readings names the one with a share, though a word stands before it", () => {
    const seen = at("cracks", "KEEP", { criterion: "c-cracks" });
    const little = at("wear", "KEEP", { share: 0.2 });
    const more = at("throat", "KEEP", { share: 0.4 });
    expect(made([seen, little, more, seen]).parts.lead).toBe(more);
    expect(made([more, little]).parts.lead).toBe(more);
    expect(made([seen]).parts.lead).toBe(seen);
    expect(made([seen]).short).toBe("In order");
  });
  it("of an item that is out names the worst, whatever share another has", () => {
    const asked = at("twist", "NO VERDICT");
    expect(made([at("wear", "WATCH", { share: 0.9 }), asked]).parts.lead).toBe(asked);
  });
});

describe("what stands beside the decision", () => {
  it("is the largest share of an allowance; a figure that only shortens the interval is none", () => {
    expect(made([at("a", "KEEP", { share: 0.3 }), at("b", "REMOVE", { share: 1.4 }), at("c", "KEEP", { share: 0.9 })]).share).toBe(1.4);
    expect(made([at("a", "KEEP", { share: 0 }), at("b", "KEEP")]).share).toBe(0);
    expect(made([at("a", "WATCH", { share: 1.2, beyond: "WATCH" }), at("b", "KEEP", { share: 0.5, beyond: "REMOVE" })]).share).toBe(0.5);
    expect(made([at("a", "WATCH", { share: 1.2, beyond: "WATCH" })]).share).toBeNull();
  });
  it("is where the parts come out; of an unknown kind where the leading one does", () => {
    const worn = at("wear", "REMOVE", { share: 1.1, comesOut: "below 0.9 in" });
    const twisted = at("twist", "KEEP");
    expect(made([worn, twisted, at("throat", "KEEP")], { comesOut: ["wear below 0.9 in", null, "throat above 2 in"] }).comesOut).toBe(
      "wear below 0.9 in; throat above 2 in",
    );
    expect(made([worn]).comesOut).toBe("");
    expect(made([worn], { kind: null }).comesOut).toBe("wear below 0.9 in");
    expect(made([at("wear", "REMOVE")], { kind: null }).comesOut).toBe("");
    expect(made([], { kind: null }).comesOut).toBe("");
  });
  it("is the source of what leads, where a limit was met", () => {
    const limited = { share: 0.5, source: "a document" };
    expect(made([at("a", "KEEP", limited)]).source).toBe("a document");
    expect(made([at("a", "KEEP", { ...limited, source: null })]).source).toBe("");
    expect(made([at("a", "KEEP", { ...limited, criterion: null })]).source).toBe("");
    expect(made([]).source).toBe("");
  });
  it("is a sign of overload where any finding is one; it is told only of an item that is out by it", () => {
    const stretched = { overload: true, share: 1.2 };
    expect(made([at("a", "KEEP"), at("b", "REMOVE", stretched)])).toMatchObject({ overload: true, parts: { overload: true } });
    expect(made([at("a", "REMOVE"), at("b", "WATCH", stretched)])).toMatchObject({ overload: true, parts: { overload: false } });
    expect(made([at("a", "REMOVE"), at("b", "REMOVE")])).toMatchObject({ overload: false, parts: { overload: false } });
  });
  it("is that no gauge is recorded, where two sizes were compared", () => {
    const compared = at("a", "KEEP", { share: 0.5, original: "2 in" });
    expect(made([compared], { gauged: false }).parts.ungauged).toBe(true);
    expect(made([compared], { gauged: true }).parts.ungauged).toBe(false);
    expect(made([at("a", "KEEP", { share: 0.5 })], { gauged: false }).parts.ungauged).toBe(false);
    expect(made([at("a", "REMOVE", { original: "2 in" })], { gauged: false }).parts.ungauged).toBe(false);
    expect(made([], { gauged: false }).parts.ungauged).toBe(false);
  });
  it("is one finding of each other check that speaks against the item, worst first", () => {
    const item = made([
      at("lead", "REMOVE", { share: 2 }),
      at("lead", "WATCH"),
      at("kept", "KEEP", { share: 0.1 }),
      at("watched", "WATCH", { share: 0.9, criterion: "looser" }),
      at("asked", "NO VERDICT"),
      at("watched", "WATCH", { share: 0.95, criterion: "stricter" }),
    ]);
    expect(item.parts.others.map((f) => [f.check, f.criterion])).toEqual([
      ["asked", "c-asked"],
      ["watched", "stricter"],
    ]);
    expect(made([at("lead", "REMOVE"), at("one", "WATCH")]).parts.others.map((f) => f.check)).toEqual(["one"]);
    expect(made([at("a", "KEEP"), at("b", "KEEP")]).parts.others).toEqual([]);
  });
  it("is each note once", () => {
    expect(made([at("a", "KEEP")], { notes: ["one", "two", "one"] }).parts.notes).toEqual(["one", "two"]);
    expect(made([at("a", "KEEP")], { notes: ["one"] }).parts.notes).toEqual(["one"]);
    expect(made([at("a", "KEEP")], { notes: ["one"], assumed: ["taken"], more: ["tag"] }).notes).toEqual(["one", "taken", "tag"]);
    expect(made([at("a", "KEEP")], { assumed: ["taken"] }).notes).toEqual(["taken"]);
    expect(made([at("a", "KEEP")], { more: ["tag"] }).notes).toEqual(["tag"]);
    expect(made([at("a", "KEEP")]).notes).toEqual([]);
  });
  it("is the kind, the tag and the columns that are needed", () => {
    expect(made([at("a", "KEEP")], { tagged: true })).toMatchObject({ kind: "hook", tagged: true, needed: ["twist"] });
    expect(made([at("a", "KEEP")], { kind: null })).toMatchObject({ kind: null, tagged: false });
  });
});

describe("what is missing", () => {
  const lack = (check: string, field: Finding["field"], heading: string, why: Finding["why"] = "missing"): Finding =>
    finding(why, "NO VERDICT", { name: check, part: "" }, { ...(field === undefined ? {} : { field }), heading });
  it("is told check by check as the kind reads them, once each", () => {
    const item = made([
      lack("twist", "twist", "Twist deg"),
      lack("throat opening", "throatNow", "Throat now"),
      lack("throat opening", "throatNow", "Throat now"),
      lack("section wear across", "acrossNow", "Across now"),
      lack("latch", "latch", "Latch works", "unreadable"),
      at("cracks", "KEEP"),
    ]);
    expect(item.missing).toContain("throat opening (Throat now)");
    expect(item.missing.indexOf("throat opening (Throat now)")).toBeLessThan(item.missing.indexOf("twist (Twist deg)"));
    expect(item.missing.filter((one) => one.startsWith("throat"))).toHaveLength(1);
    expect(item.missing.some((one) => one.startsWith("latch"))).toBe(false);
    expect([...item.lacking].sort()).toEqual(["acrossNow", "latch", "throatNow", "twist"]);
  });
  it("is nothing where nothing is missing, or where the kind is not known", () => {
    expect(made([at("a", "KEEP")]).missing).toEqual([]);
    expect(made([at("a", "KEEP")]).lacking).toEqual([]);
    expect(made([lack("twist", "twist", "Twist deg")], { kind: null }).missing).toEqual([]);
    expect(made([lack("twist", undefined, "Twist deg")]).lacking).toEqual([]);
  });
});

describe("what lies outside the item", () => {
  it("is no verdict with its reason, and nothing else", () => {
    expect(unjudged("The log is gone.")).toEqual({
      decision: "NO VERDICT",
      reason: "The log is gone.",
      short: "The log is gone.",
      parts: { lead: null, others: [], overload: false, ungauged: false, notes: [] },
      findings: [],
      deciding: null,
      share: null,
      comesOut: "",
      source: "",
      overload: false,
      kind: null,
      tagged: false,
      needed: [],
      lacking: [],
      missing: [],
      notes: [],
    });
  });
});
