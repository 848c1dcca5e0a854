/** The sheet of house limits is read once for what stands on it, though a host hands over a new range for every call. */
import { beforeEach, describe, expect, it, vi } from "vitest";
import type * as ReadLimits from "../../src/engine/house/read-limits";
import { HOUSE_HEADINGS } from "../../src/engine/house/read-limits";
import { judge, judgeRow, reason, throatVerdictOf, verdict } from "../../src/functions/functions";

const { reads } = vi.hoisted(() => ({ reads: vi.fn() }));
vi.mock("../../src/engine/house/read-limits", async (original) => {
  const real = await original<typeof ReadLimits>();
  return {
    ...real,
    readHouse: (...given: Parameters<typeof real.readHouse>) => {
      reads();
      return real.readHouse(...given);
    },
  };
});

const HEADINGS = ["Id", "Gear", "Unit", "Throat as-new", "Throat now", "Section as-new", "Section now", "Twist deg", "Latch works", "Cracks", "Identification legible"]; // prettier-ignore
const hook = (id: number): (string | number)[] => [`H-${String(id)}`, "hook", "mm", 50, 52, 40, 40, 0, "yes", "none", "yes"];
/** An invented yard's limit of the throat; a new range each time. */
const house = (figure: string): (string | number)[][] => [
  ["House limits", "", "", "", "", "", ""],
  [...HOUSE_HEADINGS],
  ["hook", "throat opening", "above", figure, "", "Yard rule 7", ""],
];

describe("the sheet of house limits", () => {
  beforeEach(() => {
    reads.mockClear();
  });
  it("is read once for a register whose rows each ask with a range of their own", () => {
    for (let id = 0; id < 200; id += 1) expect(judgeRow([HEADINGS], [hook(id)], house("3.1 %"))).toMatch(/^GEAR1 .REMOVE /u);
    expect(reads).toHaveBeenCalledTimes(1);
  });
  it("is read once whichever function asks", () => {
    for (let id = 0; id < 20; id += 1) {
      expect(verdict([HEADINGS], [hook(id)], house("3.2 %"))).toBe("REMOVE");
      expect(reason([HEADINGS], [hook(id)], house("3.2 %"))).toContain("House: house limit Yard rule 7");
      expect(judge([HEADINGS], [hook(id)], house("3.2 %"))[0]?.[0]).toBe("REMOVE");
      expect(throatVerdictOf(50, 52, "mm", null, house("3.2 %"))).toBe("REMOVE");
    }
    expect(reads).toHaveBeenCalledTimes(1);
  });
  it("is read again when a limit on it changes, and the new limit counts at once", () => {
    expect(verdict([HEADINGS], [hook(1)], house("3.3 %"))).toBe("REMOVE");
    // 2 mm of 50 mm are 4 %: inside 4.5 %, of which they are 89 %.
    expect(verdict([HEADINGS], [hook(1)], house("4.5 %"))).toBe("WATCH");
    expect(verdict([HEADINGS], [hook(1)], house("3.3 %"))).toBe("REMOVE");
    expect(reads).toHaveBeenCalledTimes(2);
  });
});
