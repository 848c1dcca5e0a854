/** The built worksheet functions, loaded as a host loads them. */
import { readFileSync } from "node:fs";
import vm from "node:vm";

class CellError extends Error {
  constructor(code, message = "") {
    super(message);
    this.code = code;
  }
}
const CODES = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  invalidNumber: "#NUM!",
  divisionByZero: "#DIV/0!",
  invalidReference: "#REF!",
  nullReference: "#NULL!",
};

/** `JUDGE(headings, rows)` of the file: one `{decision, reason}` a row, or the fault that it threw. */
export function loadJudge(file) {
  const functions = new Map();
  vm.runInNewContext(readFileSync(file, "utf8"), {
    CustomFunctions: { associate: (id, fn) => functions.set(id, fn), Error: CellError, ErrorCode: CODES },
  });
  const judge = functions.get("JUDGE");
  if (!judge) throw new Error(`${file} has no JUDGE`);
  return (headings, rows) => {
    try {
      return judge([headings], rows, null).map(([decision, reason, ...more]) => ({ decision, reason, more }));
    } catch (fault) {
      return { fault: String(fault?.stack ?? fault) };
    }
  };
}
/** Worst first. */
export const DECISIONS = ["REMOVE", "EXAMINE", "NO VERDICT", "DRESS", "WATCH", "KEEP"];
export const inService = (decision) => ["DRESS", "WATCH", "KEEP"].includes(decision);
