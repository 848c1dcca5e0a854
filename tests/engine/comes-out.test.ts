/** Where a part comes out, in words and as sizes, by the strictest criterion in force; worked by hand. */
import { describe, expect, it } from "vitest";
import { comesOutOf, comesOutWords } from "../../src/engine/check/comes-out-at";
import { type Situation } from "../../src/engine/check/in-force";
import { type FieldId } from "../../src/engine/columns";
import { type Check } from "../../src/engine/gear/kind";
import { type Cells } from "../../src/engine/log/cells";
import { exact } from "../../src/engine/numbers/exact";
import { type Unit } from "../../src/engine/numbers/lengths";
import { type CellValue } from "../../src/engine/reading/cell-value";
import { type BasisId, inForce } from "../../src/engine/rules/rule-sets";
import { kindNamed } from "./helpers";

const situation = (kind: string, bases: readonly BasisId[] = ["standard", "practice"], variant: string | null = null): Situation => ({
  kind: kindNamed(kind),
  bases: inForce(bases),
  gauge: null,
  variant,
});
function check(kind: string, name: string): Check {
  const found = kindNamed(kind).checks.find((c) => c.name === name);
  if (!found) throw new Error(`${kind} has no check "${name}"`);
  return found;
}
const cells = (values: Partial<Record<FieldId, CellValue>>, unit: Unit | null = "in", part?: string): Cells => ({
  value: (id) => values[id],
  unit: () => unit,
  heading: (id) => id,
  ...(part === undefined ? {} : { part }),
});
const words = (kind: string, name: string, row: Cells, at: Situation = situation(kind), twoWays = false): string | null =>
  comesOutWords(check(kind, name), row, at, twoWays);

describe("where a part comes out, in words", () => {
  it("an opening above its strictest limit: 5 % of 2 in, 15 % under law, anything under strict", () => {
    const row = cells({ throatNew: 2, throatNow: 2 });
    expect(words("hook", "throat opening", row)).toBe("throat opening above 2.1 in");
    expect(words("hook", "throat opening", row, situation("hook", ["law"]))).toBe("throat opening above 2.3 in");
    expect(words("hook", "throat opening", row, situation("hook", ["strict", "law"]))).toBe("throat opening above 2 in");
    expect(words("hook", "throat opening", row, situation("hook", ["iso"]))).toBeNull();
  });
  it("of equal sizes the one that comes out at it counts: a hook on a chain sling by 5 % and one by German 10 %", () => {
    const row = cells({ throatNew: 2, throatNow: 2 });
    expect(words("chain sling", "hook throat opening", row)).toBe("hook throat opening at 2.1 in or more");
  });
  it("a section below its limit, by the part that the sheet names: 5 % in the saddle, 10 % in the shank", () => {
    const row = { sectionNew: 2, sectionNow: 2 };
    expect(words("hook", "section wear", cells(row))).toBe("saddle section at 1.9 in or less");
    expect(words("hook", "section wear", cells(row, "in", "shank"))).toBe("shank section at 1.8 in or less");
    expect(words("hook", "section wear", cells(row, "in", "nowhere"))).toBe("saddle section at 1.9 in or less");
    expect(words("hook", "section wear", cells(row), situation("hook", ["standard"]))).toBe("saddle section below 1.8 in");
    // A limit of the standard that passes at 10 % and one of practice that does not: the same size, and the stricter word.
    expect(words("hook", "section wear", cells(row, "in", "shank"), situation("hook", ["practice"]))).toBe(
      "shank section at 1.8 in or less",
    );
  });
  it("wear in two directions halves what is allowed, each from its own size", () => {
    const row = cells({ sectionNew: 20, sectionNow: 19.9, acrossNew: 30, acrossNow: 29.9 }, "mm");
    expect(words("shackle", "bow wear", row, situation("shackle"), true)).toBe("bow section below 19 mm; bow section across below 28.5 mm");
    expect(words("shackle", "bow wear", row)).toBe("bow section at 18 mm or less; bow section across at 27 mm or less");
    expect(words("shackle", "bow wear", cells({ acrossNew: 30 }, "mm"))).toBe("bow section across at 27 mm or less");
    expect(words("shackle", "bow wear", cells({ sectionNew: 20 }, "mm"))).toBe("bow section at 18 mm or less");
    expect(words("shackle", "bow wear", cells({ sectionNow: 20 }, "mm"))).toBeNull();
    expect(words("shackle", "pin wear", cells({ pinNew: 20 }, "mm", "bow"))).toBe("pin section at 18 mm or less");
  });
  it("a clearance in the unit of the reading, else of the column, else in inches", () => {
    expect(words("swivel", "shoulder clearance", cells({ clearance: 0.05 }))).toBe("shoulder clearance above 0.125 in");
    expect(words("swivel", "shoulder clearance", cells({ clearance: 1 }, "mm"))).toBe("shoulder clearance above 3.175 mm");
    expect(words("swivel", "shoulder clearance", cells({ clearance: "2 mm" }))).toBe("shoulder clearance above 3.175 mm");
    expect(words("swivel", "shoulder clearance", cells({}, "mm"))).toBe("shoulder clearance above 3.175 mm");
    expect(words("swivel", "shoulder clearance", cells({}, null))).toBe("shoulder clearance above 0.125 in");
  });
  it("a link by table and by wear of a new link: 3/8 in chain is 10 mm, of which 10 % leaves 9 mm", () => {
    expect(words("chain sling", "link thickness", cells({ size: "3/8", sectionNow: 0.375 }))).toBe("link thickness at 0.3543 in or less");
    expect(words("chain sling", "link thickness", cells({ size: 10, sectionNow: 9.5 }, "mm"))).toBe("link thickness at 9 mm or less");
    expect(words("chain sling", "link thickness", cells({ size: "3/8" }))).toBe("link thickness at 0.3543 in or less");
    expect(words("chain sling", "link thickness", cells({ size: "3/8" }), situation("chain sling", ["law"]))).toBe(
      "link thickness below 0.2969 in",
    );
    expect(words("chain sling", "link thickness", cells({ size: "5/16" }), situation("chain sling", ["law"]))).toBeNull();
    expect(words("chain sling", "link thickness", cells({ size: "3/4" }), situation("chain sling", ["standard"]))).toBeNull();
    expect(words("chain sling", "link thickness", cells({}))).toBeNull();
    expect(words("chain sling", "link thickness", cells({ size: "no size" }))).toBeNull();
  });
  it("an angle and a count by the lesser limit", () => {
    expect(words("hook", "twist", cells({}), situation("hook", ["law"]))).toBe("twist above 10 degrees");
    expect(words("hook", "twist", cells({}), situation("hook", ["law", "standard"]))).toBe("twist above 0 degrees");
    expect(words("hook", "twist", cells({}), situation("hook", ["iso"]))).toBeNull();
    expect(words("running rope", "broken wires in a lay", cells({}))).toBe("broken wires in a lay at 6 or more");
    expect(words("standing rope", "broken wires in a lay", cells({}))).toBe("broken wires in a lay above 2");
    expect(words("wire rope sling", "broken wires at the end", cells({}), situation("wire rope sling", ["queensland", "standard"]))).toBe(
      "broken wires at the end at 1 or more",
    );
  });
  it("is told for a variant where the check is meant for it, and only under its rule sets", () => {
    const lay = "broken wires in a lay";
    const sling = (variant: string | null, bases: readonly BasisId[] = ["standard"]): Situation =>
      situation("wire rope sling", bases, variant);
    expect(words("wire rope sling", lay, cells({}), sling("cable laid"))).toBe("broken wires in a lay at 20 or more");
    expect(words("wire rope sling", lay, cells({}), sling("strand laid"))).toBe("broken wires in a lay at 10 or more");
    expect(words("wire rope sling", "broken wires in one strand", cells({}), sling("cable laid"))).toBeNull();
    expect(words("wire rope sling", "broken wires in 6 diameters", cells({}), sling("cable laid", ["germany"]))).toBe(
      "broken wires in 6 diameters at 15 or more",
    );
    expect(words("wire rope sling", "broken wires in 6 diameters", cells({}), sling("cable laid"))).toBeNull();
  });
  it("is told by rope category, as far as it is known", () => {
    const iso = situation("running rope", ["iso"]);
    const six = "broken wires in 6 diameters";
    expect(words("running rope", six, cells({ ropeCategory: "04", ropeLay: "ordinary", drumLayers: "single" }), iso)).toBe(
      `${six} at 5 or more`,
    );
    expect(words("running rope", six, cells({}), iso)).toBeNull();
    expect(words("running rope", six, cells({ ropeCategory: "04" }), situation("running rope"))).toBeNull();
  });
  it("is not told of what has no size of its own: observations, nicks, tails, bends", () => {
    for (const [kind, name] of [
      ["hook", "cracks"],
      ["hook", "nick"],
      ["wedge socket", "tail length"],
      ["lifting beam", "permanent bend"],
      ["swivel", "clearance by its maker"],
    ] as const)
      expect(words(kind, name, cells({ size: "1", sectionNew: 2, span: 100, clearance: 0.1 })), `${kind}: ${name}`).toBeNull();
  });
});

describe("where a part comes out, as sizes", () => {
  const inches = (size: string): { readonly size: ReturnType<typeof exact>; readonly unit: Unit } => ({ size: exact(size), unit: "in" });
  it("one for each criterion in force, in the unit asked for", () => {
    const result = comesOutOf(check("hook", "throat opening"), inches("2"), "mm", situation("hook", ["law", "standard"]), "high");
    if (!result.ok) throw new Error(result.why);
    // 2.3 in and 2.1 in.
    expect(result.limits.map(({ at, criterion }) => [criterion.id, at.toString()])).toEqual([
      ["hook.throat-opening.law", "58.42"],
      ["hook.throat-opening.standard", "53.34"],
    ]);
    expect(result.passedOver).toEqual([]);
  });
  it("passes over a row that nobody read and says so, and refuses a size that is in no table", () => {
    const link = check("chain sling", "link thickness");
    const over = comesOutOf(link, inches("3/4"), "in", situation("chain sling"), "moderate");
    expect(over).toMatchObject({ ok: true, passedOver: [expect.stringContaining("unconfirmed")] });
    expect(over.ok && over.limits.map(({ criterion }) => criterion.basis)).toEqual(["practice"]);
    expect(comesOutOf(link, inches("5/16"), "in", situation("chain sling", ["law"]), "moderate")).toEqual({
      ok: false,
      why: "size 0.3125 in is not in the old chain table; a neighbouring row is never used",
    });
  });
  it("a clearance needs no size", () => {
    const result = comesOutOf(check("swivel", "shoulder clearance"), null, "in", situation("swivel"), "moderate");
    expect(result.ok && result.limits.map(({ at }) => at.toString())).toEqual(["0.125", "0.1875"]);
  });
});
