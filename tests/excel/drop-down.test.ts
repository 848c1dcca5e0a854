import { describe, expect, it } from "vitest";
import { GEAR } from "../../src/engine/gear/index";
import { gearChoices } from "../../src/excel/register/drop-downs";

const plan = (...gear: string[]): string[] => gear;

describe("the drop-down of gear kinds", () => {
  it("fits into a rule, which takes 255 characters, whatever the register holds", () => {
    for (const kind of GEAR) expect(gearChoices(plan(kind.id)).join(",").length, kind.id).toBeLessThanOrEqual(255);
    expect(gearChoices(plan(...GEAR.map((k) => k.id))).join(",").length).toBeLessThanOrEqual(255);
  });
  it("begins with the kinds that the register holds, by whatever name they go", () => {
    expect(gearChoices(plan("Spreader bars", "vertical plate clamp", "anvil", "")).slice(0, 2)).toEqual(["lifting beam", "plate clamp"]);
  });
  it("offers kinds of the catalogue only, each once, and as many as a rule takes", () => {
    const choices = gearChoices(plan("hook"));
    for (const choice of choices) expect(GEAR.map((k) => k.id)).toContain(choice);
    expect(new Set(choices).size).toBe(choices.length);
    const left = GEAR.map((k) => k.id).filter((id) => !choices.includes(id));
    for (const id of left) expect([...choices, id].join(",").length, id).toBeGreaterThan(255);
  });
});
