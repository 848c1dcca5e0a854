/** Cases that chain hoists and lever hoists share: their hooks of 30 mm throat and 20 mm saddle, their load chains. */
import { onSight, PRACTICE, type LimitCase, type SightCase } from "../helpers";
import { loadChainCases, loadChainSights } from "./load-chains";

const LAW = "29 CFR 1910.179(j)(2)(iii)";
export function hoistCases(kind: string): readonly LimitCase[] {
  // 15 % of 30 mm is 4.5 mm, 10 % 3 mm, 5 % 1.5 mm.
  const throat = (basis: string, source: string, inside: number, edge: number): LimitCase => ({
    criterion: `${kind}.throat-opening.${basis}`,
    source,
    inside: [{ throatNow: inside }, "KEEP"],
    edge: [{ throatNow: edge }, edge === 30 ? "KEEP" : "WATCH"],
    past: [{ throatNow: edge + 0.01 }, "REMOVE"],
  });
  const twist = (basis: string, source: string, edge: number): LimitCase => ({
    criterion: `${kind}.twist.${basis}`,
    source,
    inside: [{ twist: 0 }, "KEEP"],
    edge: [{ twist: edge }, edge === 0 ? "KEEP" : "WATCH"],
    past: [{ twist: edge + 0.5 }, "REMOVE"],
  });
  // Saddle 20 mm: 10 % is 2 mm, 5 % 1 mm; 10 % of the area is 20 x sqrt(0.9) = 18.97367 mm.
  const section = (basis: string, source: string, edge: number, out: "WATCH" | "REMOVE", past: number): LimitCase => ({
    criterion: `${kind}.hook-section.${basis}`,
    source,
    inside: [{ hookNow: 19.8 }, "KEEP"],
    edge: [{ hookNow: edge }, out],
    past: [{ hookNow: past }, "REMOVE"],
  });
  return [
    throat("law", LAW, 32, 34.5),
    throat("standard", "EM 385-1-1 15.E.07", 30.5, 31.5),
    throat("strict", PRACTICE, 29.9, 30),
    throat("alberta", "Alberta OHS Code s.309(a)", 32, 34.5),
    throat("queensland", "Queensland Guide for doggers pp. 34, 38", 30.5, 31.5),
    throat("germany", "German discard list", 31, 33),
    twist("law", LAW, 10),
    twist("standard", "ASME B30.10-2005 10-1.2.3(b)(3)", 0),
    twist("practice", PRACTICE, 10),
    twist("alberta", "Alberta OHS Code s.309(b)", 10),
    section("standard", "ASME B30.10-2005 10-1.2.3(b)(2)", 18, "WATCH", 17.99),
    section("practice-high", PRACTICE, 19, "REMOVE", 18.99),
    section("alberta", "Alberta OHS Code s.309(c)", 18.974, "WATCH", 18.973),
    section("queensland", "Queensland Guide for doggers p. 34", 18, "WATCH", 17.99),
    section("germany", "German discard list", 19, "WATCH", 18.99),
    section("ships", "ISO 16855:2013", 18, "WATCH", 17.99),
    ...loadChainCases(kind),
  ];
}
export function hoistSights(kind: string): readonly SightCase[] {
  return [
    ...onSight(kind, "latch", "latch", { standard: "ASME B30.10-2005", practice: PRACTICE }),
    ...onSight(kind, "lock", "lock", { standard: "ASME B30.10-2005", practice: PRACTICE }),
    ...loadChainSights(kind),
    ...onSight(kind, "brake", "brake", { practice: PRACTICE }),
    ...onSight(kind, "controls", "controls", { practice: PRACTICE }),
    ...onSight(kind, "fasteners", "fasteners", { practice: PRACTICE }),
    ...onSight(kind, "chain anchorage", "attachPoints", { practice: PRACTICE }),
    ...onSight(kind, "identification", "tag", { practice: PRACTICE }),
  ];
}
