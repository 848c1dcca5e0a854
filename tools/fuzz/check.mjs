/** What each judgement has to be: by the planted truth, and by what every answer owes its reader. */
import { DECISIONS, inService } from "./judge.mjs";
import { KINDS } from "./kinds.mjs";
import { PARTS, SINGLES } from "./readings.mjs";
import { SIGHTS } from "./sights.mjs";

const squeezed = (text) => String(text).normalize("NFKC").replace(/\s+/g, " ").trim().toLowerCase();
/** Headings of the register, as the public contract names them: a column that a log lacks goes by one of these. */
const REGISTER = [
  ...Object.values(PARTS).flatMap(({ register }) => [`${register} as-new`, `${register} now`]),
  ...Object.values(SINGLES).map(([heading]) => heading),
  ...Object.values(SIGHTS).map(({ heading }) => heading),
  "Block shell as-new",
  "Block shell now",
  "Nick at",
  "Section at nick as-new",
  "Section at nick now",
  "Unit",
  "Gear",
  "Construction",
].map(squeezed);
/** A sentence tells what to do when it bids something. */
const BIDS =
  /\b(type|fill|write|record|enter|rename|answer|choose|give|add|put|leave|measure|re-?measure|name|correct|format|say|state|inspect|look|take|replace|clear|set|check)\b/i;

/** Why a reason of NO VERDICT does not help; null when it does. */
export function unhelpful(reason, columns) {
  const said = squeezed(reason);
  const named =
    columns.some(({ heading }) => squeezed(heading).length > 0 && said.includes(squeezed(heading).replace(/:$/, ""))) ||
    REGISTER.some((heading) => said.includes(`"${heading}`));
  if (!named) return "names no column";
  return BIDS.test(reason) ? null : "does not say what to type";
}

/** The fault of one answer: `[fault, family]`, or null. */
export function faultOf(answer, row, columns) {
  const { decision, reason, more } = answer;
  if (!DECISIONS.includes(decision)) return ["no decision", String(decision)];
  if (typeof reason !== "string" || reason.trim() === "") return ["no reason", row.truth.family];
  if (/undefined|\bNaN\b|\[object|\bnull\b/.test(reason) && !columns.some((_, at) => /undefined|NaN|null/.test(String(row.cells[at]))))
    return ["a reason with a hole", row.truth.family];
  if (more.some((cell) => cell instanceof Error || cell === undefined || (typeof cell === "number" && Number.isNaN(cell))))
    return ["an error value", row.truth.family];
  const { wanted, family } = row.truth;
  if (wanted === "out" && inService(decision)) return [`false ${decision}`, family];
  if (wanted === "REMOVE" && decision !== "REMOVE") return [inService(decision) ? `false ${decision}` : "not REMOVE", family];
  if (decision === "NO VERDICT") {
    const why = unhelpful(reason, columns);
    if (why) return [`NO VERDICT ${why}`, family];
  }
  if (wanted === "in" && !inService(decision)) return [ALARM[family], decision];
  return null;
}
const ALARM = {
  clean: "alarm on a plain clean row",
  described: "alarm on a descriptive word",
  turned: "alarm under a turned heading, or one with its own choices",
};
export const isAlarm = (fault) => fault.startsWith("alarm");
export const kindsCount = Object.keys(KINDS).length;
