/** What a log says in words of the whole item: a result or a remark against its use, and KEEP, cannot both be right. */
import { type Finding, ofItem } from "../check/finding";
import { columnOf } from "../check/read-sizes";
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
  const record = recordFinding(cells);
  const open = (cells.besides?.open ?? []).map((cell) => openFinding(cell));
  return record === null ? open : [record, ...open];
}
/** A filled cell under a heading that is not understood: it may condemn the item, so it asks. */
function openFinding({ heading, text }: OpenCell): Finding {
  return ofItem("not understood", "NO VERDICT", "column not understood", {
    heading,
    typed: text,
    type: 'answer in Log what it is, rename it, leave it out of the range, or put "Not judged:" before its heading',
  });
}
/** Against its use, said in the column of results; a remark counts only where it says so plainly. */
function recordFinding(cells: Cells): Finding | null {
  const result = readText(cells.value("result"));
  if (
    result.startsWith(SPEAKS_AGAINST) ||
    [NO_RESULT, DO_NOT, NOT_FOR_USE].some((words) => words.test(result)) ||
    (AGAINST.test(result) && !/\b(no|not|never) (reject|fail)/i.test(result))
  )
    return against(result, cells, "result");
  const remark = readText(cells.value("remarks"));
  const plain = DO_NOT.test(remark) || (!OVER.test(remark) && (NOT_FOR_USE.test(remark) || (AGAINST.test(remark) && !DENIED.test(remark))));
  return plain ? against(remark, cells, "remarks") : null;
}
function against(text: string, cells: Cells, field: "result" | "remarks"): Finding {
  return ofItem("record", "NO VERDICT", "what the log says", { ...columnOf(cells, field), typed: text.replace(`${SPEAKS_AGAINST}: `, "") });
}
