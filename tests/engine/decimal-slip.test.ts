/** A slipped decimal point is asked about; it is no sign that the assembly was overloaded. Common practice, no source. */
import { describe, expect, it } from "vitest";
import { reportOn } from "../../src/engine/report/report";

const HEADINGS = ["Id", "Gear", "Assembly", "Unit", "Throat as-new", "Throat now", "Inspected"];
const judged = (now: number): readonly { readonly decision: string; readonly reason: string }[] =>
  reportOn(
    [HEADINGS, ["HK-1", "hook", "Set A", "mm", 28.4, now, "2026-11-01"], ["HK-2", "hook", "Set A", "mm", 28.4, 28.5, "2026-11-01"]],
    { basis: ["standard", "practice"], asOf: 46354 },
  )!.items.map(({ verdict }) => verdict);

describe("a throat as new 28.4 mm", () => {
  it.each([284, 2840])("that reads %s mm is asked about, and nothing is said of its assembly", (now) => {
    const [slip, other] = judged(now);
    expect(slip?.decision).toBe("NO VERDICT");
    expect(slip?.reason).toMatch(/times as much, as with a slipped decimal point; check the figure/);
    expect(other?.reason).not.toMatch(/overload/i);
  });

  it.each([30, 60, 250])("that reads %s mm was opened up: it comes out, and its assembly is looked at", (now) => {
    const [opened, other] = judged(now);
    expect(opened?.decision).toBe("REMOVE");
    expect(other?.reason).toMatch(/assembly/i);
  });
});
