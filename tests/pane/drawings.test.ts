import { describe, expect, it } from "vitest";
import { GEAR } from "../../src/engine/gear/index";
import { plainDrawing } from "../../src/taskpane/drawings/plain";
import { SIZE } from "../../src/taskpane/drawings/drawing";
import { drawingOf } from "../../src/taskpane/drawings/index";

describe("a kind without a drawing of its own", () => {
  it("has a plain one, its parts apart from one another and inside the picture", () => {
    for (const count of [1, 2, 5, 8]) {
      const { spots } = plainDrawing(Array.from({ length: count }, (_, i) => `part ${String(i)}`));
      const labels = Object.values(spots).map((spot) => spot.label);
      expect(labels).toHaveLength(count);
      labels.forEach(([x, y], i) => {
        expect(Math.min(x, y, SIZE - x, SIZE - y)).toBeGreaterThanOrEqual(11);
        for (const [otherX, otherY] of labels.slice(i + 1)) expect(Math.hypot(x - otherX, y - otherY)).toBeGreaterThan(22);
      });
    }
  });
});

describe.each(GEAR.map((kind) => [kind.id, kind] as const))("the drawing of a %s", (id, kind) => {
  it("is there", () => {
    expect(drawingOf(id)).toBeDefined();
  });

  it("has a place for every part that the kind or one of its checks names", () => {
    const named = new Set([...Object.keys(kind.parts), ...kind.checks.map((check) => check.part)]);
    expect(Object.keys(drawingOf(id)?.spots ?? {})).toEqual(expect.arrayContaining([...named]));
  });

  it("keeps every number inside the picture, and no two numbers on one another", () => {
    const labels = Object.values(drawingOf(id)?.spots ?? {}).map((spot) => spot.label);
    for (const [x, y] of labels) {
      expect(Math.min(x, y, SIZE - x, SIZE - y)).toBeGreaterThanOrEqual(11);
    }
    labels.forEach(([x, y], i) => {
      for (const [otherX, otherY] of labels.slice(i + 1)) expect(Math.hypot(x - otherX, y - otherY)).toBeGreaterThan(22);
    });
  });
});
