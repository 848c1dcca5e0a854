/** The figures behind the verdicts as a list, for the pane and for the page of covered clauses. */
import type { BasisId } from "./bases";
import { exact, toNumber } from "./exact";
import { GEAR } from "./gear/index";
import type { Criterion, Limit } from "./gear/kind";
import { cite } from "./sources";
import { tableName } from "./tables/lookup";

export interface SourceLine {
  readonly basis: BasisId;
  readonly document: string;
  readonly clause: string;
  readonly gear: string;
  readonly check: string;
  readonly figure: string;
  readonly status: string;
  readonly criterion: string;
}

const inPercent = (share: string): string => String(Number((toNumber(exact(share)) * 100).toPrecision(4)));

/** A limit in words: "above 5 % of as-new, at most 1/4 in (6 mm)". */
export function limitInWords(limit: Limit): string {
  if (limit.word === "any") return "any";
  if (limit.word === "fewer") return "table" in limit ? `fewer than in ${tableName(limit.table)}` : `less than ${limit.times} times the size`;
  if (limit.word === "below") return `below ${tableName(limit.table)}`;
  if ("table" in limit) return "from the count of the table by rope category number";
  const worded = (figure: string): string => (limit.word === "above" ? `more than ${figure}` : `${figure} or more`);
  if ("share" in limit) {
    const share = `${inPercent(limit.share)} %`;
    return limit.cap ? `${worded(share)}, at most ${limit.cap.in} in (${limit.cap.mm} mm)` : worded(share);
  }
  if ("area" in limit) return worded(`${inPercent(limit.area)} % of the area`);
  if ("length" in limit) return worded(`${limit.length} ${limit.unit}`);
  return "degrees" in limit ? worded(`${limit.degrees} degrees`) : worded(String(limit.count));
}

const STRESSED = { high: "highly stressed", moderate: "moderately stressed", low: "lightly stressed" } as const;

/** Where alone a criterion holds: constructions, stress classes, wear in two directions. */
function wherefor(c: Criterion): readonly string[] {
  return [
    ...(c.onlyFor === undefined ? [] : [c.onlyFor.join(", ")]),
    ...(c.stress === undefined ? [] : [`${c.stress.map((stress) => STRESSED[stress]).join(" and ")} parts`]),
    ...(c.twoWays === true ? ["where wear runs in two directions"] : []),
  ];
}

export function listSources(): readonly SourceLine[] {
  return GEAR.flatMap((kind) =>
    kind.criteria.map((c) => ({
      basis: c.basis,
      document: cite({ document: c.source.document, clause: "" }),
      clause: c.source.clause,
      gear: kind.id,
      check: c.check,
      figure: [limitInWords(c.limit), ...wherefor(c)].join(", "),
      status: c.status,
      criterion: c.id,
    })),
  );
}
