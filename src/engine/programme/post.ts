/** What posting a round does, as plain data: rows for the history, cells for the register, what is refused and why. Pure. */
import type { Finding } from "../check/finding";
import { field, type FieldId } from "../columns";
import { type Decision, rank } from "../decision";
import { GEAR } from "../gear/index";
import type { ItemVerdict } from "../item/verdict";
import { showDate } from "../numbers/calendar";
import { toNumber } from "../numbers/exact";
import { namedUnit } from "../numbers/lengths";
import { matchKind } from "../names/gear-name";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { readLength } from "../reading/length";
import { readCount, readDegrees } from "../reading/number";
import { readText } from "../reading/text";
import { type Source, SOURCES } from "../rules/documents";
import type { HouseLimits } from "../rules/house-limits";
import type { BasisId } from "../rules/rule-sets";
import { historyRow, type HistoryRow, ROUND_HEAD, SEEN, VERDICT } from "./history";
import { cellsOfList, judgeList, type ListLine, speaksAgainst } from "./judge-list";
import { lineNamed, linesOf } from "./lines";
import { cellText, type RoundKind } from "./round";
import { type Hash, openSeals, type KeptRound, sealRows } from "./seals";

/** A line of a round sheet as it was filled. */
export interface FilledLine {
  readonly role: "check" | "taken" | "known" | "gauge";
  readonly now: FieldId;
  readonly label: string;
  readonly asNew: CellValue;
  readonly reading: CellValue;
  readonly found: CellValue;
  readonly gauge: string;
  readonly was: string;
  /** As-new size as the sheet was made with; another one that stands there now is a change of the as-new size. */
  readonly asNewWas: string;
  readonly required: boolean;
}
export interface FilledItem {
  readonly id: string;
  readonly gear: string;
  readonly place: string;
  readonly inspectedWas: string;
  /** Words beside the item itself, such as "not found". */
  readonly state: string;
  readonly lines: readonly FilledLine[];
}
export interface FilledRound {
  readonly round: string;
  readonly title: string;
  readonly kind: RoundKind;
  readonly basis: readonly BasisId[];
  readonly by: string;
  readonly date: CellValue;
  readonly items: readonly FilledItem[];
}
/** A row of the register, with what stands in its cells as text. */
export interface RegisterItem {
  readonly id: string;
  readonly cells: ReadonlyMap<FieldId, CellValue>;
}
export interface Posting {
  readonly rows: readonly HistoryRow[];
  /** The name under which this posting's rows stand: that of the round, and a number from the second posting on. */
  readonly part: string;
  /** Cells of the register to write. */
  readonly writes: readonly RegisterWrite[];
  readonly posted: number;
  readonly inspected: readonly string[];
  /** Readings that were not posted, and items that are not complete, each with why. */
  readonly refused: readonly Told[];
  readonly incomplete: readonly Told[];
  /** Cells that somebody else changed meanwhile: shown, not overwritten. */
  readonly changedMeanwhile: readonly Told[];
  readonly verdicts: readonly { readonly id: string; readonly decision: Decision; readonly short: string }[];
}
export interface Told {
  readonly id: string;
  readonly line: string;
  readonly why: string;
}
export interface RegisterWrite {
  readonly id: string;
  readonly field: FieldId;
  readonly value: CellValue;
}
export interface PostingRequest {
  readonly round: FilledRound;
  readonly register: readonly RegisterItem[];
  /** Columns that the register has. */
  readonly fields: ReadonlySet<FieldId>;
  readonly history: readonly HistoryRow[];
  readonly kept: readonly KeptRound[];
  readonly house?: HouseLimits | undefined;
  /** Serial day of posting. */
  readonly today: number;
  readonly hash: Hash;
}
export interface Refusal {
  readonly ok: false;
  readonly why: string;
}
/** Plans a posting; a round without a name or a usable date is refused whole. */
export function planPosting(request: PostingRequest): ({ readonly ok: true } & Posting) | Refusal {
  const { round, today } = request;
  if (!/\p{L}{2}/u.test(round.by)) return { ok: false, why: "Fill in who inspected, then post again; nothing was written." };
  const date = readDate(round.date);
  if (date.kind === "missing") return { ok: false, why: "Fill in the date of the inspection, then post again; nothing was written." };
  if (date.kind === "refused")
    return { ok: false, why: `The date "${date.text}" cannot be used: ${date.why}. Put it right, then post again; nothing was written.` };
  if (date.value > today)
    return { ok: false, why: `The date ${date.text} is later than today. Put it right, then post again; nothing was written.` };
  return { ok: true, ...new Poster(request, date.value).post() };
}
const partOf = (round: string, part: string): boolean => part === round || part.startsWith(`${round}/`);
class Poster {
  private readonly refused: Told[] = [];
  private readonly incomplete: Told[] = [];
  private readonly changed: Told[] = [];
  private readonly writes: RegisterWrite[] = [];
  private readonly rows: HistoryRow[] = [];
  private readonly inspected: string[] = [];
  private readonly verdicts: { id: string; decision: Decision; short: string }[] = [];
  /** What this round has posted before, by id and check; the last of several. */
  private readonly before = new Map<string, HistoryRow>();
  private readonly register = new Map<string, RegisterItem | "twice">();
  private readonly request: PostingRequest;
  private readonly day: number;
  private readonly part: string;
  constructor(request: PostingRequest, day: number) {
    this.request = request;
    this.day = day;
    const { round, history, register, kept } = request;
    for (const row of history) if (partOf(round.round, row.Round)) this.before.set(keyOf(row.Id, row.Check), row);
    for (const item of register) {
      const id = item.id.toLowerCase();
      this.register.set(id, this.register.has(id) ? "twice" : item);
    }
    const parts = new Set(
      [...history.map((row) => row.Round), ...kept.map((one) => one.round)].filter((part) => partOf(round.round, part)),
    );
    this.part = parts.size === 0 ? round.round : `${round.round}/${String(parts.size + 1)}`;
  }
  post(): Posting {
    const { round, history, kept, hash } = this.request;
    for (const item of round.items) this.postItem(item);
    const joins = openSeals(history, kept, this.part).join(" ");
    const first = history.reduce((most, row) => Math.max(most, Number(row.Number) || 0), 0) + 1;
    const head = this.row({ Check: ROUND_HEAD, Reading: round.title, Joins: joins });
    const numbered = [head, ...this.rows].map((row, at) => ({ ...row, Number: String(first + at) }));
    return {
      rows: this.rows.length === 0 ? [] : sealRows(numbered, "", hash),
      part: this.part,
      writes: this.writes,
      posted: this.rows.filter(({ Check }) => Check !== VERDICT).length,
      inspected: this.inspected,
      refused: this.refused,
      incomplete: this.incomplete,
      changedMeanwhile: this.changed,
      verdicts: this.verdicts,
    };
  }
  private row(cells: Partial<HistoryRow>): HistoryRow {
    const { by, basis } = this.request.round;
    return historyRow({ Date: showDate(this.day), By: by, "Rule sets": basis.join(", "), Round: this.part, ...cells });
  }
  /** Adds a row unless this round has posted it already with the same reading. */
  private add(row: HistoryRow): void {
    const known = this.before.get(keyOf(row.Id, row.Check));
    if (known !== undefined && SAME.every((heading) => known[heading] === row[heading])) return;
    this.rows.push(row);
  }
  private postItem(item: FilledItem): void {
    const { id } = item;
    const lines = item.lines.filter(({ role, reading, found }) => role === "check" && (filled(reading) || readText(found) !== ""));
    const asNew = item.lines.filter((line) => line.role === "check" && readText(line.asNew) !== line.asNewWas);
    const notFound = /^not found$/i.test(item.state);
    if (lines.length === 0 && asNew.length === 0 && !notFound) return;
    const row = this.register.get(id.toLowerCase());
    if (row === undefined || row === "twice") {
      const why = row === undefined ? "it is no longer in the register" : "its id stands twice in the register";
      this.refused.push({ id, line: "", why });
      return;
    }
    if (notFound) {
      this.postNotFound(item, row);
      return;
    }
    const later = readDate(row.cells.get("inspected"));
    if (later.kind === "value" && later.value > this.day) {
      this.refused.push({ id, line: "", why: `the register holds a later inspection, of ${later.text}` });
      return;
    }
    this.postReadings(item, row, lines, asNew);
  }
  private postReadings(item: FilledItem, row: RegisterItem, lines: readonly FilledLine[], asNew: readonly FilledLine[]): void {
    const { round, house } = this.request;
    const list = item.lines.map(asListLine);
    const read = cellsOfList(item.gear, list);
    if (!read.ok) {
      this.refused.push({ id: item.id, line: "", why: read.why });
      return;
    }
    const verdict = judgeList(item.gear, list, { basis: round.basis, house, asOf: this.day });
    const unreadable = new Map(
      verdict.findings.flatMap((f) => (f.why === "unreadable" && f.field !== undefined ? [[f.field, f] as const] : [])),
    );
    for (const line of asNew) this.postAsNew(item, row, line, read.cells);
    const done = new Set<FieldId>();
    for (const line of lines) {
      const bad = unreadable.get(line.now);
      if (filled(line.reading) && bad !== undefined) {
        this.refused.push({ id: item.id, line: line.label, why: `"${readText(line.reading)}": ${bad.because ?? "it cannot be read"}` });
        continue;
      }
      if (filled(line.reading)) {
        if (!this.request.fields.has(line.now)) {
          this.refused.push({
            id: item.id,
            line: line.label,
            why: `the register has no column ${field(line.now).heading}; build it again, then post again`,
          });
          continue;
        }
        this.add(this.readingRow(item, line, verdict));
        if (this.write(item.id, row, line.now, read.cells.get(line.now), [line.was, this.postedBefore(item.id, line.label)], line.label))
          done.add(line.now);
      }
      if (readText(line.found) !== "") this.postSeen(item, row, line);
    }
    const against = lines.map(({ found }) => readText(found)).filter((words) => words !== "" && speaksAgainst(words));
    if (against.length > 0) this.put(item.id, row, "result", against.join("; "));
    this.add(this.verdictRow(item, verdict));
    this.verdicts.push({ id: item.id, decision: verdict.decision, short: verdict.short });
    this.moveInspected(item, row, { done, against: against.length > 0, lacking: verdict.lacking });
  }
  /** The inspection is dated only when every check that the gear needs was entered in this round. */
  private moveInspected(
    item: FilledItem,
    row: RegisterItem,
    { done, against, lacking }: { readonly done: ReadonlySet<FieldId>; readonly against: boolean; readonly lacking: readonly FieldId[] },
  ): void {
    const { kind, by } = this.request.round;
    const open = item.lines.filter((line) => line.required && line.role !== "known" && !done.has(line.now));
    // A line that was taken out of the sheet is missing all the same.
    const gone = lacking.filter((id) => !open.some(({ now }) => now === id)).map((id) => field(id).heading);
    if (kind === "missing" || open.length > 0 || gone.length > 0) {
      const why =
        kind === "missing"
          ? "only what was missing was looked at; its date stays"
          : `not entered: ${[...open.map(({ label }) => label), ...gone].join(", ")}; its date stays`;
      this.incomplete.push({ id: item.id, line: "", why });
      return;
    }
    const before = [item.inspectedWas, showDate(this.day)];
    if (!this.write(item.id, row, "inspected", { serial: this.day }, before, "Inspected")) return;
    this.inspected.push(item.id);
    if (this.request.fields.has("inspector")) this.put(item.id, row, "inspector", by);
    if (!against && this.saidByRound(item.id, cellText("result", row.cells.get("result")))) this.put(item.id, row, "result", "");
  }
  /** Whether a result is what an earlier round wrote there, which a whole inspection settles. */
  private saidByRound(id: string, result: string): boolean {
    if (result === "" || result.startsWith(NOT_FOUND)) return result !== "";
    const own = this.request.history.filter((row) => row.Id.toLowerCase() === id.toLowerCase() && row.Check.endsWith(`, ${SEEN}`));
    const seen = new Set(own.map((row) => row.Reading));
    return result.split("; ").every((words) => seen.has(words));
  }
  private postAsNew(item: FilledItem, row: RegisterItem, line: FilledLine, cells: ReadonlyMap<FieldId, CellValue>): void {
    const kind = matchKind(item.gear);
    const id = kind.ok ? (lineNamed(kind.kind, line.label)?.asNew ?? null) : null;
    const tell = (why: string): void => void this.refused.push({ id: item.id, line: `${line.label}, as new`, why });
    if (id === null) {
      tell("this line has no as-new size");
      return;
    }
    if (!this.request.fields.has(id)) {
      tell(`the register has no column ${field(id).heading}`);
      return;
    }
    if (line.asNewWas !== "" && readText(row.cells.get(id)) !== "" && this.postedBefore(item.id, `${line.label}, as new`) === "") {
      tell("the register holds another; put it right there, with what it rests on");
      return;
    }
    const size = readLength(cells.get(id), { assume: null });
    if (size.kind !== "value") {
      tell(size.kind === "refused" ? size.why : "it cannot be read");
      return;
    }
    this.add(
      this.row({
        Id: item.id,
        Check: `${line.label}, as new`,
        Reading: readText(line.asNew),
        Figure: String(toNumber(size.value.size)),
        Unit: size.value.unit,
        Gauge: line.gauge,
      }),
    );
    this.write(item.id, row, id, cells.get(id), ["", this.postedBefore(item.id, `${line.label}, as new`)], `${line.label}, as new`);
  }
  private postSeen(item: FilledItem, row: RegisterItem, line: FilledLine): void {
    const words = readText(line.found);
    this.add(this.row({ Id: item.id, Check: `${line.label}, ${SEEN}`, Reading: words, Gauge: line.gauge }));
    const stands = this.standing(item.id, row, "remarks");
    if (!`; ${stands}; `.includes(`; ${words}; `)) this.put(item.id, row, "remarks", stands === "" ? words : `${stands}; ${words}`);
  }
  private postNotFound(item: FilledItem, row: RegisterItem): void {
    const words = `${NOT_FOUND} on ${showDate(this.day)}`;
    this.add(this.row({ Id: item.id, Check: VERDICT, Reading: "not found", Decision: "NO VERDICT" }));
    this.verdicts.push({ id: item.id, decision: "NO VERDICT", short: "Not found" });
    this.put(item.id, row, "result", words);
  }
  /** What this round posted for a line the last time, as the register then held it. */
  private postedBefore(id: string, check: string): string {
    return this.before.get(keyOf(id, check))?.Reading ?? "";
  }
  /** Writes a cell that nobody changed since the sheet was made; true where the register holds the value then. */
  private write(id: string, row: RegisterItem, to: FieldId, value: CellValue, expected: readonly string[], line: string): boolean {
    const stands = cellText(to, row.cells.get(to));
    if (stands === cellText(to, value)) return true;
    if (!expected.some((text) => text === stands || isWithUnit(stands, text))) {
      this.changed.push({
        id,
        line,
        why: `the register says ${stands === "" ? "nothing" : stands} now; it was left, and ${cellText(to, value)} stands in the history`,
      });
      return false;
    }
    this.put(id, row, to, value);
    return true;
  }
  private put(id: string, row: RegisterItem, to: FieldId, value: CellValue): void {
    if (cellText(to, row.cells.get(to)) !== cellText(to, value)) this.writes.push({ id, field: to, value });
  }
  /** What a cell will hold after the writes so far. */
  private standing(id: string, row: RegisterItem, of: FieldId): string {
    const last = this.writes.filter((write) => write.id === id && write.field === of).at(-1);
    return cellText(of, last === undefined ? row.cells.get(of) : last.value);
  }
  private readingRow(item: FilledItem, line: FilledLine, verdict: ItemVerdict): HistoryRow {
    const found = findingOf(verdict, line);
    return this.row({
      Id: item.id,
      Check: line.label,
      Reading: line.reading === 0 ? "0" : readText(line.reading),
      ...figureOf(line),
      "As new": readText(line.asNew),
      ...limitOf(found, verdict.kind),
      Decision: found?.decision ?? "",
      Gauge: line.gauge,
    });
  }
  private verdictRow(item: FilledItem, verdict: ItemVerdict): HistoryRow {
    return this.row({
      Id: item.id,
      Check: VERDICT,
      Reading: verdict.short,
      ...limitOf(verdict.deciding, verdict.kind),
      Decision: verdict.decision,
    });
  }
}
const NOT_FOUND = "not found in a round";
const NO_KIND = { checks: [] };
const SAME = ["Date", "Reading", "As new", "Decision", "By", "Gauge"] as const;
const keyOf = (id: string, check: string): string => `${id.toLowerCase()}\n${check.toLowerCase()}`;
/** Whether a cell holds a text to which only its unit came when it was written. */
const isWithUnit = (cell: string, text: string): boolean =>
  text !== "" && cell.startsWith(`${text} `) && namedUnit(cell.slice(text.length + 1)) !== null;
const filled = (cell: CellValue): boolean => cell === 0 || readText(cell) !== "";
/** How a filled line is judged: a check by its reading, what is known or taken from the register as it stands there. */
const asListLine = (line: FilledLine): ListLine => ({ check: line.label, asNew: line.asNew, now: line.reading, found: line.found });
/** The worst that was found of a line. */
function findingOf({ findings, kind }: ItemVerdict, { now }: FilledLine): Finding | null {
  const check = linesOf(GEAR.find(({ id }) => id === kind) ?? NO_KIND).find((line) => line.now === now)?.check;
  const across = check?.kind === "loss" && check.acrossMeasured === now;
  const own = findings.filter((f) => f.field === now || (f.check === check?.name && (f.direction === "across") === across));
  const [worst] = own.sort((a, b) => rank(a.decision) - rank(b.decision) || (b.share ?? -1) - (a.share ?? -1));
  return worst ?? null;
}
function limitOf(found: Finding | null, kind: string | null): Partial<HistoryRow> {
  if (found === null) return {};
  const criterion = GEAR.find(({ id }) => id === kind)?.criteria.find(({ id }) => id === found.criterion);
  return {
    Limit: found.comesOut ?? found.limit ?? "",
    Word: criterion?.limit.word ?? "",
    Document: criterion === undefined ? (found.source ?? "") : documentOf(criterion.source.document),
    Clause: criterion?.source.clause ?? "",
  };
}
function documentOf(key: string): string {
  const { name, edition } = (SOURCES as Readonly<Record<string, Source>>)[key] ?? { name: key, edition: "" };
  return edition === "" ? name : `${name}, ${edition}`;
}
function figureOf({ now, asNew, reading }: FilledLine): Pick<HistoryRow, "Figure" | "Unit"> {
  const { type } = field(now);
  if (type === "count" || type === "angle") {
    const read = type === "count" ? readCount(reading) : readDegrees(reading);
    return { Figure: read.kind === "value" ? String(toNumber(read.value)) : "", Unit: type === "angle" ? "degrees" : "" };
  }
  if (type !== "length") return { Figure: "", Unit: "" };
  const own = readLength(asNew, { assume: null });
  const read = readLength(reading, { assume: own.kind === "value" ? own.value.unit : null, zero: true });
  return read.kind === "value" ? { Figure: String(toNumber(read.value.size)), Unit: read.value.unit } : { Figure: "", Unit: "" };
}
