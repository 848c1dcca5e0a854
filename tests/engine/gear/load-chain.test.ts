import { describe, expect, it } from "vitest";
import { good, judged, kindTests } from "../helpers";
import { loadChainCases, loadChainSights } from "./load-chains";

kindTests("load chain", loadChainCases("load-chain"), loadChainSights("load-chain"));

describe("a load chain", () => {
  it("without its maker's figures is NO VERDICT, and the reason asks for them: none of a table or another maker stands in", () => {
    const verdict = judged({ ...good("load chain"), linkLeast: "", gaugedMost: "" });
    expect(verdict.decision).toBe("NO VERDICT");
    expect(verdict.reason).toContain("Maker's least link");
    expect(verdict.reason).toContain("Maker's gauged length");
  });
  it("reads each size in its own unit: 6.4 mm is 0.252 in", () => {
    expect(judged({ ...good("load chain"), sectionNow: "0.26 in" }).decision).toBe("KEEP");
    expect(judged({ ...good("load chain"), sectionNow: "0.25 in" }).decision).toBe("REMOVE");
  });
});
