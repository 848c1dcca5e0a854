/** Remarks: nothing against the item only where every word of them is known to be harmless. */
import { describe, expect, it } from "vitest";
import { judgeRowOf } from "../../src/engine/ask/one-row";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { readRemark } from "../../src/engine/reading/remark";
import * as AGAINST from "../../src/engine/reading/words/against";
import * as DAMAGE from "../../src/engine/reading/words/damage";
import { type Group } from "../../src/engine/reading/words/group";
import * as HARMLESS from "../../src/engine/reading/words/harmless";
import * as PLAIN from "../../src/engine/reading/words/plain";
import { AGAINST_USE, HARMLESS_REMARKS } from "../fixtures/remarks";

const SHACKLE: Record<string, CellValue> = {
  Id: "S-1",
  Gear: "shackle",
  "Section as-new (mm)": 20,
  "Section now (mm)": 19.8,
  "Pin as-new (mm)": 22,
  "Pin now (mm)": 21.9,
  "Pin fully seated": "yes",
  "Bent or stretched": "none",
  Cracks: "none",
  "Identification legible": "yes",
};
const judged = (row: Record<string, CellValue>) => judgeRowOf([Object.keys(row)], [Object.values(row)], "");
const says = (remark: string): string => readRemark(remark)?.how ?? "nothing against";

describe("remarks of yards", () => {
  for (const remark of AGAINST_USE)
    it(`"${remark}" keeps nothing in service`, () => {
      expect(says(remark)).not.toBe("nothing against");
    });
  for (const remark of HARMLESS_REMARKS)
    it(`"${remark}" says nothing against the item`, () => {
      expect(says(remark)).toBe("nothing against");
    });
});

describe("a remark", () => {
  const item = (remark: string) => judged({ ...SHACKLE, Remarks: remark });
  it("of damage is EXAMINE, and names the word", () => {
    expect(item("bent at the ear")).toMatchObject({ decision: "EXAMINE" });
    expect(item("bent at the ear").reason).toContain(
      '"bent at the ear" in "Remarks" speaks against its use ("bent"); read the remark and record it in its column, then reword it.',
    );
  });
  it("with a word that is not known is asked about, and names that word", () => {
    expect(item("ears plonked")).toMatchObject({ decision: "NO VERDICT" });
    expect(item("ears plonked").reason).toContain(
      '"ears plonked" in "Remarks" may speak against its use: "plonked" is not known to be harmless; ' +
        "read the remark and record it in its column, then reword it, or set the column aside.",
    );
  });
  it("is not read in a column that was set aside", () => {
    expect(judged({ ...SHACKLE, "Not judged: Remarks": "bent at the ear" }).decision).toBe("KEEP");
  });
  it.each([
    ["no cracks", "nothing against"],
    ["no cracks or wear", "nothing against"],
    ["no cracks and no wear", "nothing against"],
    ["no visible or new cracks at the eye", "nothing against"],
    ["cracks: none", "nothing against"],
    ["checked for cracks, none found", "nothing against"],
    ["checked for cracks", "against"],
    ["not free of cracks", "not known"],
    ["no latch", "not known"],
    ["latch: none", "not known"],
    ["not good", "not known"],
    ["no cracks but bent", "against"],
    ["not from this set, cracked", "against"],
    ["pin not from this set cracked", "against"],
  ])("a denial takes back the damage behind it and nothing else: %s", (remark, how) => {
    expect(says(remark)).toBe(how);
  });
  it.each(["!!!", "#REF!", "✗", "x", "?", "..!", "*"])("of signs is asked about: %s", (remark) => {
    expect(says(remark)).toBe("not known");
  });
  it("of any length is read in time", () => {
    for (const word of ["cracked", "no cracks", "and", "no", "check", "and no", "moved"]) says(`${word} `.repeat(4000));
  });
  it.each([
    ["bent pin replaced", "nothing against"],
    ["replaced the bent pin", "nothing against"],
    ["old latch scrapped, new one fitted", "nothing against"],
    ["was rejected in 2020, repaired and released", "nothing against"],
    ["replaced by a bent pin", "against"],
    ["latch replaced and pin cracked", "against"],
    ["pin cracked latch replaced", "against"],
    ["latch replaced pin cracked", "against"],
    ["to be repaired", "against"],
    ["bent, not repaired", "against"],
    ["bent pin will be replaced", "against"],
  ])("what was put right is over, what is still to be done is not: %s", (remark, how) => {
    expect(says(remark)).toBe(how);
  });
  it.each([
    ["checked by R. Tern", "nothing against"],
    ["moved to Harbour Hall", "nothing against"],
    ["Hook Mouth Splayed", "not known"],
    ["SPLAYED", "not known"],
    ["Splayed", "not known"],
    ["moved on 3 March, PO-4471", "nothing against"],
    ["stands 6 mm", "not known"],
    ["stands 5%", "not known"],
    ["25 mm shackle", "nothing against"],
  ])("names, days and codes pass, a capital letter or a figure alone does not: %s", (remark, how) => {
    expect(says(remark)).toBe(how);
  });
});

const GROUPS: readonly (readonly [string, Group])[] = Object.entries({ ...AGAINST, ...DAMAGE, ...PLAIN, ...HARMLESS }).flatMap(
  ([name, group]): [string, Group][] => {
    const one = group as Group | readonly Group[] | Readonly<Record<string, Group>>;
    if ("words" in one) return [[name, one as Group]];
    return Object.entries(one).map(([at, inner]) => [`${name} ${at}`, inner]);
  },
);
const words = (...groups: readonly Group[]): readonly string[] => groups.flatMap((group) => group.words);

describe("the words that remarks are read by", () => {
  it("are many, each group sorted, with a sentence why", () => {
    expect(words(...HARMLESS.HARMLESS, HARMLESS.PARTS, HARMLESS.NAMED_BY).length).toBeGreaterThan(900);
    for (const [name, { why, words: list }] of GROUPS) {
      expect([name, why.length > 10, list.length > 0]).toEqual([name, true, true]);
      expect([name, ...list]).toEqual([name, ...[...new Set(list)].sort()]);
      expect(list.filter((word) => word !== word.toLowerCase() || word !== word.trim())).toEqual([]);
    }
  });
  const harmful = words(DAMAGE.HARM, DAMAGE.HARMED, DAMAGE.GONE, AGAINST.AGAINST, AGAINST.NEVER);
  const harmless = words(...HARMLESS.HARMLESS, HARMLESS.PARTS, HARMLESS.NAMED_BY, PLAIN.WELL);
  it("say one thing: none is harmless and harmful", () => {
    expect(harmless.filter((word) => harmful.includes(word))).toEqual([]);
  });
  it("of damage and against use each speak against an item, alone and beside a part", () => {
    for (const word of harmful) expect([word, says(word), says(`shank ${word}`)]).toEqual([word, "against", "against"]);
  });
  it("of damage are each taken back by a denial", () => {
    for (const word of words(DAMAGE.HARM)) expect([word, says(`no ${word}`)]).toEqual([word, "nothing against"]);
    for (const word of words(DAMAGE.HARMED)) expect([word, says(`not ${word}`)]).toEqual([word, "nothing against"]);
  });
  it("that are harmless are each passed over, and never take damage back", () => {
    for (const word of harmless) expect([word, says(word), says(`${word}, bent`)]).toEqual([word, "nothing against", "against"]);
  });
});
