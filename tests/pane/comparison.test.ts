import { describe, expect, it } from "vitest";
import { compareBases, type Compared, type Comparison } from "../../src/engine/report/compare-rules";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type Report } from "../../src/engine/report/model";
import { reportOn } from "../../src/engine/report/report";
import { answers, saysNothing, silences } from "../../src/taskpane/card/rule-set-answers";
import { TODAY } from "./sample";

const log = (headings: readonly string[], row: readonly CellValue[]): Report =>
  reportOn([headings, row], { basis: ["standard", "practice"], asOf: TODAY })!;
const compared = (headings: readonly string[], row: readonly CellValue[]): Comparison => {
  const { items, headings: read } = log(headings, row);
  return compareBases(items[0]!, read, TODAY);
};
const silent = (sets: readonly Compared[]): string[] => sets.filter((one) => one.silent).map((one) => one.basis);

const SHACKLE = [
  "Id",
  "Gear",
  "Unit",
  "Section as-new",
  "Section now",
  "Pin as-new",
  "Pin now",
  "Pin seated",
  "Bent or stretched",
  "Cracks",
  "Identification legible",
] as const;

describe("an item under each rule set alone", () => {
  it("sets that hold no limit for a worn part are silent, with no advice to choose another basis; the others stay", () => {
    const { sets, always } = compared(SHACKLE, ["S-1", "shackle", "in", 1, 0.97, 1, 0.99, "yes", "none", "none", "yes"]);
    expect(silent(sets)).toEqual(expect.arrayContaining(["law", "germany"]));
    expect(silent(sets)).not.toEqual(expect.arrayContaining(["standard"]));
    for (const one of sets.filter((set) => !set.silent)) expect(one.sentence).not.toMatch(/choose a basis/);
    expect(sets.find((one) => one.basis === "standard")?.decision).toBe("KEEP");
    expect(always).toEqual([]);
  });

  it("a missing reading is the item's own want: said once for all sets, of which none is silent", () => {
    const { sets, always } = compared(SHACKLE, ["S-1", "shackle", "in", 1, 0.97, 1, null, "yes", "none", "none", "yes"]);
    expect(silent(sets)).toEqual([]);
    expect(always).toEqual([expect.objectContaining({ why: "missing", check: "pin wear", field: "pinNow" })]);
    expect(sets.find((one) => one.basis === "law")).toMatchObject({ silent: false, decision: "NO VERDICT", sentence: "" });
  });

  it("a fault that takes the part out is never hidden", () => {
    const { sets, always } = compared(["Id", "Gear", "Tagged out"], ["S-1", "shackle", "yes"]);
    expect(silent(sets)).toEqual([]);
    for (const one of sets) expect(one.decision).toBe("REMOVE");
    expect(always[0]).toMatchObject({ decision: "REMOVE", why: "tag" });
  });

  it("an overload of the assembly, which only its other rows tell, counts in every set and is said once", () => {
    const headings = [...SHACKLE, "Assembly", "Inspected"];
    const shackle = (id: string, bent: string): CellValue[] => [
      id,
      "shackle",
      "in",
      1,
      0.97,
      1,
      0.99,
      "yes",
      bent,
      "none",
      "yes",
      "A-1",
      { serial: TODAY - 10 },
    ];
    const { items, headings: read } = reportOn([headings, shackle("S-1", "none"), shackle("S-2", "stretched")], {
      basis: ["standard", "practice"],
      asOf: TODAY,
    })!;
    expect(items[0]!.verdict.decision).toBe("EXAMINE");
    const { always, sets } = compareBases(items[0]!, read, TODAY);
    expect(always).toEqual([expect.objectContaining({ decision: "EXAMINE", why: "overload" })]);
    for (const one of sets) expect(one.decision).toBe("EXAMINE");
    expect(answers(sets)).toEqual([expect.objectContaining({ decision: "EXAMINE", sentence: "" })]);
  });

  it("a date later than the day of judging counts in every set", () => {
    const { always, sets } = compared(
      [...SHACKLE, "Inspected"],
      ["S-1", "shackle", "in", 1, 0.97, 1, 0.99, "yes", "none", "none", "yes", { serial: TODAY + 5 }],
    );
    expect(always).toEqual([expect.objectContaining({ decision: "NO VERDICT", why: "date" })]);
    for (const one of sets) expect(one.decision).toBe("NO VERDICT");
  });

  it("a set whose own limits are met and that lacks one for another check says how far it goes", () => {
    const { sets } = compared(
      [
        "Id",
        "Gear",
        "Unit",
        "Throat as-new",
        "Throat now",
        "Section as-new",
        "Section now",
        "Latch",
        "Bent or stretched",
        "Cracks",
        "Twist deg",
        "Identification legible",
      ],
      ["H-1", "hook", "in", 2, 2.02, 1, 0.97, "ok", "none", "none", 3, "yes"],
    );
    const practice = sets.find((one) => one.basis === "practice");
    const silence = silences(sets, "hook");
    expect(practice).toMatchObject({ silent: true, asFar: "KEEP" });
    expect(silence.filter((line) => /\bPractice\b/.test(line))).toEqual([
      expect.stringMatching(/^Practice: in order, but it has no limit for throat opening\.$/),
    ]);
  });
});

describe("equal answers", () => {
  const set = (basis: Compared["basis"], more: Partial<Compared>): Compared => ({
    basis,
    decision: "REMOVE",
    silent: false,
    asFar: null,
    unlimited: [],
    sentence: "Cracked.",
    ...more,
  });

  it("stand together, each sentence once", () => {
    const sets = [
      set("law", {}),
      set("standard", {}),
      set("practice", { decision: "KEEP", sentence: "One." }),
      set("ships", {}),
      set("iso", { decision: "KEEP", sentence: "Two." }),
      set("germany", { silent: true, decision: "NO VERDICT", sentence: "" }),
    ];
    expect(answers(sets)).toEqual([
      { names: "Law, Standard, Ships", decision: "REMOVE", sentence: "Cracked." },
      { names: "Practice, ISO", decision: "KEEP", sentence: "" },
    ]);
  });

  it("of silent sets as well", () => {
    const partly = { silent: true, decision: "NO VERDICT", sentence: "", unlimited: ["deformation", "twist"] } as const;
    expect(
      silences(
        [
          set("practice", { ...partly, asFar: "KEEP" }),
          set("strict", { ...partly, asFar: "KEEP" }),
          set("law", { ...partly, asFar: "WATCH" }),
          set("iso", { ...partly, unlimited: ["rules"] }),
        ],
        "hook",
      ),
    ).toEqual([
      "Practice, Strict: in order, but it has no limit for deformation and twist.",
      "Law: WATCH, but it has no limit for deformation and twist.",
      "ISO says nothing, or not enough, about a hook.",
    ]);
  });
});

describe("the line about silent sets", () => {
  it.each([
    [["law"], "shackle", "Law says nothing, or not enough, about a shackle."],
    [["law", "germany", "ships"], "eyebolt", "Law, Germany and Ships say nothing, or not enough, about an eyebolt."],
    [["law", "ships"], "clips", "Law and Ships say nothing, or not enough, about clips."],
  ] as const)("%j of %s", (sets, kind, line) => {
    expect(saysNothing(sets, kind)).toBe(line);
  });
});
