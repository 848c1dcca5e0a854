import { describe, expect, it } from "vitest";
import { shadeOf } from "../../src/taskpane/shared/theme";

describe("light or dark", () => {
  it.each([
    ["?theme=dark", "#FFFFFF", false, "dark"],
    ["?theme=light", "#262626", true, "light"],
    ["", "#262626", false, "dark"],
    ["", "#FFFFFF", true, "light"],
    ["", "#E6E6E6", true, "light"],
    ["", null, true, "dark"],
    ["", null, false, "light"],
    ["?theme=purple", "not a colour", true, "dark"],
  ] as const)("query %j, Office %s, machine dark %s: %s", (query, office, machine, shade) => {
    expect(shadeOf(query, office, machine)).toBe(shade);
  });
});
