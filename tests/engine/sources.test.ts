import { describe, expect, it } from "vitest";
import { BASIS_IDS } from "../../src/engine/rules/rule-sets";
import { FIELDS } from "../../src/engine/columns";
import { INTERVAL_CRITERIA } from "../../src/engine/due/interval-criteria";
import { GEAR } from "../../src/engine/gear/index";
import { fieldsOf } from "../../src/engine/gear/columns-of";
import { ABOUT_RULES } from "../../src/engine/pages/about-rules";
import { cite, SOURCES, type SourceKey } from "../../src/engine/rules/documents";
import { limitInWords } from "../../src/engine/rules/limit-in-words";
import { listSources } from "../../src/engine/pages/figures";
import { DECISIONS } from "../../src/engine/decision";
import { good, judged } from "./helpers";

const ALL = GEAR.flatMap((kind) => kind.criteria.map((criterion) => ({ kind, criterion })));

describe("every criterion", () => {
  for (const { kind, criterion } of ALL)
    it(`${criterion.id} has a document, a checked day, a check of its kind`, () => {
      expect(Object.keys(SOURCES)).toContain(criterion.source.document);
      expect(cite(criterion.source)).toMatch(/\w/);
      expect(criterion.checked).toMatch(/^20\d\d-\d\d-\d\d$/);
      expect(BASIS_IDS).toContain(criterion.basis);
      expect(DECISIONS).toContain(criterion.beyond);
      expect(kind.checks.map((c) => c.name)).toContain(criterion.check);
      expect(criterion.id).toBe(criterion.id.toLowerCase());
      expect(criterion.id.startsWith(`${kind.id.replaceAll(" ", "-")}.`)).toBe(true);
      expect(criterion.id).toContain(criterion.basis);
      expect(limitInWords(criterion.limit)).toMatch(/\w/);
    });

  it("has an id of its own", () => {
    const ids = ALL.map(({ criterion }) => criterion.id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  });
  it("of practice says that it is practice, and no other does", () => {
    for (const { criterion } of ALL) {
      const practice = criterion.basis === "practice" || criterion.basis === "strict";
      expect([criterion.id, criterion.status === "practice", criterion.source.document === "practice"]).toEqual([
        criterion.id,
        practice,
        practice,
      ]);
    }
  });
  it("read on a page that restates its document says so", () => {
    // Status words of the reference: these were read only as restated.
    const restated = ["B30.9", "B30.9 T3", "CFR 1910.179"];
    for (const { criterion } of ALL)
      if (restated.includes(criterion.source.document)) expect([criterion.id, criterion.status]).toEqual([criterion.id, "restated"]);
  });
  it("says that it was read only where a document of that name was read", () => {
    // Documents of the reference that nobody saw themselves.
    const secondHand = ["B30.5", "B30.29", "WRTB", "Rope handbook", "DE discard"];
    for (const { criterion } of ALL)
      if (secondHand.includes(criterion.source.document)) expect([criterion.id, criterion.status]).toEqual([criterion.id, "restated"]);
    for (const { criterion } of ALL)
      if (criterion.source.clause.includes("applied to")) expect([criterion.id, criterion.status]).toEqual([criterion.id, "restated"]);
  });
  it("of federal law cites federal law", () => {
    for (const { criterion } of ALL) if (criterion.basis === "law") expect(criterion.source.document, criterion.id).toMatch(/^CFR/);
  });
  it("of the standard cites no federal law", () => {
    for (const { criterion } of ALL)
      if (criterion.basis === "standard") expect(criterion.source.document, criterion.id).not.toMatch(/^CFR/);
  });
  it("has a figure in words that can be read", () => {
    for (const { criterion } of ALL) expect(limitInWords(criterion.limit), criterion.id).not.toMatch(/NaN|undefined|\[object/);
    expect(limitInWords({ word: "from", share: "1/3" })).toBe("33.33 % or more");
    expect(limitInWords({ word: "above", share: "1/240" })).toBe("more than 0.4167 %");
    expect(limitInWords({ word: "from", area: "0.10" })).toBe("10 % of the area or more");
  });
  it("stands in the list of sources, with its figure", () => {
    expect(
      listSources()
        .map((line) => line.criterion)
        .sort(),
    ).toEqual([...ALL.map(({ criterion }) => criterion.id), ...INTERVAL_CRITERIA.map((c) => c.id)].sort());
    for (const line of listSources())
      for (const text of [line.document, line.gear, line.check, line.figure, line.status]) expect(text).toMatch(/\w/);
  });
  it("that nobody read is not in force", () => {
    const unread = ALL.filter(({ criterion }) => criterion.status === "unconfirmed").map(({ criterion }) => criterion.id);
    for (const kind of GEAR) {
      const verdict = judged(good(kind.id), BASIS_IDS.join(","));
      expect(verdict.findings.filter((f) => f.criterion !== null && unread.includes(f.criterion))).toEqual([]);
    }
  });
});

describe("an unconfirmed criterion", () => {
  it("decides nothing when it is put into a kind", async () => {
    const { evaluate } = await import("../../src/engine/check/run-check");
    const hook = GEAR[0];
    const check = hook?.checks.find((c) => c.name === "twist");
    if (!hook || !check) throw new Error("The hook is gone");
    const unread = {
      ...hook,
      criteria: hook.criteria.filter((c) => c.id === "hook.twist.practice").map((c) => ({ ...c, status: "unconfirmed" as const })),
    };
    const cells = { value: () => 45, unit: () => null, heading: (id: string) => id };
    const { findings } = evaluate(check, cells, { kind: unread, bases: new Set(["practice"]), gauge: null, variant: null });
    expect(findings.map((f) => [f.criterion, f.decision])).toEqual([[null, "NO VERDICT"]]);
  });
});

describe("every gear kind", () => {
  for (const kind of GEAR) {
    it(`${kind.id} reads fields that exist and names parts that exist`, () => {
      for (const check of kind.checks) for (const id of fieldsOf(check)) expect(Object.keys(FIELDS), check.name).toContain(id);
      for (const part of Object.values(kind.partNames ?? {})) expect(Object.keys(kind.parts)).toContain(part);
      const names = kind.checks.map((c) => c.name);
      expect(new Set(names).size).toBe(names.length);
    });
    it(`${kind.id} has a criterion for every check that it needs`, () => {
      for (const check of kind.checks.filter((c) => c.required))
        expect(
          kind.criteria.some((c) => c.check === check.name),
          check.name,
        ).toBe(true);
    });
  }
});

describe("the documents", () => {
  it("each has a name and says what it is; all but practice and the house have an edition", () => {
    for (const [key, source] of Object.entries(SOURCES)) {
      expect(source.name, key).toMatch(/\w/);
      expect(ABOUT_RULES[key as SourceKey], key).toMatch(/\w/);
      if (key !== "practice" && key !== "house") expect(source.edition, key).toMatch(/\w/);
    }
  });
  it("a document that is not in the list cannot be cited", () => {
    expect(() => cite({ document: "no such document", clause: "" })).toThrow("no such document");
  });
});
