import { describe, expect, it } from "vitest";
import { GEAR } from "../../src/engine/gear/index";
import { SIZE } from "../../src/taskpane/drawings/drawing";
import { DRAWINGS } from "../../src/taskpane/drawings/index";

describe.each(GEAR.map((kind) => [kind.id, kind] as const))("the drawing of a %s", (id, kind) => {
  it("is there", () => {
    expect(DRAWINGS[id], `add src/taskpane/drawings/${id.replaceAll(" ", "-")}.tsx and a line in drawings/index.ts`).toBeDefined();
  });

  it("has a place for every part that the kind or one of its checks names", () => {
    const named = new Set([...Object.keys(kind.parts), ...kind.checks.map((check) => check.part)]);
    expect(Object.keys(DRAWINGS[id]?.spots ?? {})).toEqual(expect.arrayContaining([...named]));
  });

  it("keeps every number inside the picture, and no two numbers on one another", () => {
    const labels = Object.values(DRAWINGS[id]?.spots ?? {}).map((spot) => spot.label);
    for (const [x, y] of labels) {
      expect(Math.min(x, y, SIZE - x, SIZE - y)).toBeGreaterThanOrEqual(11);
    }
    labels.forEach(([x, y], i) => {
      for (const [otherX, otherY] of labels.slice(i + 1)) expect(Math.hypot(x - otherX, y - otherY)).toBeGreaterThan(22);
    });
  });
});
