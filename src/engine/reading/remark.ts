/** What a remark says against an item: words of damage or against its use that nothing beside them denies. */
import { partsOf } from "./text";

/** Said of today whatever stands beside it. */
const DO_NOT_USE =
  /\b(do not|don'?t|must not( be)?|cannot be|can'?t be|not to be|should not( be)?|never( to be)?|shall not( be)?) (used?|lift(ed)?)\b/i;
/** Against its use, unless something puts it right. */
const AGAINST =
  /\b(out of (service|use)|taken out|reject(ed)?|condemn(ed)?|quarantined?|unsafe|unfit|unserviceable|unacceptable|u\/s|scrap(ped)?|destroy(ed)?|discard(ed)?|dropped|fell|withdraw|hold (for|until|pending|till)|remove(?= *$)|removed? from (service|use)|(red )?tag(ged)?[- ]?out|red tag(ged)?|withdrawn|fail(ed|s|ure)?|replace|on hold|not (fit|safe|ok|acceptable|serviceable|in service|passed)|no good|dangerous|not to be trusted|hazard(ous)?|suspect|defective|faulty|overload(ed)?|shock load(ed)?|(needs?|requires?|to be|must be|should be|awaiting|due for|send (away )?for|for) (repair(ed|ing|s)?|replac(ed|ing|ement)|renew(al|ed|ing)|scrap(ped|ping)?|weld(ed|ing)?|re-?test(ed|ing)?|ndt|examin(ed|ation)|parts|new \w+))\b/i;
/** Damage by its name. */
const DAMAGE =
  /\b(crack(s|ed|ing)?|bent|bend(s|ing)?|broken?|breaks?|torn|tears?|cuts?|fray(ed|ing|s)?|kink(s|ed)?|crush(ed|ing)?|birdcag(ed|ing)|stretch(ed|ing)?|elongat(ed|ion)|deform(ed|ation)|distort(ed|ion)|twisted|corroded|corrosion|pitted|pitting|rusted through|(heavy|heavily|bad(ly)?|deep|severe(ly)?) (rust(ed|y)?|worn|wear)|damaged?|goug(e|es|ed)|nick(s|ed)?|dent(s|ed)?|missing|seized|stuck|jammed|illegible|unreadable|burn(t|ed|s)?|melted|scorched|charred|heat(ed)?|welded|weld(s|ing)?|chafed|abraded|abrasion|worn( out| through)?|sprung|opened( up)?|split|snapped|parted|collapsed|flattened|not (legible|working|closing|fitted|turning|tight|seated|straight))\b/i;
/** The thing is done with: what was wrong has been put right. */
const MENDED =
  /\b(repaired|replaced|renewed|rectified|mended|made good|put right|(re)?released|returned to service|new (one|\w+) (was |now )?fitted|fitted (a )?new|passed)\b/i;
/** Not yet: to be repaired, replace when, if repaired. */
const NOT_YET =
  /\b(to be|not|never|until|unless|needs?|must be|should be|will be|awaiting|before|if|when|once|can be|could be|cannot be|being) (\w+ )?(repaired|replaced|renewed|rectified|mended|released|returned|passed|fitted)\b/i;
/** "Crack test clear": looked for and not found. */
const TEST_PASSED =
  /\b(test(ed)?|check(ed)?|mpi|ndt|mt|pt|dye pen\w*|examin\w+|inspect\w+)( for [a-z ]+)?:? (was |all )?(clear|ok|okay|good|negative|nil|none|passed|satisfactory)$/i;
/** Denials reach to the end of their clause. */
const DENY = /\b(no|not|nor|never|neither|without|free (of|from)|nil|none|non|n't)\b/i;
/** Wear as it is on gear in use, and paint, which is not read. */
const LESSENED =
  /\b(slight(ly)?|light(ly)?|little|minor|normal|usual|superficial|surface|hardly|barely|a bit)( \w+)? (worn|wear|rust(y|ed)?|corrosion|corroded|abrasion)\b|\b(paint|coating|varnish|label colour) (is |a bit |slightly )?(worn|damaged?|chipped|missing|gone)\b/gi;
/** A clause that only says that it was put right: of what stands before it. */
const MENDED_ALONE =
  /^(it |now |since |then |later |is |was |been |has |have |all )*(repaired|replaced|renewed|rectified|mended|made good|put right|released|returned to service|new one (was |now )?fitted|passed)( (on|in|by|since|again|now|today)\b.*)?$/i;
/** The word that speaks against the item; null when nothing does. */
export function saidAgainst(remark: string): string | null {
  const whole = DO_NOT_USE.exec(remark);
  if (whole) return whole[0];
  const parts = partsOf(remark.replace(/[.!] |\b(but|however|yet|although|though|and)\b/gi, ";").replace(LESSENED, " ")).map((part) =>
    part.trim(),
  );
  for (const [at, part] of parts.entries()) {
    const found = AGAINST.exec(part) ?? DAMAGE.exec(part);
    if (found === null || DENY.test(part.slice(0, found.index))) continue;
    if (isMended(part, found.index) || TEST_PASSED.test(part)) continue;
    if (parts.slice(at + 1).some((later) => MENDED_ALONE.test(later))) continue;
    return found[0];
  }
  return null;
}
/** Put right in the same breath: "bent pin replaced", "replaced the bent pin", never "replaced by a bent pin". */
function isMended(part: string, at: number): boolean {
  const mended = MENDED.exec(part);
  if (mended === null || NOT_YET.test(part)) return false;
  return mended.index > at || !/\b(by|with)\b/i.test(part.slice(mended.index, at));
}
/** Whether a remark records that something was repaired or replaced. */
export function tellsRepair(remark: string): boolean {
  return MENDED.test(remark) && !NOT_YET.test(remark) && !DENY.test(remark);
}
/** What a name, a number or an address may hold and never should: a plain word against the item, wherever it stands. */
const PLAINLY =
  /\b(do not use|don'?t use|not to be used|must not be used|condemned|rejected|scrapped|unfit|unsafe|unserviceable|tagged[- ]out|quarantined|out of service|cracked|failed)\b/i;
export const speaksPlainly = (text: string): boolean => PLAINLY.test(text);
