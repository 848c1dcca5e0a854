/** Readings that belong together: one half without the other is asked for, and never makes the verdict better. */
import { describe, expect, it } from "vitest";
import { field, type FieldId } from "../../src/engine/columns";
import { GEAR } from "../../src/engine/gear/index";
import { outOfUse } from "../../src/engine/decision";
import { wearVerdictOf } from "../../src/functions/functions";
import { good, judged, type CellRecord } from "./helpers";

const BLANKS = [null, undefined, "", " ", "-", "n/a", "not measured"] as const;

/** Every pair of an as-new and a measured size that a kind may have and does not need, with the kind's good item. */
const PAIRS = GEAR.flatMap((kind) =>
  kind.checks.flatMap(
    (
      check,
    ): readonly {
      readonly kind: string;
      readonly name: string;
      readonly original: FieldId;
      readonly measured: FieldId;
      readonly across: boolean;
    }[] => {
      const across =
        check.kind === "loss" && check.acrossOriginal && check.acrossMeasured
          ? [{ kind: kind.id, name: `${check.name} across`, original: check.acrossOriginal, measured: check.acrossMeasured, across: true }]
          : [];
      const own =
        (check.kind === "loss" || check.kind === "growth") && !check.required
          ? [{ kind: kind.id, name: check.name, original: check.original, measured: check.measured, across: false }]
          : [];
      return [...own, ...across];
    },
  ),
);

describe("wear in two directions", () => {
  // 20 to 18.9 mm and 30 to 29.5 mm: worn both ways, so 5 % of 20 mm is allowed and 1.1 mm is gone.
  const worn: CellRecord = { ...good("shackle"), sectionNow: 18.9, acrossNew: 30, acrossNow: 29.5 };
  it("is REMOVE by the limit for two directions", () => {
    expect(judged(worn).decision).toBe("REMOVE");
  });
  it("has no verdict while one half of the second direction is missing, and asks for that half", () => {
    for (const blank of BLANKS)
      for (const id of ["acrossNew", "acrossNow"] as const) {
        const verdict = judged({ ...worn, [id]: blank });
        expect(verdict.decision, `${id} ${String(blank)}`).toBe("NO VERDICT");
        expect(verdict.reason).toContain(`Bow wear across: nothing is recorded; fill "${field(id).heading}"`);
        expect(verdict.missing).toEqual([`bow wear across (${field(id).heading})`]);
      }
  });
  it("may be left out as a whole", () => {
    for (const one of BLANKS)
      for (const other of BLANKS) expect(judged({ ...worn, acrossNew: one, acrossNow: other }).decision).toBe("KEEP");
  });
  it("stays REMOVE where one direction alone is beyond its limit", () => {
    const verdict = judged({ ...worn, sectionNow: 17, acrossNow: "" });
    expect(verdict.decision).toBe("REMOVE");
    expect(verdict.reason).toContain('fill "Across now"');
  });
  it("is asked for by the function as well", () => {
    for (const blank of [null, "", "n/a"]) {
      expect(wearVerdictOf("shackle", "bow", "20 mm", "18.9 mm", "30 mm", blank)).toBe("NO VERDICT");
      expect(wearVerdictOf("shackle", "bow", "20 mm", "18.9 mm", blank, "29.5 mm")).toBe("NO VERDICT");
    }
    expect(wearVerdictOf("shackle", "bow", "20 mm", "18.9 mm", "30 mm", "29.5 mm")).toBe("REMOVE");
  });
});

describe("a pair of sizes that gear may have and does not need", () => {
  it("is found on many kinds", () => {
    expect(PAIRS.length).toBeGreaterThan(20);
  });
  for (const { kind, name, original, measured, across } of PAIRS)
    it(`${kind}, ${name}: one half is never silent`, () => {
      const item: CellRecord = { ...good(kind), [original]: null, [measured]: null };
      const decision = (cells: CellRecord): string => judged({ ...item, ...cells }).decision;
      const kept = good(kind)[original] === undefined;
      if (kept) expect(decision({})).toBe("KEEP");
      expect(decision({ [measured]: "19 mm" }), "measured alone").toBe("NO VERDICT");
      for (const text of ["worn", "see note", "?", "19 scrap", "19 cracked", "cracked"])
        expect(outOfUse(judged({ ...item, [original]: "20 mm", [measured]: text }).decision), text).toBe(true);
      // Catalogue sizes stand in many logs beside parts that nobody measured; across they would choose the looser limit.
      if (kept) expect(decision({ [original]: "20 mm" }), "as-new alone").toBe(across ? "NO VERDICT" : "KEEP");
    });
});

describe("a nick without its depth", () => {
  const asks = (cells: CellRecord): void => {
    const verdict = judged({ ...good("hook"), ...cells });
    expect(verdict.decision, JSON.stringify(cells)).toBe("NO VERDICT");
    expect(verdict.reason).toContain('Nick: nothing is recorded; fill "Nick depth"');
    expect(verdict.missing).toEqual(["nick (Nick depth)"]);
  };
  it("is asked for where its part is named", () => {
    for (const nickDepth of BLANKS) for (const nickPart of ["saddle", "tip", "left side", "see photo"]) asks({ nickDepth, nickPart });
  });
  it("is asked for where the section there is smaller than new, or cannot be compared", () => {
    for (const nickDepth of BLANKS) {
      asks({ nickDepth, nickNew: 1.5, nickNow: 1.4 });
      asks({ nickDepth, nickNow: 1.4 });
      asks({ nickDepth, nickNew: "?", nickNow: 1.4 });
      asks({ nickDepth, nickNew: 1.5, nickNow: "worn" });
    }
  });
  it("is not asked for where nothing tells of one", () => {
    for (const cells of [
      {},
      { nickPart: "n/a" },
      { nickPart: "none" },
      { nickPart: "-" },
      { nickPart: "none found" },
      { nickNew: 1.5 },
      { nickNew: 1.5, nickNow: 1.5 },
      { nickNew: 1.5, nickNow: 1.51 },
      { nickDepth: 0, nickPart: "saddle" },
    ])
      expect(judged({ ...good("hook"), ...cells }).decision, JSON.stringify(cells)).toBe("KEEP");
  });
  it("that was ground out to nothing is judged by what it left", () => {
    // 5 % of 1.5 in is 0.075 in.
    expect(judged({ ...good("hook"), nickDepth: 0, nickPart: "saddle", nickNew: 1.5, nickNow: 1.42 }).decision).toBe("REMOVE");
    expect(judged({ ...good("hook"), nickDepth: 0, nickPart: "saddle", nickNew: 1.5, nickNow: 1.43 }).decision).toBe("KEEP");
    expect(judged({ ...good("hook"), nickDepth: "none", nickNew: 1.5, nickNow: "1.2" }).decision).toBe("REMOVE");
    expect(judged({ ...good("hook"), nickDepth: 0, nickNow: 1.2 }).decision).toBe("NO VERDICT");
  });
  it("is not passed over on gear whose kind reads no nicks", () => {
    expect(judged({ ...good("web sling"), nickPart: "eye" }).decision).toBe("NO VERDICT");
    expect(judged({ ...good("web sling"), nickPart: "n/a" }).decision).toBe("KEEP");
  });
});
