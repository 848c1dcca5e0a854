/** The few words that stand for a verdict where a line has to do: one row for each reason, worked out by hand from the facts. */
import { describe, expect, it } from "vitest";
import { finding, type Finding, type Why } from "../../src/engine/check/finding";
import { sentenceOf, shortOf, shortReason } from "../../src/engine/check/sentences";
import type { Decision } from "../../src/engine/decision";

const THROAT = { label: "throat opening", measured: "2.125 in", comesOut: "above 2.1 in", limit: "5 % of as-new" };
const made = (why: Why, more: Partial<Finding> = {}, decision: Decision = "NO VERDICT"): Finding =>
  finding(why, decision, { name: "throat opening", part: "throat" }, more);
const LONG = "a word that a clerk typed and that goes on and on beyond the line";
/** 39 of its characters, the blank at their end taken off, and the sign that more follows. */
const CUT = "a word that a clerk typed and that goes…";

const TABLE: readonly (readonly [says: string, of: Finding])[] = [
  ["Throat 2.125 in, out above 2.1 in", made("limit", { ...THROAT, beyond: "REMOVE" }, "REMOVE")],
  ["Throat 2.125 in, examined above 2.1 in", made("limit", { ...THROAT, beyond: "EXAMINE" }, "EXAMINE")],
  ["Throat 2.125 in, watched above 2.1 in", made("limit", { ...THROAT, beyond: "WATCH" }, "WATCH")],
  [
    "Saddle 36 mm, out at 36 mm or less",
    made("limit", { label: "saddle section", measured: "36 mm", comesOut: "at 36 mm or less" }, "REMOVE"),
  ],
  ["Nick 0.02 in deep: grind it out", made("limit", { label: "nick", measured: "0.02 in deep", beyond: "REMOVE" }, "DRESS")],
  [
    "Clearance 0.1563 in, examined above 0.125 in",
    made("limit", { label: "shoulder clearance", measured: "0.1563 in", comesOut: "above 0.125 in", beyond: "EXAMINE" }, "EXAMINE"),
  ],
  [
    "Link 9.1 mm, out at 9 mm or less",
    made("limit", { label: "link thickness", measured: "9.1 mm", comesOut: "at 9 mm or less", beyond: "REMOVE" }, "WATCH"),
  ],
  // A bare count is set off from its label.
  [
    "Broken wires in a lay: 11, out at 10 or more",
    made("limit", { label: "broken wires in a lay", measured: "11", comesOut: "at 10 or more", beyond: "REMOVE" }, "REMOVE"),
  ],
  [
    "Twist 11 degrees, out above 10 degrees",
    made("limit", { label: "twist", measured: "11 degrees", comesOut: "above 10 degrees" }, "REMOVE"),
  ],
  [
    "Throat 2.125 in: gauge too coarse to tell",
    made("gauge", { ...THROAT, beyond: "REMOVE", gauge: { reads: "0.1 in", settledBy: "0.02 in" } }, "EXAMINE"),
  ],
  ["Throat 2.125 in: no limit in force", made("no limit", { measured: "2.125 in" })],
  ["Throat: no limit in force", made("no limit")],
  ["Throat 2.125 in: size not in the table", made("not in table", { measured: "2.125 in" })],
  ["Throat 2 in: no change", made("no change", { measured: "2 in" }, "KEEP")],
  ["Cracks: hairline at saddle", made("seen", { label: "cracks", measured: "hairline at saddle" }, "REMOVE")],
  [`Cracks: ${CUT}`, made("no rule", { label: "cracks", measured: LONG }, "EXAMINE")],
  ["Throat: not recorded", made("missing", { heading: "Throat now", field: "throatNow" })],
  [`Throat: "worn" cannot be used`, made("unreadable", { typed: "worn", because: "it is no size" })],
  [`Throat: "${CUT}" cannot be used`, made("unreadable", { typed: LONG })],
  [`Construction: "18x7" does not fit`, made("contradiction", { label: "construction", typed: "18x7" })],
  ["Throat 2.125 in: construction not recorded", made("variant", { measured: "2.125 in", field: "construction" })],
  ["Throat 2.125 in: make not recorded", made("variant", { measured: "2.125 in" })],
  ["Nick 0.02 in: section there not recorded", made("no section", { label: "nick", measured: "0.02 in" }, "EXAMINE")],
  ["Broken wires at the end: 3", made("not read", { label: "broken wires at the end", measured: "3" }, "EXAMINE")],
  [`"Wobble factor" not understood: 7`, made("not understood", { heading: "Wobble factor", typed: "7" })],
  ["Tagged out on 2026-01-05", made("tag", { label: "Tagged out on 2026-01-05" }, "REMOVE")],
  ["Assembly overloaded on 2026-03-31: look at it", made("overload", { typed: "2026-03-31" }, "EXAMINE")],
  ["Assembly overloaded: look at it", made("overload", {}, "EXAMINE")],
  ["Inspected 2031-01-01: after the day of judging", made("date", { typed: "2031-01-01" })],
  ["The log says: do not use", made("record", { typed: "do not use" }, "REMOVE")],
  ["No rule set in force for a beam clamp", made("rules", { label: "beam clamp" })],
  ["House limits cannot be applied", made("house limits", { because: "House limits, row 4: it names no source." })],
  ["As-new sizes not given", made("as-new size", { because: "the table needs the rated load" })],
  [`Gear: "anvil" not known`, made("gear", { typed: "anvil" })],
  ["Gear: not recorded", made("gear", { typed: "" })],
];

describe("the short reason", () => {
  it.each(TABLE)("%s", (says, of) => {
    expect(shortOf(of)).toBe(says);
    expect(shortReason(of.decision === "KEEP" ? "WATCH" : of.decision, of)).toBe(says);
  });
  it("stands in the table for every reason that there is", () => {
    const known: Readonly<Record<Why, true>> = {
      limit: true, gauge: true, "no limit": true, "not in table": true, "no change": true, seen: true, "no rule": true, missing: true,
      unreadable: true, contradiction: true, variant: true, "no section": true, "not read": true, "not understood": true, tag: true,
      overload: true, date: true, record: true, rules: true, "house limits": true, "as-new size": true, gear: true,
    }; // prettier-ignore
    expect(new Set(TABLE.map(([, { why }]) => why))).toEqual(new Set(Object.keys(known)));
  });
  it("of an item that is kept names the reading nearest to its limit, or says that all is in order", () => {
    expect(shortReason("KEEP", made("limit", { ...THROAT, measured: "2.05 in", share: 0.5, beyond: "REMOVE" }, "KEEP"))).toBe(
      "Throat 2.05 in, out above 2.1 in",
    );
    expect(shortReason("KEEP", made("seen", { label: "cracks", measured: "none" }, "KEEP"))).toBe("In order");
    expect(shortReason("NO VERDICT", null)).toBe("Nothing could be read");
  });
  it("tells a bare count from a size that ends in its unit, in the sentence as well", () => {
    const count = made(
      "limit",
      { label: "broken wires", measured: "11", limit: "10 or more", comesOut: "at 10 or more", beyond: "REMOVE" },
      "REMOVE",
    );
    expect(sentenceOf(count)).toMatch(/^Broken wires: 11 is beyond the limit: it comes out at 10 or more \[/);
    expect(sentenceOf({ ...count, measured: "0.5 in (1/2)" })).toMatch(/^Broken wires 0\.5 in \(1\/2\) is beyond/);
    expect(sentenceOf({ ...count, measured: "2.5" })).toMatch(/^Broken wires 2\.5 is beyond/);
  });
});
