/** Load and tackle blocks as one assembly: hook, pins, sheaves. The 10 % rule holds on every fitting. */
import type { Criterion } from "../rules/criterion";
import { block } from "./block";
import { hook } from "./hook";
import type { Check, GearKind } from "./kind";
import { hardwareWear, practiceWear, removedOnSight, seen } from "./shared/records";

const own = (check: string): Check => {
  const found = hook.checks.find((c) => c.name === check);
  if (!found) throw new Error(`hooks have no check "${check}"`);
  return found;
};
/** The hook's saddle is no measure of the shell and the sheaves. */
const withoutGeneral = (check: Check & { kind: "loss" }): Check => {
  const { kind, name, part, required, original, measured } = check;
  return {
    kind,
    name,
    part,
    required,
    original,
    measured,
    ...(check.acrossOriginal && check.acrossMeasured ? { acrossOriginal: check.acrossOriginal, acrossMeasured: check.acrossMeasured } : {}),
  };
};
const borrowed = (kind: GearKind, checks: readonly string[]): readonly Criterion[] =>
  kind.criteria.filter((c) => checks.includes(c.check)).map((c) => ({ ...c, id: `load-block.${c.id.slice(c.id.indexOf(".") + 1)}` }));
const FROM_HOOK = ["throat opening", "section wear", "twist", "latch", "lock"];
/** Cracks by the lists for hooks, which hold what the list for blocks holds. */
const CRACKS = "cracks";
const FROM_BLOCK = [
  "pin wear",
  "sheave",
  "fasteners",
  "groove corrugation",
  "threads",
  "deformation",
  "identification",
  "heat damage",
  "corrosion",
  "field weld or change",
  "nick",
];
export const loadBlock: GearKind = {
  id: "load block",
  plural: "load blocks",
  names: [
    "load block",
    "hook block",
    "tackle block",
    "lower block",
    "bottom block",
    "crane block",
    "crane hook block",
    "swivel hook block",
  ],
  parts: { saddle: "high", throat: "high", pin: "moderate", sheave: "moderate", shell: "moderate", body: "moderate" },
  partNames: { bowl: "saddle", cheek: "shell", axle: "pin" },
  checks: [
    ...FROM_HOOK.map(own).map((check) => (check.kind === "loss" ? withoutGeneral(check) : check)),
    { kind: "loss", name: "shell wear", part: "shell", original: "shellNew", measured: "shellNow", required: false, general: true },
    { kind: "loss", name: "pin wear", part: "pin", original: "pinNew", measured: "pinNow", required: true },
    seen("sheave", "sheave", "sheaveTrue", true),
    seen("fasteners", "pin", "fasteners", true),
    seen("free turning", "body", "turnsFreely", false),
    ...block.checks.filter(
      (c) => c.name === CRACKS || (FROM_BLOCK.includes(c.name) && !["pin wear", "sheave", "fasteners"].includes(c.name)),
    ),
  ],
  criteria: [
    ...borrowed(hook, [...FROM_HOOK, CRACKS]),
    ...borrowed(block, FROM_BLOCK),
    ...hardwareWear("load-block", ["shell wear"]),
    ...practiceWear("load-block", ["shell wear"], ["block and tackle"]),
    ...removedOnSight("load-block", "free turning", { standard: ["WAC 33900", ""], practice: ["practice", ""] }),
  ],
};
