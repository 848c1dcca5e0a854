/** What a log says in words of the whole item: a result or a remark against its use, and KEEP, cannot both be right. */
import type { Finding } from "../check/finding";
import type { OpenCell } from "../log/besides";
import type { Cells } from "../log/cells";
import { SPEAKS_AGAINST } from "../log/merge-columns";
import { DENIED, readText } from "../reading/text";

/** Said of today whatever stands beside it. */
const DO_NOT = /\b(do not|don'?t) use\b/i;
const NOT_FOR_USE = /\bnot (to be used|(fit|safe|ok|acceptable|serviceable))\b/i;
const AGAINST =
  /\b(out of (service|use)|taken out|reject(ed)?|condemn(ed)?|quarantined?|unsafe|unfit|unserviceable|u\/s|scrap(ped)?|destroy(ed)?|discard(ed)?|removed? from (service|use)|tag(ged)?[- ]?out|withdrawn|fail(ed|s|ure)?|replace (now|soon|at once|immediately|before))\b/i;
/** Words beside it in a remark that date it, put it right or speak of another part. */
const OVER = /\b(was|were|been|returned|released|previous(ly)?|last|old|earlier|formerly|replaced|repaired|renewed|passed|if)\b/i;
const NO_RESULT = /^(no|f|ng|n\/g|bad|not ok)$/i;
/** What the words of a row say of the whole item, and the cells that nobody understands. */
export function wordFindings(cells: Cells): readonly Finding[] {
  const said = saidFinding(cells);
  const open = (cells.besides?.open ?? []).map((cell) => openFinding(cell));
  return said === null ? open : [said, ...open];
}
/** A filled cell under a heading that is not understood: it may condemn the item, so it asks. */
function openFinding({ heading, text }: OpenCell): Finding {
  return noVerdict(
    "column not understood",
    `"${text}" stands in the column "${heading}", which is not understood: answer in Log what it is, rename it, leave it out of the range, or put "Not judged:" before its heading.`,
  );
}
/** Against its use, said in the column of results; a remark counts only where it says so plainly. */
function saidFinding(cells: Cells): Finding | null {
  const result = readText(cells.value("result"));
  if (
    result.startsWith(SPEAKS_AGAINST) ||
    [NO_RESULT, DO_NOT, NOT_FOR_USE].some((words) => words.test(result)) ||
    (AGAINST.test(result) && !/\b(no|not|never) (reject|fail)/i.test(result))
  )
    return against(result, cells.heading("result"));
  const remark = readText(cells.value("remarks"));
  const plain = DO_NOT.test(remark) || (!OVER.test(remark) && (NOT_FOR_USE.test(remark) || (AGAINST.test(remark) && !DENIED.test(remark))));
  return plain ? against(remark, cells.heading("remarks")) : null;
}
function against(text: string, heading: string): Finding {
  const said = text.replace(`${SPEAKS_AGAINST}: `, "");
  return noVerdict(
    "what the log says",
    `"${said}" in "${heading}" speaks against its use: settle it, and clear or reword it when it no longer holds.`,
  );
}
function noVerdict(check: string, sentence: string): Finding {
  return {
    check,
    part: "",
    criterion: null,
    decision: "NO VERDICT",
    measured: null,
    original: null,
    limit: null,
    share: null,
    comesOut: null,
    basis: null,
    source: null,
    overload: false,
    sentence,
  };
}
