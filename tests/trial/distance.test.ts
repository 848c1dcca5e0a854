import { describe, expect, it } from "vitest";
import { distance } from "../../src/trial/view/distance";

const WINDOW = { start: 140, end: 953 };

describe("how far to scroll to a cell", () => {
  it("not at all when it is in sight", () => {
    expect(distance({ start: 140, end: 230 }, WINDOW)).toBe(0);
    expect(distance({ start: 900, end: 953 }, WINDOW)).toBe(0);
  });
  it("back when its start lies under the frozen part", () => {
    expect(distance({ start: 132, end: 220 }, WINDOW)).toBe(-8);
  });
  it("on when its end lies outside", () => {
    expect(distance({ start: 992, end: 1083 }, WINDOW)).toBe(130);
  });
  it("to its start when it is wider than the window", () => {
    expect(distance({ start: 400, end: 1900 }, WINDOW)).toBe(260);
  });
});
