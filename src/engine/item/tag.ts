import type { Cells } from "../log/cells";
import { showDate } from "../numbers/calendar";
import { readDate } from "../reading/date";
import { DENIED, DOUBT, readText } from "../reading/text";
import { ahead, later } from "./day";

/** Tagged out and not released, and why; or in service, with a note where a tag was lifted. */
export type TagState =
  | {
      readonly out: true;
      /** "Tagged out on 2026-01-05" */
      readonly label: string;
      readonly because: string;
      readonly type: string | null;
    }
  | { readonly out: false; readonly note: string | null };
/** Words in "Released by" that name nobody: an answer or a mark where the name should be. */
const NO_NAME =
  /^((yes|y|ok|okay|done|true|released?|cleared|approved|accepted|passed|signed|signature|initials|same|ditto|as above|nil|open|date|name|someone|anyone|by|on|and|(a |the )?(qualified|competent) person)\b[ .,;:-]*)+$/i;
/** Words of refusal, of waiting or of a condition: wherever they stand, nobody has released the item. */
const NO_RELEASE =
  /^see\b|\b(none|nobody|no[ -]?one|cannot|reject\w*|refus(e|es|ed|al|ing)|den(y|ied|ies)|declin(e|es|ed|ing)|disapprov\w*|unreleased|unsigned|unapproved|await\w*|wait(s|ing|ed)?|pending|to be|will be|should be|must be|tb[acd]|hold|requested|required|needed|asked|same as|ditto|signature|cancell?ed|withdrawn|revoked|fail(s|ed)?|unknown|unfit|scrap(ped)?|quarantined?|withheld|condemned|prohibit\w*|forbidden|to follow|expected|outstanding|missing|illegible|unreadable|unnamed|subject to|provided|conditional\w*|until|unless|if|when|after|once|before)\b/i;
/** Parts of a date in what stands for the tag; 1 alone is a tick. */
const PART_OF_DATE =
  /\d|\b(jan(uary)?|feb(ruary)?|mar(ch)?|apr(il)?|may|june?|july?|aug(ust)?|sept?(ember)?|oct(ober)?|nov(ember)?|dec(ember)?|(mon|tues|wednes|thurs|fri|satur|sun)day|yesterday|today|last \w+|week|month|year)\b/i;
/** Whether "Released by" holds a name, with nothing that takes the release back. */
const names = (by: string): boolean =>
  /\p{L}{2}/u.test(by) && readDate(by).kind !== "value" && ![DENIED, DOUBT, NO_NAME, NO_RELEASE].some((pattern) => pattern.test(by));
/**
 * A tagged-out item stays out until a release by a named qualified person is recorded, dated on or after the tag and not
 * after the day of judging, where that is known. Of a tag with part of a date it cannot be told whether the release is later.
 */
export function tagState(cells: Cells, asOf: number | null): TagState {
  const tagged = cells.value("tagged");
  const text = readText(tagged);
  if (text === "" || /^(no\.?|n|none|nil|false|0|[-—–]+|not (tagged( out)?|applicable)|in service|n\/?a)$/i.test(text))
    return { out: false, note: null };
  const taggedOn = readDate(tagged);
  const by = readText(cells.value("releasedBy"));
  const on = readDate(cells.value("releasedOn"));
  const since = taggedOn.kind === "value" ? ` on ${showDate(taggedOn.value)}` : "";
  const stays = (because: string, type: string | null = null): TagState => ({ out: true, label: `Tagged out${since}`, because, type });
  if (taggedOn.kind === "refused" && text !== "1" && PART_OF_DATE.test(text))
    return stays(
      `"${text}" in "${cells.heading("tagged")}" cannot be read as a date (${taggedOn.why}), so no release can be told to be later`,
    );
  if (!names(by))
    return stays(
      by === ""
        ? "no release by a named qualified person is recorded"
        : `"${by}" in "${cells.heading("releasedBy")}" is no release by a named qualified person`,
      `fill "${cells.heading("releasedBy")}" and "${cells.heading("releasedOn")}" only after that release`,
    );
  if (on.kind !== "value") return stays(`the release by ${by} has no date`, `fill "${cells.heading("releasedOn")}"`);
  const released = `the release by ${by} is dated ${showDate(on.value)}`;
  if (taggedOn.kind === "value" && on.value < taggedOn.value) return stays(`${released}, before the tag`);
  if (later(on.value, asOf)) return stays(`${released}, which is ${ahead(asOf)}`);
  return {
    out: false,
    note: `Was tagged out${taggedOn.kind === "value" ? since : " (the tag has no date)"}; released by ${by} on ${showDate(on.value)}`,
  };
}
