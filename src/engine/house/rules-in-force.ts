/** Rule sets. Sources disagree, so the sets in force are chosen, shown and printed. */
import type { Check } from "../gear/kind";
import { copyOf, Memory, sameLines } from "../memory";
import { matchKind } from "../names/gear-name";
import type { CellValue } from "../reading/cell-value";
import { readText } from "../reading/text";
import { type HouseLimits, isHouse } from "../rules/house-limits";
import { BASES, BASIS_IDS, type BasisId, DEFAULT_BASIS } from "../rules/rule-sets";
import { readHouse } from "./read-limits";

export type BasisChoice =
  { readonly ok: true; readonly ids: readonly BasisId[]; readonly house?: HouseLimits } | { readonly ok: false; readonly why: string };
const cache = new Memory<BasisChoice>();
/**
 * Reads a basis argument: one id or several separated by commas; blank is the default.
 * Returns the ids as chosen, in the order of `BASIS_IDS`, or the reason why the text names no rule set.
 */
export function readBasis(value: unknown): BasisChoice {
  // A blank cell arrives as 0 on some hosts.
  if (value === null || value === undefined || value === "" || value === 0) return { ok: true, ids: DEFAULT_BASIS };
  if (Array.isArray(value)) return withHouse(value);
  if (typeof value !== "string") return { ok: false, why: `The basis must be text, such as "standard,practice".` };
  const known = cache.get(value);
  if (known) return known;
  const words = value
    .split(/[,;+]/)
    .map((w) => w.trim().toLowerCase())
    .filter((w) => w !== "");
  const unknown = words.find((w) => !Object.hasOwn(BASES, w));
  const choice: BasisChoice =
    unknown !== undefined
      ? { ok: false, why: `There is no basis "${unknown}"; the bases are ${BASIS_IDS.join(", ")}.` }
      : words.length === 0
        ? { ok: true, ids: DEFAULT_BASIS }
        : { ok: true, ids: [...BASIS_IDS, "house" as const].filter((id) => words.includes(id)) };
  cache.set(value, choice);
  return choice;
}
/** Sheets of house limits that were read lately: a host hands over a new range for each call, and what stands on it is the same. */
const lately: { readonly lines: readonly (readonly CellValue[])[]; readonly choice: BasisChoice }[] = [];
const SHEETS = 4;
/** A range in place of text is the sheet of house limits, with the rule sets it names or the default; read once for what stands on it. */
function withHouse(value: readonly unknown[]): BasisChoice {
  if (!value.every((line): line is CellValue[] => Array.isArray(line)))
    return { ok: false, why: "The basis must be text or the range of the house limits." };
  // One cell handed over as a range is that cell.
  if (value.length === 1 && value[0]?.length === 1) return readBasis(value[0][0]);
  const known = lately.find(({ lines }) => sameLines(lines, value));
  if (known) return known.choice;
  const choice = houseChoice(value);
  lately.unshift({ lines: copyOf(value), choice });
  lately.length = Math.min(lately.length, SHEETS);
  return choice;
}
function houseChoice(value: readonly (readonly CellValue[])[]): BasisChoice {
  const house = houseOn(value);
  const chosen = readBasis(house.rules);
  if (!chosen.ok) return { ok: false, why: house.refused.find((row) => row.kind === null)?.sentence ?? chosen.why };
  return { ok: true, ids: [...chosen.ids.filter((id) => id !== "house"), "house"], house };
}
/** The house limits on a grid, with what they say of rule sets. */
export function houseOn(grid: readonly (readonly CellValue[])[]): HouseLimits {
  return readHouse(grid, (text) => {
    const rules = readBasis(text);
    return rules.ok ? null : rules.why;
  });
}
/** That a figure can be told, or why not: something is not there, or cannot be read. */
export type Stands =
  { readonly ok: true; readonly value: null } | { readonly ok: false; readonly kind: "missing" | "unreadable"; readonly why: string };
/**
 * Whether a figure stands under a basis: not beside house limits of which a row for that gear cannot be read. A figure
 * that is published only, as the least of a chain table, does not stand beside a house limit of the same sort of check.
 */
export function figureStands(basis: unknown, gear: CellValue, published?: Check["kind"]): Stands {
  const choice = readBasis(basis);
  if (!choice.ok) return { ok: false, kind: "unreadable", why: choice.why };
  const { house } = choice;
  if (house === undefined)
    return choice.ids.includes("house")
      ? {
          ok: false,
          kind: "unreadable",
          why: "The house limits are in force and were not handed over; give the range of their sheet as the basis.",
        }
      : { ok: true, value: null };
  const match = matchKind(readText(gear));
  const kind = match.ok ? match.kind : null;
  const refused = house.refused.find((row) => row.kind === null || row.kind === kind?.id);
  if (refused) return { ok: false, kind: "unreadable", why: refused.sentence };
  const sort = kind?.checks.filter((check) => check.kind === published).map((check) => check.name) ?? [];
  const own = (kind === null ? [] : (house.criteria.get(kind.id) ?? [])).find((criterion) => sort.includes(criterion.check));
  if (own === undefined || kind === null) return { ok: true, value: null };
  return {
    ok: false,
    kind: "missing",
    why: `${isHouse(own.limit) ? own.limit.row : own.check}: there is a limit of the house's own, and this figure knows the published ones only; GEAR.REMOVEAT tells the size at which the part comes out.`,
  };
}
