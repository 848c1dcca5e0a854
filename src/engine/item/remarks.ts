/** What a row says in words of the whole item, and what stands in it beside the cells that are read. */
import { type Finding, ofItem } from "../check/finding";
import { columnOf } from "../check/read-sizes";
import { field } from "../columns";
import type { OpenCell, UnreadCell } from "../log/besides";
import type { Cells } from "../log/cells";
import { readRemark } from "../reading/remark";
import { readResult } from "../reading/result";
import { readText } from "../reading/text";
import { earlierFindings } from "./earlier";

/** Findings on a result or a remark against the item's use, on older readings that were worse, and on cells that nobody understands. */
export function wordFindings(cells: Cells): readonly Finding[] {
  const { besides } = cells;
  const of = [resultFinding(cells), remarkFinding(cells)].filter((found) => found !== null);
  if (besides === undefined) return of;
  return [...of, ...besides.open.map(openFinding), ...besides.unread.map(unreadFinding), ...earlierFindings(cells, besides.earlier)];
}
const SAYS_SO = "takes it out of service: the log itself says so";
const UNCLEAR = "is no plain word for its use and may speak against its use";
const AGAINST = "speaks against its use";
/** What the log itself says of the item: a plain rejection stands, and a word that is neither good nor a rejection is asked about. */
function resultFinding(cells: Cells): Finding | null {
  const read = readResult(cells.value("result"));
  if (read === null || read.said === "good") return null;
  const at = { ...columnOf(cells, "result"), typed: read.text };
  if (read.said === "rejected")
    return ofItem("record", "REMOVE", "what the log says", {
      ...at,
      because: SAYS_SO,
      type: "clear the word only when it no longer holds",
    });
  return ofItem(
    "record",
    "NO VERDICT",
    "what the log says",
    read.said === "unclear"
      ? { ...at, because: UNCLEAR, type: "settle it, then type passed or rejected, or clear it" }
      : { ...at, because: AGAINST, type: "settle it, and clear or reword it when it no longer holds" },
  );
}
/** A remark that tells of damage or speaks against use, and one with a word that is not known: no column records either. */
function remarkFinding(cells: Cells): Finding | null {
  const remark = readText(cells.value("remarks"));
  const says = remark === "" ? null : readRemark(remark);
  if (says === null) return null;
  return ofItem("record", says.how === "against" ? "EXAMINE" : "NO VERDICT", "remark", {
    ...columnOf(cells, "remarks"),
    typed: remark,
    because:
      says.how === "against" ? `${AGAINST} ("${says.word}")` : `may speak against its use: "${says.word}" is not known to be harmless`,
    type:
      says.how === "against"
        ? "read the remark and record it in its column, then reword it"
        : "read the remark and record it in its column, then reword it, or set the column aside",
  });
}
/** A filled cell under a heading that is not understood: it may condemn the item, so it asks. */
function openFinding({ heading, text, proposal, field: read }: OpenCell): Finding {
  if (read !== undefined)
    return ofItem("record", "NO VERDICT", "record", {
      field: read,
      heading,
      typed: text,
      because: AGAINST,
      type: "record it in its own column, then reword it",
    });
  return ofItem("not understood", "NO VERDICT", "column not understood", {
    heading,
    typed: text,
    ...(proposal === null ? {} : { because: `it may be "${field(proposal).heading}"` }),
    type: 'answer in Log what it is, rename it, leave it out of the range, or put "Not judged:" before its heading',
  });
}
/** Beside a reading that counts stands one of the same thing that cannot be read. */
function unreadFinding({ field: id, heading, text }: UnreadCell): Finding {
  return ofItem("unreadable", "NO VERDICT", `second reading of ${field(id).heading.toLowerCase()}`, {
    field: id,
    heading,
    typed: text,
    because: "it stands beside a reading of the same thing and cannot be read; put the reading there, or clear it",
  });
}
