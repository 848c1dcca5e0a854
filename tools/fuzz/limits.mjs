/**
 * The oracle's own limits, typed by hand from the texts named; nothing here is taken from the engine. Only rows well inside
 * or surely past them are planted, so that a limit's own edge is left to the tests of the criteria.
 * `past` is the share, count, angle or length from which a row is surely out under the default rules (consensus standard and
 * common practice); `clean` is what a clean row has at most.
 */
export const LIMITS = {
  throat: { past: 0.052, clean: 0.03, source: "EM 385-1-1 15.E.07: 5 %, at most 1/4 in (6 mm)" },
  hookSection: { past: 0.102, clean: 0.025, source: "EM 385-1-1 15.E.07: wear exceeding 10 %" },
  /** Common practice, no source. */
  hookSaddle: { past: 0.052, clean: 0.025, source: "common practice, no source: 5 % or more in a highly stressed area" },
  section: { past: 0.1, clean: 0.04, source: "WAC 296-155-33900 Table 19: 10 % reduction" },
  blockPin: { past: 0.102, clean: 0.04, source: "WAC 296-155-33900 Table 19; fittings of block and tackle: in excess of 10 %" },
  chain: {
    past: 0.135,
    clean: 0.03,
    source: "ASME B30.9 Table 9-1.9.5-1 as restated: 0.443 in at 1/2 in; wear over 10 %: common practice",
  },
  maker: {
    past: 0.003,
    clean: 0.02,
    source: "29 CFR 1910.179(l)(3) and the maker's own written figure: at it or beyond it the chain comes out",
  },
  nick: { past: 0.12, source: "WAC 296-155-33900 Table 19: 10 % reduction; a nick that deep leaves less" },
  ropeDiameter: { past: 0.052, clean: 0.02, source: "29 CFR 1926.1413 category II; Cal. tit. 8 section 5036: more than 5 %" },
  meshWire: { past: 0.25, clean: 0.08, source: "WAC 296-155-33810 Table 12: 25 % by abrasion; 15 % where it is corroded" },
  tooth: { past: 0.52, clean: 0.2, source: "common practice (a clamp maker's manual): more than 50 % of a tooth" },
  bend: { past: 1 / 235, clean: 1 / 1200, source: "DOE-STD-1090-96 15.4.8 a.2: 1/2 in in 10 ft" },
  twist: { past: 1, clean: 0, source: "EM 385-1-1 15.E.07: any visibly apparent bend or twist" },
  clearanceStrip: { pastMm: 4.9, cleanMm: 1.5, source: "common practice, no source: above 3/16 in strip down" },
  clearanceUnknown: {
    pastMm: 3.3,
    cleanMm: 1.5,
    source: "common practice, no source: 1/8 to 3/16 in by size, so 1/8 in where the size is not known",
  },
  groove: { past: 1.015, clean: [1.055, 1.075], source: "groove gauge reference: worn at 2.5 % over the rope" },
  counts: {
    slingLay: { past: 10, clean: 4, source: "WAC 296-24-29425(5)(a): 10 in one lay" },
    slingStrand: { past: 5, clean: 2, source: "WAC 296-24-29425(5)(a): 5 in one strand in one lay" },
    runningLay: { past: 6, clean: 3, source: "29 CFR 1926.1413(a)(2)(ii)(A)(1): 6 in one lay" },
    runningStrand: { past: 3, clean: 1, source: "29 CFR 1926.1413(a)(2)(ii)(A)(1): 3 in one strand" },
    six: { past: 2, clean: 0, source: "29 CFR 1926.1413(a)(2)(ii)(A)(2): 2 in 6 diameters" },
    thirty: { past: 4, clean: 2, source: "29 CFR 1926.1413(a)(2)(ii)(A)(2): 4 in 30 diameters" },
    standingLay: { past: 3, clean: 1, source: "29 CFR 1926.1413(a)(2)(ii)(A)(3): more than 2 in a lay" },
    end: { past: 2, clean: 0, source: "29 CFR 1926.1413(a)(2)(ii)(A)(3): more than 1 at an end connection" },
  },
  /** 29 CFR Part 1918 Appendix II Table 1, drop forged: rope in inches, clips, least spacing in inches. */
  clips: [
    ["1/2", 3, 3],
    ["5/8", 3, 3.75],
    ["3/4", 4, 4.5],
    ["7/8", 4, 5.25],
    ["1", 5, 6],
  ],
};
