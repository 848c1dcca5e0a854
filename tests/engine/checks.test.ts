/** What each sort of check finds out, as facts: readings, limits, what stands in the way. Figures worked by hand. */
import { describe, expect, it } from "vitest";
import { type Finding } from "../../src/engine/check/finding";
import { good, judged, type CellRecord } from "./helpers";

const all = (kind: string, cells: CellRecord, check: string, basis?: string): readonly Finding[] =>
  judged({ ...good(kind), ...cells }, basis).findings.filter((f) => f.check === check);
function only(kind: string, cells: CellRecord, check: string, basis?: string): Finding {
  const found = all(kind, cells, check, basis);
  expect(
    found.map((f) => f.why),
    `${kind}: ${check}`,
  ).toHaveLength(1);
  return found[0]!;
}

describe("an observation", () => {
  it("in order names the first rule set that asks for it, and is no overload", () => {
    expect(only("shackle", { deformed: "none" }, "deformation", "standard")).toMatchObject({
      why: "seen",
      decision: "KEEP",
      basis: "standard",
      source: expect.stringContaining("WAC 296-155-33900"),
      criterion: null,
      overload: false,
    });
    expect(only("shackle", { deformed: "none" }, "deformation", "law")).toMatchObject({ decision: "KEEP", basis: null, source: null });
  });
  it("at fault is met by every rule set in force; only a deformed part tells of overload", () => {
    expect(all("hook", { cracks: "found" }, "cracks").map((f) => [f.criterion, f.decision, f.overload])).toEqual([
      ["hook.cracks.standard", "REMOVE", false],
      ["hook.cracks.practice", "REMOVE", false],
    ]);
    expect(only("shackle", { deformed: "bent" }, "deformation", "standard")).toMatchObject({
      decision: "REMOVE",
      overload: true,
      measured: "bent",
    });
    expect(only("shackle", { deformed: "bent" }, "deformation", "law")).toMatchObject({
      why: "no rule",
      decision: "EXAMINE",
      overload: true,
    });
    expect(only("roundsling", { tag: "no" }, "identification tag", "law")).toMatchObject({
      why: "no rule",
      decision: "EXAMINE",
      overload: false,
    });
  });
  it("that is blank is asked for where it is required, and only there", () => {
    expect(only("hook", { cracks: "" }, "cracks")).toMatchObject({ why: "missing", decision: "NO VERDICT", field: "cracks" });
    expect(all("hook", { threads: "" }, "threads")).toEqual([]);
    expect(only("hook", { threads: "maybe" }, "threads")).toMatchObject({ why: "unreadable", decision: "NO VERDICT" });
  });
  it("with a word of the column's own is in order with its advice; without that word there is none", () => {
    const note = 'Corrosion "light surface rust": clean and lubricate';
    expect(judged({ ...good("shackle"), corrosion: "light surface rust" }).notes).toContain(note);
    expect(judged({ ...good("shackle"), corrosion: "none" }).notes.join()).not.toContain("clean and lubricate");
    expect(judged({ ...good("shackle"), pinSeated: "hand tight" }).notes.join()).not.toContain("hand tight");
  });
});

describe("a maker's own figure", () => {
  it("is the limit, and passes at the figure itself", () => {
    expect(only("load chain", { sectionNow: 7.1 }, "link thickness")).toMatchObject({
      why: "limit",
      decision: "KEEP",
      measured: "7.1 mm",
      limit: "the maker's 6.4 mm",
      comesOut: "below 6.4 mm",
      overload: false,
    });
    expect(only("load chain", { gaugedNow: 236.5 }, "stretch over gauged links")).toMatchObject({
      decision: "REMOVE",
      limit: "the maker's 236 mm",
      comesOut: "above 236 mm",
      overload: true,
    });
  });
  it("is read in its own unit: 0.25 in are 6.35 mm", () => {
    expect(only("load chain", { linkLeast: "0.25 in", sectionNow: 6.35 }, "link thickness")).toMatchObject({
      decision: "KEEP",
      limit: "the maker's 6.35 mm",
    });
    expect(only("load chain", { linkLeast: "0.25 in", sectionNow: 6.34 }, "link thickness").decision).toBe("REMOVE");
  });
  it("is asked for beside its reading, and its reading beside it", () => {
    expect(all("load chain", { linkLeast: "" }, "link thickness").map((f) => [f.why, f.field])).toEqual([["missing", "linkLeast"]]);
    expect(all("load chain", { sectionNow: "" }, "link thickness").map((f) => [f.why, f.field])).toEqual([["missing", "sectionNow"]]);
    expect(
      all("load chain", { sectionNow: "", linkLeast: "ok" }, "link thickness")
        .map((f) => [f.why, f.field])
        .sort(),
    ).toEqual([
      ["missing", "sectionNow"],
      ["unreadable", "linkLeast"],
    ]);
  });
  it("that is not asked for counts where it stands: a swivel's clearance", () => {
    expect(all("swivel", { clearance: 0.05 }, "clearance by its maker")).toEqual([]);
    expect(only("swivel", { clearance: 0.05, clearanceMost: 0.15 }, "clearance by its maker").decision).toBe("KEEP");
    expect(only("swivel", { clearance: 0.05, clearanceMost: "ok" }, "clearance by its maker")).toMatchObject({
      why: "unreadable",
      field: "clearanceMost",
    });
    expect(all("swivel", { clearance: "", clearanceMost: 0.15 }, "clearance by its maker")).toEqual([]);
  });
  it("without a rule set that takes it is no verdict, and says what to choose", () => {
    expect(only("load chain", {}, "link thickness", "law")).toMatchObject({
      why: "no limit",
      decision: "NO VERDICT",
      measured: "7.1 mm",
      because: "the rules in force hold no limit for it",
      type: "choose a basis that has one",
    });
  });
});

describe("a clearance, an angle, a count", () => {
  it("is shown as what it is", () => {
    expect(only("swivel", { clearance: 0.05, clearanceMost: "" }, "shoulder clearance", "house")).toMatchObject({ measured: "0.05 in" });
    expect(only("hook", { twist: 2.5 }, "twist", "law")).toMatchObject({
      measured: "2.5 degrees",
      limit: "above 10 degrees",
      comesOut: "above 10 degrees",
    });
    expect(only("running rope", { brokenLay: 3 }, "broken wires in a lay", "law")).toMatchObject({
      measured: "3",
      limit: "6 or more",
      share: 0.5,
    });
  });
  it("that is blank is asked for where it is required, and only there", () => {
    expect(only("hook", { twist: "" }, "twist")).toMatchObject({ why: "missing", field: "twist" });
    expect(all("running rope", { brokenValley: "" }, "broken wires in a valley")).toEqual([]);
    expect(only("running rope", { brokenValley: "some" }, "broken wires in a valley")).toMatchObject({
      why: "unreadable",
      field: "brokenValley",
    });
  });
  it("of a swivel meets the lesser figure only while the maker's is not known", () => {
    const ids = (cells: CellRecord): readonly (string | null)[] =>
      all("swivel", cells, "shoulder clearance")
        .map((f) => f.criterion)
        .sort();
    expect(ids({ clearance: 0.05 })).toEqual(["swivel.shoulder-clearance.practice-look", "swivel.shoulder-clearance.practice-strip"]);
    expect(ids({ clearance: 0.05, clearanceMost: "3/16" })).toEqual(["swivel.shoulder-clearance.practice-strip"]);
  });
});

describe("a measure that must not fall short", () => {
  it("is held to the least for its size, in the unit of the reading", () => {
    expect(only("clips", { clips: 4 }, "clip count", "law")).toMatchObject({
      decision: "KEEP",
      measured: "4",
      limit: "at least 4 for size 0.75 in",
      comesOut: "below 4",
    });
    expect(only("clips", { clipSpacing: "114.3 mm" }, "clip spacing", "law")).toMatchObject({
      decision: "KEEP",
      measured: "114.3 mm",
      limit: "at least 114.3 mm for size 0.75 in",
    });
    expect(only("clips", { clipSpacing: "114.2 mm" }, "clip spacing", "law").decision).toBe("REMOVE");
    expect(only("clips", { clipTorque: 130 }, "clip torque", "standard")).toMatchObject({
      measured: "130 lb-ft",
      limit: "at least 130 lb-ft for size 0.75 in",
    });
  });
  it("a multiple of the size has a least of its own: 6 rope diameters, 6 in at least", () => {
    const tail = (size: string, length: string): Finding =>
      only("wedge socket", { construction: "6 strand", size, tail: length }, "tail length");
    expect(tail('1/2"', "7 in")).toMatchObject({ decision: "KEEP", limit: "at least 6 in for size 0.5 in" });
    expect(tail('1 1/2"', "9 in")).toMatchObject({ decision: "KEEP", limit: "at least 9 in for size 1.5 in" });
    expect(tail('1 1/2"', "8.99 in").decision).toBe("REMOVE");
    expect(tail("20 mm", "152.4 mm")).toMatchObject({ decision: "KEEP", limit: "at least 152.4 mm for size 20 mm" });
    expect(tail("20 mm", "152.3 mm").decision).toBe("REMOVE");
  });
  it("of a size that is in no table is refused where it is required, and noted where it is not", () => {
    expect(only("clips", { size: "9/16", clips: 4 }, "clip count", "law")).toMatchObject({
      why: "not in table",
      decision: "NO VERDICT",
      criterion: "clips.clip-count.law",
      basis: "law",
      measured: "4",
      because: "size 0.5625 in is not in the federal clip table; a neighbouring row is never used",
    });
    const verdict = judged({ ...good("clips"), size: "3/8", clipSpacing: 3, turnBack: 20 });
    expect(verdict.findings.filter((f) => f.check === "turn-back")).toEqual([]);
    expect(verdict.notes).toContain("Turn-back 20 in was not judged: size 0.375 in is not in the California clip table");
  });
  it("under rule sets without a least is no verdict", () => {
    expect(only("clips", {}, "clip count", "alberta")).toMatchObject({
      why: "no limit",
      decision: "NO VERDICT",
      measured: "4",
      type: "choose a basis that has one",
    });
  });
  it("tells of both the size and the measure that are missing", () => {
    expect(all("clips", { size: "", clips: "" }, "clip count").map((f) => f.field)).toEqual(expect.arrayContaining(["size", "clips"]));
    expect(
      all("clips", { size: "", clips: "many" }, "clip count")
        .map((f) => f.why)
        .sort(),
    ).toEqual(["missing", "unreadable"]);
    expect(all("clips", { turnBack: "" }, "turn-back")).toEqual([]);
    expect(only("clips", { turnBack: "short" }, "turn-back")).toMatchObject({ why: "unreadable", field: "turnBack" });
  });
});

describe("a share of a size", () => {
  it("a bend of its span: 1/240 of 120 in is 0.5 in", () => {
    expect(only("lifting beam", { bend: 0.25 }, "permanent bend", "standard")).toMatchObject({
      decision: "KEEP",
      measured: "0.25 in",
      limit: "0.4167 % of span",
      comesOut: "above 0.5 in",
      share: 0.5,
    });
  });
  it("a groove over its rope: 10 % of 1/2 in over it is 0.55 in", () => {
    expect(only("sheave", { groove: 0.53 }, "groove width", "standard")).toMatchObject({
      limit: "10 % of the rope",
      comesOut: "above 0.55 in",
    });
    expect(all("sheave", { groove: "" }, "groove width")).toEqual([]);
  });
  it("tells of both sizes that are missing", () => {
    expect(all("lifting beam", { span: "", bend: "" }, "permanent bend").map((f) => f.field)).toEqual(
      expect.arrayContaining(["span", "bend"]),
    );
    expect(only("lifting beam", { span: "" }, "permanent bend")).toMatchObject({ why: "missing", field: "span" });
  });
});

describe("the growth of an opening", () => {
  it("in two units leaves the cap to the row's unit, else to millimetres: 6 in new is 152.4 mm", () => {
    // 1/4 in is 6.35 mm, 6 mm is less.
    const hook = { throatNew: "6 in", throatNow: "158.5 mm", sectionNew: "1 in", sectionNow: "1 in" };
    expect(only("hook", { ...hook, unit: "in" }, "throat opening", "standard")).toMatchObject({
      decision: "WATCH",
      limit: expect.stringContaining("1/4 in"),
    });
    expect(only("hook", { ...hook, unit: "mm" }, "throat opening", "standard")).toMatchObject({
      decision: "REMOVE",
      limit: expect.stringContaining("6 mm"),
    });
    expect(only("hook", { ...hook, unit: "" }, "throat opening", "standard")).toMatchObject({
      decision: "REMOVE",
      limit: expect.stringContaining("6 mm"),
    });
  });
  it("of an opening that closed is none: up to 2 % is the gauge, and is noted; more is asked about", () => {
    const verdict = judged({ ...good("hook"), throatNow: 1.98 });
    expect(verdict.findings.find((f) => f.check === "throat opening")).toMatchObject({ decision: "KEEP", share: 0 });
    expect(verdict.notes.join(" ")).toMatch(/throat opening/i);
    expect(only("hook", { throatNow: 1.9 }, "throat opening").decision).toBe("NO VERDICT");
  });
});

describe("the thickness of a link", () => {
  it("says what it counts from", () => {
    const from = (size: string, basis = "practice"): string | undefined =>
      only("chain sling", { size, sectionNow: size.includes("mm") ? "10 mm" : 0.375 }, "link thickness", basis).countsFrom;
    expect(from("3/8")).toBe("nominal 0.375 in (3/8), a new link 0.3937 in (10 mm)");
    expect(from("10 mm")).toBe("nominal 10 mm");
    expect(from("0.37 in")).toBe("nominal 0.37 in");
  });
  it("thicker than a new one uses nothing; more than 10 % thicker does not fit its size", () => {
    expect(all("chain sling", { sectionNow: 0.41 }, "link thickness").map((f) => f.share)).toEqual([0, 0]);
    expect(only("chain sling", { sectionNow: 0.5 }, "link thickness")).toMatchObject({
      why: "unreadable",
      decision: "NO VERDICT",
      because: expect.stringContaining("0.5 in does not fit size 0.375 in (3/8)"),
    });
  });
  it("of a size in no table in force is no verdict; a row that nobody read is passed over by name", () => {
    expect(only("chain sling", { size: "5/16", sectionNow: "0.3 in" }, "link thickness", "law")).toMatchObject({
      decision: "NO VERDICT",
      why: "not in table",
    });
    expect(only("chain sling", { size: "3/4", sectionNow: "0.7 in" }, "link thickness", "standard")).toMatchObject({
      why: "not in table",
      decision: "NO VERDICT",
      because: expect.stringContaining("unconfirmed"),
    });
    expect(only("chain sling", {}, "link thickness", "uk")).toMatchObject({
      why: "no limit",
      decision: "NO VERDICT",
      because: "the rules in force hold no limit for it",
    });
    expect(judged({ ...good("chain sling"), size: "3/4", sectionNow: "0.75 in" }).notes.join()).toContain("was passed over");
  });
  it("that is not required may be left out, but not its size where it is there", () => {
    expect(all("wire rope sling", { size: "1/2", ropeNow: "" }, "local abrasion")).toEqual([]);
    expect(only("wire rope sling", { unit: "in", size: "", ropeNow: 0.5 }, "local abrasion")).toMatchObject({
      why: "missing",
      field: "size",
    });
    expect(all("wire rope sling", { unit: "in", size: "thick", ropeNow: "" }, "local abrasion").map((f) => [f.why, f.field])).toEqual([
      ["unreadable", "size"],
      ["missing", "ropeNow"],
    ]);
  });
});

describe("a nick", () => {
  const nicked = (cells: CellRecord, basis?: string): readonly Finding[] => all("shackle", cells, "nick", basis);
  it("takes what grinding leaves of the section of its part: 5 % of 20 mm is 1 mm", () => {
    const [found] = nicked({ nickDepth: "0.5 mm", nickPart: "bow" }, "practice");
    expect(found).toMatchObject({ decision: "DRESS", measured: "0.5 mm deep at the bow, which leaves 19.5 mm", share: 0.5 });
    expect(nicked({ nickDepth: "30 mm", nickPart: "bow" }, "practice")[0]?.measured).toContain("which leaves nothing");
    expect(nicked({ nickDepth: "20 mm", nickPart: "bow" }, "practice")[0]?.measured).toContain("which leaves nothing");
  });
  it("adds to the wear that is there: 0.6 mm worn leave 0.4 mm to grind", () => {
    expect(nicked({ sectionNow: 19.4, nickDepth: "0.4 mm", nickPart: "bow" }, "practice").map((f) => f.decision)).toEqual(["DRESS"]);
    expect(nicked({ sectionNow: 19.4, nickDepth: "0.41 mm", nickPart: "bow" }, "practice").map((f) => f.decision)).toEqual(["REMOVE"]);
  });
  it("without a depth is asked for where a place is named, and is none where nothing is", () => {
    expect(nicked({ nickPart: "bow" })).toMatchObject([{ why: "missing", decision: "NO VERDICT", field: "nickDepth" }]);
    expect(nicked({ nickPart: "none" })).toEqual([]);
    expect(nicked({ nickPart: "" })).toEqual([]);
    expect(nicked({ nickDepth: "deep" })).toMatchObject([{ why: "unreadable", field: "nickDepth" }]);
  });
  it("of no depth is in order, unless the section there is thinner", () => {
    expect(nicked({ nickDepth: 0 })).toMatchObject([{ why: "seen", decision: "KEEP", label: "nicks" }]);
    expect(nicked({ nickDepth: "none", nickNew: 20, nickNow: 19.5, nickPart: "bow" }, "practice").map((f) => f.decision)).toEqual(["KEEP"]);
    expect(nicked({ nickDepth: "none", nickNew: 20, nickNow: 18.9, nickPart: "bow" }, "practice").map((f) => f.decision)).toEqual([
      "REMOVE",
    ]);
    expect(nicked({ nickNew: 20, nickNow: 19.5 })).toMatchObject([{ why: "missing", field: "nickDepth" }]);
    expect(nicked({ nickNew: 20, nickNow: 20 })).toEqual([]);
  });
  it("at no part of the gear is refused, at one without a section asks for it", () => {
    expect(nicked({ nickDepth: "0.5 mm", nickPart: "handle" })).toMatchObject([{ why: "unreadable", field: "nickPart" }]);
    const [found] = all("hook", { nickDepth: 0.05, nickPart: "tip" }, "nick");
    expect(found).toMatchObject({ why: "no section", decision: "EXAMINE", type: expect.stringContaining("fill") });
  });
  it("whose place is not named has the allowance of a highly stressed part, and says so", () => {
    const verdict = judged({ ...good("hook"), nickDepth: 0.07 });
    expect(
      verdict.findings
        .filter((f) => f.check === "nick")
        .map((f) => [f.criterion, f.decision])
        .sort(),
    ).toEqual([
      ["hook.nick.practice-high", "DRESS"],
      ["hook.nick.standard", "DRESS"],
    ]);
    expect(verdict.notes.join()).toContain("its place is not named");
    expect(judged({ ...good("hook"), nickDepth: 0.07, nickPart: "saddle" }).notes.join()).not.toContain("its place is not named");
  });
  it("under rule sets without an allowance is examined", () => {
    expect(nicked({ nickDepth: "0.5 mm", nickPart: "bow" }, "law")).toMatchObject([{ why: "no rule", decision: "EXAMINE" }]);
  });
});

describe("broken wires by rope category (ISO 4309:2010 Table 3, restated)", () => {
  const rope = (cells: CellRecord): CellRecord => ({ broken6d: 0, broken30d: 0, ropeCategory: "04", ...cells });
  const six = (cells: CellRecord): readonly Finding[] => all("running rope", rope(cells), "broken wires in 6 diameters", "iso");
  it.each([
    ["ordinary", "single", 4, 5],
    ["regular lay", "1", 4, 5],
    ["RHRL", "one layer", 4, 5],
    ["Lang", "single", 1, 2],
    ["lang's lay", "1", 1, 2],
    ["LHLL", "", 1, 2],
    ["", "", 1, 2],
    ["ordinary", "multi", 9, 10],
    ["ordinary", "3", 9, 10],
    ["Lang", "several layers", 9, 10],
    ["", "two", 9, 10],
  ])('lay "%s", layers "%s": %s stay, %s come out', (ropeLay, drumLayers, stay, out) => {
    expect(six({ ropeLay, drumLayers, broken6d: stay }).map((f) => f.decision)).not.toContain("REMOVE");
    expect(six({ ropeLay, drumLayers, broken6d: out }).map((f) => f.decision)).toEqual(["REMOVE"]);
  });
  it("says what was taken for granted, and the row that was met", () => {
    const notes = (cells: CellRecord): string => judged({ ...good("running rope"), ...rope(cells) }, "iso").notes.join(" | ");
    expect(notes({})).toMatch(/judged as Lang lay.*judged as a single layer/);
    expect(notes({ drumLayers: "multi" })).not.toContain("Lang lay");
    expect(notes({ ropeLay: "ordinary", drumLayers: "single" })).not.toMatch(/Lang lay|single layer/);
    expect(six({ ropeLay: "ordinary", drumLayers: "single", broken6d: 5 })[0]?.limit).toBe(
      "5 or more in category 04, ordinary lay on a single layer",
    );
    expect(six({ ropeLay: "Lang", drumLayers: "single" })[0]?.limit).toBe("2 or more in category 04, Lang lay on a single layer");
    expect(six({ drumLayers: "multi" })[0]?.limit).toBe("10 or more in category 04, multi-layer drum");
  });
  it.each(["4", "04", "RCN 04", "rcn4"])("category %s is row 04", (ropeCategory) => {
    expect(six({ ropeCategory, ropeLay: "ordinary", drumLayers: "single", broken6d: 5 }).map((f) => f.decision)).toEqual(["REMOVE"]);
  });
  it.each([
    ["ropeCategory", "14"],
    ["ropeCategory", "0"],
    ["ropeCategory", "A4"],
    ["ropeCategory", "04 or 05"],
    ["ropeLay", "left"],
    ["drumLayers", "10"],
  ] as const)("%s %s is refused", (field, text) => {
    expect(six({ ropeLay: "ordinary", drumLayers: "single", [field]: text })).toMatchObject([
      { why: "unreadable", decision: "NO VERDICT", field },
    ]);
  });
  it("tells of the count and the category that are missing", () => {
    expect(six({ ropeCategory: "" })).toMatchObject([{ why: "missing", field: "ropeCategory" }]);
    expect(six({ broken6d: "" })).toMatchObject([{ why: "missing", field: "broken6d" }]);
    expect(
      six({ broken6d: "few", ropeCategory: "" })
        .map((f) => f.why)
        .sort(),
    ).toEqual(["missing", "unreadable"]);
  });
});
