/** Tightening torques as people write them: a figure with its unit, read exactly in pound-feet or refused. */
import { exact, type Exact } from "../numbers/exact";
import type { CellValue } from "./cell-value";
import { readPlain } from "./number";
import type { Read } from "./read";
import { tidy } from "./text";

export type TorqueUnit = "lb-ft" | "N·m";
/** 1 lbf = 4.4482216152605 N and 1 ft = 0.3048 m, both exactly. */
const NEWTON_METRES = exact("4.4482216152605").mul(exact("0.3048"));
const POUND_FEET = /^(lbs?f?|pounds?)[ .·*-]*(ft|feet|foot)$|^(ft|foot|feet)[ .·*-]*(lbs?f?|pounds?)$/i;
const METRES = /^n(ewton)?s?[ .·*-]*m(et(re|er)s?)?$/i;
/** Unit that a word names, or null. */
function unitNamed(word: string): TorqueUnit | null {
  const text = word.replace(/\.$/, "").trim();
  return POUND_FEET.test(text) ? "lb-ft" : METRES.test(text) ? "N·m" : null;
}
/** Unit that a heading names, such as "Torque (Nm)" or "Clip torque lb-ft"; null when it names none, or both. */
export function torqueUnitOfHeading(heading: string): TorqueUnit | null {
  const text = tidy(heading);
  const feet = /\b(lbs?f?[ .·*/-]*(ft|feet|foot)|(ft|foot|feet)[ .·*/-]*lbs?f?)\b/i.test(text);
  const metres = /\bn[ .·*-]?m\b/i.test(text);
  return feet === metres ? null : feet ? "lb-ft" : "N·m";
}
/** A torque in pound-feet. A bare figure takes the unit of its heading; without one it is refused. 0 is a blank cell. */
export function readTorque(cell: CellValue, assume: TorqueUnit | null): Read<Exact> {
  const parts = typeof cell === "string" ? /^(.*\d)\s*(\p{L}.*)$/u.exec(tidy(cell)) : null;
  const read = readPlain(parts ? (parts[1] ?? "") : cell);
  if (read.kind !== "value") return read;
  const text = parts ? tidy(parts[0]) : read.text;
  if (read.value.equals(0)) return { kind: "missing", text };
  const unit = parts ? unitNamed(parts[2] ?? "") : assume;
  if (unit === null)
    return {
      kind: "refused",
      text,
      why: parts
        ? `"${parts[2] ?? ""}" is no unit of torque that is read here; type lb-ft or N·m`
        : "it has no unit; type lb-ft or N·m behind the number",
    };
  return { kind: "value", value: unit === "lb-ft" ? read.value : read.value.div(NEWTON_METRES), text: parts ? text : `${text} ${unit}` };
}
