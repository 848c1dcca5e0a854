/** Headache balls: a weight with a swivel and a hook on the end of a single rope. A load block of its own kind, without a sheave. */
import type { Criterion } from "../rules/criterion";
import { hook } from "./hook";
import type { Check, GearKind } from "./kind";
import { hardwareChecks, hardwareOnSight, hardwareWear, practiceWear, removedOnSight, seen } from "./shared/records";

const FROM_HOOK = ["throat opening", "section wear", "twist", "latch", "lock", "nick"];
const own: readonly Check[] = hook.checks.filter((check) => FROM_HOOK.includes(check.name));
const borrowed: readonly Criterion[] = hook.criteria
  .filter((c) => FROM_HOOK.includes(c.check))
  .map((c) => ({ ...c, id: `headache-ball.${c.id.slice(c.id.indexOf(".") + 1)}` }));
export const headacheBall: GearKind = {
  id: "headache ball",
  plural: "headache balls",
  names: ["headache ball", "ball hook", "overhaul ball", "overhauling ball", "hook ball", "ball and hook"],
  parts: { saddle: "high", throat: "high", tip: "low", pin: "moderate", ball: "moderate", body: "moderate" },
  partNames: { bowl: "saddle", swivel: "body", weight: "ball" },
  checks: [
    ...own,
    { kind: "loss", name: "pin wear", part: "pin", original: "pinNew", measured: "pinNow", required: false },
    seen("turning freely", "body", "turnsFreely", true),
    seen("fasteners", "ball", "fasteners", true),
    seen("threads", "body", "threads", false),
    ...hardwareChecks("body", true).filter((check) => check.kind !== "nick"),
  ],
  criteria: [
    ...borrowed,
    ...hardwareWear("headache-ball", ["pin wear"]),
    ...practiceWear("headache-ball", ["pin wear"], ["block and tackle"]),
    ...removedOnSight("headache-ball", "turning freely", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("headache-ball", "fasteners", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...removedOnSight("headache-ball", "threads", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
    ...hardwareOnSight("headache-ball"),
  ],
};
