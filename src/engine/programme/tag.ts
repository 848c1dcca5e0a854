/** Tagging out and releasing, as plain data. A release needs a named person, a date and what was done; all three are refused here. Pure. */
import type { FieldId } from "../columns";
import { tagState } from "../item/tag";
import { cellsOf } from "../log/cells";
import { showDate } from "../numbers/calendar";
import type { CellValue } from "../reading/cell-value";
import { readText } from "../reading/text";
import { historyRow, type HistoryRow, ROUND_HEAD, VERDICT } from "./history";
import type { RegisterItem, RegisterWrite } from "./post";
import { type Hash, openSeals, type KeptRound, sealRows } from "./seals";

export const TAG = "tag out";
export const RELEASE = "release";
/** Gear that is made unusable never comes back. */
export const DISPOSAL = "disposal";
export type TagAct = typeof TAG | typeof RELEASE | typeof DISPOSAL;
export interface TagWanted {
  readonly act: TagAct;
  readonly id: string;
  /** Who tags, releases or disposes. */
  readonly by: string;
  /** Why it is tagged, what was done before the release, how it was made unusable. */
  readonly words: string;
}
export interface TagRequest {
  readonly wanted: TagWanted;
  readonly item: RegisterItem;
  readonly day: number;
  readonly rules: string;
  readonly history: readonly HistoryRow[];
  readonly kept: readonly KeptRound[];
  /** Name under which the rows stand in the history. */
  readonly part: string;
  readonly hash: Hash;
}
const ASKS: Readonly<Record<TagAct, readonly [who: string, what: string]>> = {
  [TAG]: ["Name who tags it out.", "Say why it is tagged out."],
  [RELEASE]: ["Name the qualified person who releases it.", "Say what was done before it is released."],
  [DISPOSAL]: ["Name who made it unusable.", "Say how it was made unusable."],
};
export function planTag(
  request: TagRequest,
):
  | { readonly ok: true; readonly rows: readonly HistoryRow[]; readonly writes: readonly RegisterWrite[] }
  | { readonly ok: false; readonly why: string } {
  const { wanted, item, day } = request;
  const [who, what] = ASKS[wanted.act];
  const by = readText(wanted.by);
  const words = readText(wanted.words);
  if (!/\p{L}{2}/u.test(by)) return { ok: false, why: `${who} Nothing was written.` };
  if (!/\p{L}{2}/u.test(words)) return { ok: false, why: `${what} Nothing was written.` };
  const cells = new Map(item.cells);
  const state = tagState(cellsOf(cells, { units: new Map(), names: new Map() }), day);
  if (wanted.act === RELEASE && !state.out) return { ok: false, why: `${item.id} is not tagged out. Nothing was written.` };
  const disposed = request.history.some((row) => row.Check === DISPOSAL && row.Id.toLowerCase() === item.id.toLowerCase());
  if (disposed) return { ok: false, why: `${item.id} was made unusable and stays out. Nothing was written.` };
  const set: readonly (readonly [FieldId, CellValue])[] =
    wanted.act === RELEASE
      ? [
          ["releasedBy", by],
          ["releasedOn", { serial: day }],
        ]
      : [
          ["tagged", { serial: day }],
          ["releasedBy", ""],
          ["releasedOn", ""],
        ];
  for (const [id, value] of set) cells.set(id, value);
  const after = tagState(cellsOf(cells, { units: new Map(), names: new Map() }), day);
  if (after.out === (wanted.act === RELEASE))
    return {
      ok: false,
      why: `${after.out ? after.because : "the tag would not hold"}. Nothing was written.`.replace(/^./, (c) => c.toUpperCase()),
    };
  const row = (more: Partial<HistoryRow>): HistoryRow =>
    historyRow({ Date: showDate(day), Id: item.id, By: by, "Rule sets": request.rules, Round: request.part, ...more });
  const first = request.history.reduce((most, one) => Math.max(most, Number(one.Number) || 0), 0) + 1;
  const rows = [
    row({
      Id: "",
      Check: ROUND_HEAD,
      Reading: `${wanted.act} of ${item.id}`,
      Joins: openSeals(request.history, request.kept, request.part).join(" "),
    }),
    row({ Check: wanted.act, Reading: words, Decision: wanted.act === RELEASE ? "" : "REMOVE" }),
    // A release gives no verdict: the readings do.
    ...(wanted.act === RELEASE ? [] : [row({ Check: VERDICT, Reading: `${wanted.act}: ${words}`, Decision: "REMOVE" })]),
  ].map((one, at) => ({ ...one, Number: String(first + at) }));
  return { ok: true, rows: sealRows(rows, "", request.hash), writes: set.map(([id, value]) => ({ id: item.id, field: id, value })) };
}
