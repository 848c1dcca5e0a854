import { exact, toNumber } from "../numbers/exact";
import { tableName } from "../tables/look-up";
import type { Limit } from "./criterion";

/** A share in percent, as a limit prints it: 1/240 is 0.4167. */
export const inPercent = (share: string): string => String(Number((toNumber(exact(share)) * 100).toPrecision(4)));
/** A limit in words: "above 5 % of as-new, at most 1/4 in (6 mm)". */
export function limitInWords(limit: Limit): string {
  if (limit.word === "any") return "any";
  if (limit.word === "fewer")
    return "table" in limit
      ? `fewer than in ${tableName(limit.table)}`
      : `less than ${limit.times} times the size${limit.least ? `, or than ${limit.least.in} in` : ""}`;
  if (limit.word === "maker") return `${limit.comesOut === "above" ? "more" : "less"} than the maker's figure in the log`;
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
