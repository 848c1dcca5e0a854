/**
 * Failures injected into build, rebuild and conversion. A bounded part of them here; `npm run faults` does all, which is
 * each request with each code, refused and with its answer lost, and a failure before each action.
 */
import { afterAll, describe, expect, it } from "vitest";
import { CODES, inject, type Injection, type Outcome, type PlanName, soundRun } from "./faults";

const ALL = process.env["GEAR_FAULTS"] === "all";
const PLANS: readonly (readonly [PlanName, string])[] = ALL
  ? [
      ["first build", "1.14"],
      ["rebuild", "1.14"],
      ["conversion", "1.14"],
      ["rebuild", "1.12"],
    ]
  : [
      ["first build", "1.14"],
      ["rebuild", "1.14"],
      ["conversion", "1.14"],
    ];
const told: string[] = [];

describe.each(PLANS)("a %s that fails (ExcelApi %s)", (plan, version) => {
  it("loses nothing that was typed, tells no untruth, and the next build finishes it", { timeout: ALL ? 3_600_000 : 240_000 }, async () => {
    const { actions, typed } = await soundRun(plan, version);
    const injections: Injection[] = actions.flatMap((count, request) => {
      // The bounded run takes each third request and one place within it.
      if (!ALL && request % 3 !== PLANS.findIndex(([name]) => name === plan) % 3) return [];
      const codes = ALL ? CODES : [CODES[request % CODES.length] ?? CODES[0]];
      const at = ALL ? Array.from({ length: count }, (_, i) => i) : [Math.floor(count / 2)];
      return [
        ...codes.flatMap((code) => [
          { plan, version, request, code, how: "refused" as const },
          { plan, version, request, code, how: "lost" as const },
        ]),
        ...at.map((how) => ({ plan, version, request, code: "GeneralException", how })),
      ];
    });
    const sums = { injections: 0, lost: 0, "log touched": 0, untrue: 0, "next build refused": 0, differing: 0 };
    const bad: { injection: Injection; outcome: Outcome }[] = [];
    for (const injection of injections) {
      const outcome = await inject(injection, typed);
      sums.injections += 1;
      sums.lost += Number(outcome.lost.length > 0);
      sums["log touched"] += Number(outcome.logTouched);
      sums.untrue += Number(outcome.untrue !== "");
      sums["next build refused"] += Number(outcome.refused !== "");
      sums.differing += Number(outcome.differing.length > 0);
      if (outcome.lost.length > 0 || outcome.logTouched || outcome.untrue !== "" || outcome.refused !== "" || outcome.differing.length > 0)
        bad.push({ injection, outcome });
    }
    told.push(
      `${plan} (ExcelApi ${version}): ${Object.entries(sums)
        .map(([name, count]) => `${name} ${String(count)}`)
        .join(", ")}`,
    );
    expect(bad.slice(0, 5)).toEqual([]);
  });
});
afterAll(() => {
  if (ALL) console.log(told.join("\n"));
});
