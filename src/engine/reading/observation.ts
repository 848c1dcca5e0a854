/** What a person typed of what the eye found, in a column of faults or of what is in order. */
import { showDate } from "../numbers/calendar";
import type { CellValue } from "./cell-value";
import { isBeside, isInOrder } from "./in-order";
import { missing, type Read, refused } from "./read";
import { DENIED, DOUBT, ERROR_TEXT, isDateCell, partsOf, tidy } from "./text";

/** "sound" when what was looked at is in order, "fault" when it is not. */
export type Seen = "sound" | "fault";
const ALWAYS_FAULT =
  /^(fail|failed|fails|bad|poor|defect|defective|damaged|broken|unsat|unsatisfactory|unserviceable|reject|rejected|not ok|not good|worn out)\b/i;
const SAW = "(?:found|seen|noted|observed|detected|present|visible|evident)";
/** Damage as a word of its own: "ferrule cracked". */
const HARMED =
  "cracked|bent|stretched|kinked|crushed|torn|burnt|burned|corroded|pitted|deformed|distorted|elongated|melted|frayed|damaged|broken|parted|attacked";
const FOUND = new RegExp(
  `^(${HARMED}|yes|y|found|present|seen|visible|twisted|cut|worn|welded|heavy|severe|slight|minor|some|light|hairline|modified)\\b`,
  "i",
);
/** The damage by its name alone, with where it is: "crack found", "hairline crack at the eye". */
const NAMED = new RegExp(
  `^(?:a |an |one |two |several |small |fine |hairline |deep |long )*(?:cracks?|kinks?|cuts?|tears?|holes?|burns?|pitting|snags?|gouges?|deformations?|distortions?|elongation|broken (?:wires?|welds?)|arc strikes?)(?: ${SAW})?(?: (?:at|in|on|near|across|by) .*)?$`,
  "i",
);
const OF_SUBJECT =
  /^(?:(?:all|both|the|tag|label|plate|id|shape|ferrules?|saddles?|wedge|thread|seam|welds?|edges?|hinge|spring|lettering|marks?|markings?|swl|wll|latch|catch|pin|nuts?|bolts?|cotters?|stitching|stitches|fittings?|threads?|sheaves?|swivel|fasteners|keepers?|in|is|are|still|clearly|fully|well|properly|correctly) )+/i;
const NOT_IN_ORDER =
  /^(no|n|none|none fitted|no (latch|tag|label|plate|markings?|identification|pin|cotters?|nuts?|fasteners|fittings|stitching))$|^(missing|gone|lost|absent|illegible|not (legible|readable|fitted|working|seated|free|true|tight)|loose|seized|stiff|stuck|worn|faded|bent|sprung|cracked|torn|cut)\b/i;
/** Damage, wherever in the cell it is named. */
const DAMAGE = new RegExp(`\\b(${HARMED}|broken|frayed|birdcaged)\\b`, "i");
/** Words beside damage that lessen it, doubt it or say that it was or may be: a person has to say what is there now. */
const NOT_PLAIN =
  /\b(slight(ly)?|little|bit|minor|some|few|light(ly)?|hardly|barely|possib(le|ly)|perhaps|may|might|could|can|would|looks?|seems?|appears?|suspect(ed)?|signs? of|check(ed)?|if|when|unless|was|were|been|had|previous(ly)?|formerly|earlier|last|old|before|replaced?|renewed|repair(ed)?|fixed|straightened|corrected|mended|dressed|removed|free (of|from)|only)\b/i;
/** "Cracks: none" is one answer. */
const ANSWERED =
  /\s*(?::|=|\s[-–—])\s*((?:none|nil|nothing)(?: found| seen| noted| visible| present| observed)?|n\/d)(?=\s*(?:$|[;,.)]))/gi;
/** Nothing is fitted and nothing has to be: a latch on a hook without one, fittings on a plain sling. */
const NOT_REQUIRED = /^((none|not|no latch) required|none fitted[,;]? none required|n\/?r)$/i;
/** A part that is not there, which says nothing of whether it has to be. */
const NOT_FITTED = /^(none|not|no (end )?fittings?) fitted$|^no (end )?fittings?$/i;
export interface SeenOptions {
  /** True where "none required" is in order. */
  readonly mayBeAbsent?: boolean;
  /** Words that are sound in this column and not in others, in small letters. */
  readonly sound?: readonly string[];
  /** Words that are at fault in this column and not in others. */
  readonly fault?: readonly string[];
}
/**
 * An observation. In a "fault" column yes means that the fault is there; in a "sound" column yes means that it is in
 * order. A bare tick or cross is refused: it can mean either. 0 is a blank cell on some hosts, so it is missing.
 */
export function readSeen(cell: CellValue, column: "fault" | "sound", also: SeenOptions = {}): Read<Seen> {
  if (cell === null || cell === undefined || cell === "") return missing();
  if (isDateCell(cell)) return refused(showDate(cell.serial), `it is a date; type ${column === "fault" ? "none or found" : "yes or no"}`);
  if (typeof cell === "boolean") return seen(cell !== (column === "fault") ? "sound" : "fault", cell ? "TRUE" : "FALSE");
  if (typeof cell === "number")
    return cell === 0 ? missing("0") : refused(String(cell), `type ${column === "fault" ? "none or found" : "yes or no"}`);
  const text = tidy(cell);
  if (text === "") return missing();
  if (ERROR_TEXT.test(text)) return refused(text, "the cell shows an error; type what was seen");
  if (DOUBT.test(text)) return refused(text, "it is marked as doubtful; look again and type what was seen");
  if (/^(n\/?a|n\.a\.?|-+|—|–|not (applicable|checked|looked at|inspected|done)|tbd)$/i.test(text)) return missing(text);
  const needless = NOT_REQUIRED.test(text);
  if (also.mayBeAbsent === true && needless) return seen("sound", text);
  if (also.mayBeAbsent === true && NOT_FITTED.test(text))
    return refused(text, "it does not say whether one has to be there; type none required where there rightly is none, else no");
  const parts = partsOf(text.replace(ANSWERED, " $1"));
  const [first = text] = parts;
  if (parts.some((part) => also.fault?.includes(part.toLowerCase()) === true)) return seen("fault", text);
  const isOwn = (part: string): boolean =>
    also.sound?.includes(part.toLowerCase()) === true || also.sound?.includes(part.toLowerCase().replace(OF_SUBJECT, "")) === true;
  if (isOwn(first) && parts.every((part) => isOwn(part) || isBeside(part))) return seen("sound", text);
  const faults = column === "fault" ? [ALWAYS_FAULT, FOUND, NAMED] : [ALWAYS_FAULT, NOT_IN_ORDER];
  if (faults.some((pattern) => pattern.test(text) || pattern.test(first))) return seen("fault", text);
  // A good word counts only when nothing beside it could take it back.
  const isOne = (part: string): boolean => isInOrder(part, column) || isOwn(part);
  const isGood = (part: string): boolean => isOne(part) || isSeveral(part, isOne);
  if (isGood(first) && parts.every((part) => isGood(part) || isBeside(part))) return seen("sound", text);
  if (DAMAGE.test(text) && !DENIED.test(text) && !/\b(none|nil|nothing)\b/i.test(text) && !NOT_PLAIN.test(text)) return seen("fault", text);
  if (needless && column === "sound") return refused(text, "this gear is never without it; type yes or no");
  return refused(text, `it is not clear whether that is good or bad; type ${column === "fault" ? "none or found" : "yes or no"}`);
}
const seen = (value: Seen, text: string): Read<Seen> => ({ kind: "value", value, text });
/** A bare denial beside another word may take that word back: "no good". */
const BARE = /^(no|n|none|nil|not any|nothing|never|neg|negative|-ve|0|zero|absent|free|y|yes)$/i;
/** "OK, works" without its comma: good words one behind the other, of which each is whole. */
function isSeveral(part: string, isOne: (part: string) => boolean): boolean {
  const words = part.split(/\s+(?:(?:and|&|\+)\s+)?/);
  if (words.length > 8) return false;
  for (let at = 1; at < words.length; at += 1) {
    const one = words.slice(0, at).join(" "),
      rest = words.slice(at).join(" ");
    // What stands behind "not seen" may be what was not seen.
    if (/^(not|none|nothing|nil|never)\b/i.test(one)) continue;
    if ((BARE.test(one) && !/^y(es)?$/i.test(one)) || BARE.test(rest) || !isOne(one)) continue;
    if (isOne(rest) || isSeveral(rest, isOne)) return true;
  }
  return false;
}
