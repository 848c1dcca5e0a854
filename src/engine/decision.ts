/** The six decisions, worst first, and how several become one. */

export const DECISIONS = ["REMOVE", "EXAMINE", "NO VERDICT", "DRESS", "WATCH", "KEEP"] as const;
export type Decision = (typeof DECISIONS)[number];
/** A symbol for each decision, so that colour is never the only sign. */
export const SYMBOLS: Record<Decision, string> = {
  REMOVE: "✖",
  EXAMINE: "◆",
  "NO VERDICT": "?",
  DRESS: "▽",
  WATCH: "△",
  KEEP: "✔",
};
/** What the user does, in one line for each decision. */
export const ACTIONS: Record<Decision, string> = {
  REMOVE: "Take out of service and tag out; only a qualified person may bring it back.",
  EXAMINE: "Out of use until stripped, tested or measured again.",
  "NO VERDICT": "Out of use until the missing or doubtful reading is there.",
  DRESS: "A trained person grinds it out lengthwise along the contour and measures again; never a crack.",
  WATCH: "Keep in service and shorten the interval.",
  KEEP: "Keep in service.",
};
export function isDecision(text: unknown): text is Decision {
  return typeof text === "string" && (DECISIONS as readonly string[]).includes(text);
}
const RANKS = Object.fromEntries(DECISIONS.map((decision, at) => [decision, at])) as Readonly<Record<Decision, number>>;
/** 0 is the worst. */
export function rank(decision: Decision): number {
  return RANKS[decision];
}
export function worse(a: Decision, b: Decision): Decision {
  return rank(a) <= rank(b) ? a : b;
}
/** The worst of several decisions; nothing at all is no verdict. */
export function worstOf(decisions: Iterable<Decision>): Decision {
  let worst: Decision | null = null;
  for (const decision of decisions) worst = worst === null ? decision : worse(worst, decision);
  return worst ?? "NO VERDICT";
}
/** Decisions under which the item may not be used. */
export function outOfUse(decision: Decision): boolean {
  return decision === "REMOVE" || decision === "EXAMINE" || decision === "NO VERDICT";
}
