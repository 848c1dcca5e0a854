import { describe, expect, it } from "vitest";
import { built, gzipped, loadFunctions, metadata } from "./dist";

describe("the built functions", () => {
  it("register exactly what functions.json describes, in a runtime that has only CustomFunctions", async () => {
    const { functions } = await loadFunctions();
    expect([...functions.keys()].sort()).toEqual(
      metadata()
        .map((f) => f.id)
        .sort(),
    );
    expect(functions.size).toBe(29);
  });

  it("answer from the built file: 2.101 in from 2 in comes out under the 5 % rule, 2.1 in does not", async () => {
    const { functions } = await loadFunctions();
    expect(functions.get("THROATVERDICT")?.(2, 2.101, "in", null, "standard")).toBe("REMOVE");
    expect(functions.get("THROATVERDICT")?.(2, 2.1, "in", null, "standard")).toBe("WATCH");
    expect(functions.get("CHAINMIN")?.("1/2", "in", "law")).toBe(25 / 64);
  });

  // The aim is 80 kB: the words that make a remark good and the kinds of gear brought it over; about 115 kB of it serve the functions alone.
  it("take at most 124 kB gzip, without React", () => {
    expect(gzipped("functions.js")).toBeLessThanOrEqual(124_000);
    // The one element that its loader makes is a script, for what the pane fetches later.
    expect(built("functions.js")).not.toMatch(/react|jsx|useState|createRoot/i);
  });
});

describe("the built pane", () => {
  // The aim is 350 kB.
  it("loads with at most 380 kB gzip", () => {
    const scripts = [...built("taskpane.html").matchAll(/src="?([^":>\s]+\.js)"?/g)].map((m) => m[1] ?? "");
    expect(scripts).toContain("functions.js");
    expect(scripts).toContain("taskpane.js");
    expect(scripts.reduce((sum, file) => sum + gzipped(file), 0)).toBeLessThanOrEqual(380_000);
  });

  it("takes the engine from the functions' file", () => {
    for (const own of ["hoist ring", "lifting beam", "galvanised"])
      expect([own, built("functions.js").includes(own), built("taskpane.js").includes(own)]).toEqual([own, true, false]);
  });

  it("takes the client library from its vendor's address, never from these files", () => {
    expect(built("taskpane.html")).toContain("https://appsforoffice.microsoft.com/lib/1/hosted/office.js");
    expect(built("taskpane.js")).not.toContain("OSFPerformance");
  });
});
