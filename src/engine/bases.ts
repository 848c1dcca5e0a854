/** Rule sets. Sources disagree, so the sets in force are chosen, shown and printed. */

export const BASES = {
  law: {
    name: "Law",
    holds: "US federal text: throat opening more than 15 %, twist more than 10 degrees, the old chain table, broken wires",
  },
  standard: {
    name: "Standard",
    holds:
      "Consensus standards as adopted in public law: throat opening more than 5 % or 1/4 in (6 mm), any visible twist, 10 % wear, the newer chain table",
  },
  practice: {
    name: "Practice",
    holds:
      "Common practice without a published source: 10 % wear, 5 % in highly stressed areas and where wear runs in two directions, dressing, swivel clearance",
  },
  strict: {
    name: "Strict",
    holds: "Practice, and any measurable throat opening is a removal",
  },
} as const;

export type BasisId = keyof typeof BASES;

export const BASIS_IDS = Object.keys(BASES) as BasisId[];

export const DEFAULT_BASIS: readonly BasisId[] = ["standard", "practice"];

/** Sets that a set contains, itself included. */
const CONTAINS: Record<BasisId, readonly BasisId[]> = {
  law: ["law"],
  standard: ["standard"],
  practice: ["practice"],
  strict: ["strict", "practice"],
};

export type BasisChoice = { readonly ok: true; readonly ids: readonly BasisId[] } | { readonly ok: false; readonly why: string };

const cache = new Map<string, BasisChoice>();

/**
 * Reads a basis argument: one id or several separated by commas; blank is the default.
 * Returns the ids as chosen, in the order of `BASIS_IDS`, or the reason why the text names no rule set.
 */
export function readBasis(value: unknown): BasisChoice {
  // A blank cell arrives as 0 on some hosts.
  if (value === null || value === undefined || value === "" || value === 0) return { ok: true, ids: DEFAULT_BASIS };
  if (typeof value !== "string") return { ok: false, why: `The basis must be text, such as "standard,practice".` };
  const known = cache.get(value);
  if (known) return known;
  const words = value.split(/[,;+]/).map((w) => w.trim().toLowerCase()).filter((w) => w !== "");
  const unknown = words.find((w) => !Object.hasOwn(BASES, w));
  const choice: BasisChoice =
    unknown !== undefined
      ? { ok: false, why: `There is no basis "${unknown}"; the bases are ${BASIS_IDS.join(", ")}.` }
      : words.length === 0
        ? { ok: true, ids: DEFAULT_BASIS }
        : { ok: true, ids: BASIS_IDS.filter((id) => words.includes(id)) };
  cache.set(value, choice);
  return choice;
}

/** All rule sets whose criteria apply under a choice. */
export function inForce(chosen: readonly BasisId[]): ReadonlySet<BasisId> {
  return new Set(chosen.flatMap((id) => CONTAINS[id]));
}
