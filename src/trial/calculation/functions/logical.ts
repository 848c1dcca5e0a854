/** Conditions. A branch that is not taken is not worked out, as in Excel. */
import type { Run, SheetFunction, Spot } from "../compile";
import { order } from "../operators";
import {
  each,
  Fault,
  isMany,
  type Item,
  Matrix,
  NA,
  NOT_A_VALUE,
  numberOf,
  OMITTED,
  settled,
  spread,
  truthOf,
  type Value,
} from "../values";
import { type Functions, ofItems } from "./by-item";

/** What a left-out branch comes to. */
const branch = (run: Run | undefined, otherwise: Item, spot: Spot): Value => {
  if (run === undefined) return otherwise;
  const value = run(spot);
  return value === OMITTED ? 0 : value;
};
const choose: SheetFunction = ([condition, then, otherwise], spot) => {
  if (condition === undefined) return NOT_A_VALUE;
  const asked = settled(condition(spot));
  if (!(asked instanceof Matrix)) {
    const truth = truthOf(asked);
    if (truth instanceof Fault) return truth;
    return truth ? branch(then, 0, spot) : branch(otherwise, false, spot);
  }
  return spread(
    [asked, settled(branch(then, 0, spot)), settled(branch(otherwise, false, spot))],
    ([item = null, yes = null, no = null]) => {
      const truth = truthOf(item);
      return truth instanceof Fault ? truth : truth ? yes : no;
    },
  );
};
function instead(of: (item: Fault) => boolean): SheetFunction {
  return ([tried, otherwise], spot) => {
    if (tried === undefined) return NOT_A_VALUE;
    const value = tried(spot);
    const items = settled(value);
    if (!(items instanceof Matrix))
      return items instanceof Fault && of(items) ? branch(otherwise, "", spot) : value === OMITTED ? 0 : value;
    if (!items.rows.some((row) => row.some((item) => item instanceof Fault && of(item)))) return items;
    return spread([items, settled(branch(otherwise, "", spot))], ([item = null, other = null]) =>
      item instanceof Fault && of(item) ? other : item,
    );
  };
}
/** Logical values of all arguments; texts and blanks among cells are passed over. */
function truths(given: readonly Run[], spot: Spot): boolean[] | Fault {
  const found: boolean[] = [];
  for (const run of given) {
    const value = run(spot);
    const fault = each(value, (item) => {
      if (isMany(value) && (item === null || typeof item === "string")) return undefined;
      const truth = truthOf(item);
      if (truth instanceof Fault) return truth;
      found.push(truth);
      return undefined;
    });
    if (fault !== null) return fault;
  }
  return found.length === 0 ? NOT_A_VALUE : found;
}
const together =
  (work: (found: readonly boolean[]) => boolean): SheetFunction =>
  (given, spot) => {
    const found = truths(given, spot);
    return found instanceof Fault ? found : work(found);
  };
const single = (run: Run | undefined, spot: Spot): Item => {
  const value = run === undefined ? null : settled(run(spot));
  return value instanceof Matrix ? (value.rows[0]?.[0] ?? null) : value;
};
export const LOGICAL: Functions = {
  IF: choose,
  IFERROR: instead(() => true),
  IFNA: instead(({ code }) => code === "#N/A"),
  IFS: (given, spot) => {
    for (let at = 0; at + 1 < given.length; at += 2) {
      const truth = truthOf(single(given[at], spot));
      if (truth instanceof Fault) return truth;
      if (truth) return branch(given[at + 1], 0, spot);
    }
    return NA;
  },
  SWITCH: (given, spot) => {
    const wanted = single(given[0], spot);
    if (wanted instanceof Fault) return wanted;
    let at = 1;
    for (; at + 1 < given.length; at += 2) {
      const item = single(given[at], spot);
      if (item instanceof Fault) return item;
      if (order(wanted, item) === 0) return branch(given[at + 1], 0, spot);
    }
    return at < given.length ? branch(given[at], 0, spot) : NA;
  },
  CHOOSE: (given, spot) => {
    const number = numberOf(single(given[0], spot));
    if (typeof number !== "number") return number;
    const run = given[Math.trunc(number)];
    return number < 1 || run === undefined ? NOT_A_VALUE : branch(run, 0, spot);
  },
  AND: together((found) => found.every(Boolean)),
  OR: together((found) => found.some(Boolean)),
  XOR: together((found) => found.filter(Boolean).length % 2 === 1),
  NOT: ofItems(1, ([item = null]) => {
    const truth = truthOf(item);
    return truth instanceof Fault ? truth : !truth;
  }),
  TRUE: () => true,
  FALSE: () => false,
};
