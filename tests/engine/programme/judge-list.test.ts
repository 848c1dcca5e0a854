/** A round sheet's list gets the verdict that the same readings get in a row. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decisionOfList } from "../../../src/engine/ask/one-list";
import { field, type FieldId } from "../../../src/engine/columns";
import { GEAR } from "../../../src/engine/gear/index";
import { type ListLine } from "../../../src/engine/programme/judge-list";
import { lineNamed, linesOf } from "../../../src/engine/programme/lines";
import { type CellValue } from "../../../src/engine/reading/cell-value";
import { GOOD, judged } from "../helpers";

const decide = (gear: CellValue, lines: readonly ListLine[], basis: unknown = null): string =>
  decisionOfList(
    gear,
    lines.map((l) => [l.check]),
    lines.map((l) => [l.asNew]),
    lines.map((l) => [l.now, l.found]),
    basis,
  );
const line = (check: string, asNew: CellValue, now: CellValue, found: CellValue = ""): ListLine => ({ check, asNew, now, found });
const HOOK: readonly ListLine[] = [
  line("Throat opening", "2 in", "2.01"),
  line("Saddle section", "1 1/2 in", "37.9 mm"),
  line("Twist deg", "", 0),
  line("Cracks", "", "none"),
  line("Latch works", "", "yes"),
  line("Identification legible", "", "yes"),
];
const withNow = (at: number, now: CellValue): readonly ListLine[] => HOOK.map((l, i) => (i === at ? { ...l, now } : l));

describe("GEAR.JUDGELIST", () => {
  it("keeps a hook whose every line is in order", () => {
    expect(decide("shank hook", HOOK)).toBe("KEEP");
  });
  it("judges each line by the limits of the rules in force", () => {
    // EM 385-1-1 15.E.07: more than 5 %: 2.1 in is 5 %, 2.11 in is more.
    expect(decide("hook", withNow(0, "2.1"))).toBe("WATCH");
    expect(decide("hook", withNow(0, "2.11"))).toBe("REMOVE");
    expect(decide("hook", withNow(0, "2.11"), "law")).not.toBe("REMOVE");
    expect(decide("hook", withNow(3, "found"))).toBe("REMOVE");
  });
  it("counts a blank as missing, in every way in which a host hands it over, and a line that is left out as well", () => {
    for (const [at] of HOOK.entries()) {
      for (const blank of [null, undefined, ""]) expect(decide("hook", withNow(at, blank)), String(at)).toBe("NO VERDICT");
      expect(
        decide(
          "hook",
          HOOK.filter((_, i) => i !== at),
        ),
      ).toBe("NO VERDICT");
    }
    expect(decide("hook", withNow(0, 0))).toBe("NO VERDICT");
  });
  it("never passes over a line that it does not understand", () => {
    expect(decide("hook", [...HOOK, line("Bite width", "2 in", "1 in")])).toBe("NO VERDICT");
    expect(decide("hook", [...HOOK, line("", "", "3")])).toBe("NO VERDICT");
    expect(decide("hook", [...HOOK, line("", "", "")])).toBe("KEEP");
    expect(decide("hook", [...HOOK, line("Cracks", "", "none")])).toBe("NO VERDICT");
    expect(decide("grommet spanner", HOOK)).toBe("NO VERDICT");
    expect(decisionOfList("hook", [["Cracks"]], [[""], [""]], [["none"]], null)).toBe("NO VERDICT");
    expect(decide("hook", HOOK, "nobody's rules")).toBe("NO VERDICT");
  });
  it("hears what was seen beside a reading", () => {
    expect(decide("hook", [...HOOK.slice(0, 5), { ...HOOK[5]!, found: "crack at the shank" }])).toMatch(/^(REMOVE|EXAMINE)$/);
  });
  it("knows a tag, a gauge and a construction by their headings", () => {
    expect(decide("hook", [...HOOK, line("Tagged out", "2026-01-05", "")])).toBe("REMOVE");
    // A tape that reads to 1/16 in cannot show 5 % of 2 in.
    expect(decide("hook", [...withNow(0, "2.09"), line("Gauge reads to", "", "1/16 in")])).toBe("EXAMINE");
  });
  it("takes numbers before a label and a unit behind it", () => {
    const numbered = HOOK.map((l, at) => ({ ...l, check: `${String(at + 1)} ${l.check as string}` }));
    expect(decide("hook", numbered)).toBe("KEEP");
    const bare = [line("Throat opening (mm)", 50, 50.2), line("Saddle section, mm", 38, 37.9), ...HOOK.slice(2)];
    expect(decide("hook", bare)).toBe("KEEP");
    expect(decide("hook", [line("Throat opening", 50, 50.2), ...bare.slice(1)])).toBe("NO VERDICT");
  });
});

describe("the lines of every kind", () => {
  it("have labels by which they are found again, each column once", () => {
    for (const kind of GEAR) {
      const lines = linesOf(kind);
      expect(new Set(lines.map((l) => l.label.toLowerCase())).size, kind.id).toBe(lines.length);
      for (const l of lines) expect(lineNamed(kind, l.label), `${kind.id}: ${l.label}`).toMatchObject({ now: l.now, asNew: l.asNew });
      for (const check of kind.checks.filter((c) => c.required)) expect(lines.map((l) => l.check.name)).toContain(check.name);
    }
  });
  it("name the unit of a torque, so that a bare figure is read as the register reads it", () => {
    expect(linesOf(GEAR.find(({ id }) => id === "clips")!).map((l) => l.label)).toContain("Clip torque lb-ft");
  });
  it("give the row's verdict for the good item of each kind, and for it with one reading gone or turned bad", () => {
    const kinds = fc.constantFrom(...GEAR);
    fc.assert(
      fc.property(kinds, fc.nat(), fc.constantFrom("", "found", "no", "0.1 in", "9 in", "50"), (kind, pick, bad) => {
        const item = new Map<FieldId, CellValue>(Object.entries(GOOD[kind.id] ?? {}) as [FieldId, CellValue][]);
        const lines = linesOf(kind);
        const changed = lines[pick % lines.length]!.now;
        if (item.has(changed) || bad !== "") item.set(changed, bad);
        const ids = [...item.keys()];
        const row = judged(Object.fromEntries(item));
        const named = new Set(lines.flatMap((l) => [l.now, l.asNew]));
        const list = [
          ...lines.map((l) => line(l.label, l.asNew === null ? "" : item.get(l.asNew), item.get(l.now))),
          ...ids.filter((id) => id !== "gear" && !named.has(id)).map((id) => line(field(id).heading, item.get(id), "")),
        ];
        expect(`${kind.id} ${decide(item.get("gear"), list)}`).toBe(`${kind.id} ${row.decision}`);
      }),
      { numRuns: 400 },
    );
  });
});
