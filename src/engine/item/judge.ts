/**
 * The judge of a log, made once for its columns and rules: worksheet cell, pane and file all judge their rows through it. What
 * depends on headings, rule sets and gear kind is prepared once; a row is then read cell by cell, each once.
 */
import { type Finding, ofItem } from "../check/finding";
import type { Situation } from "../check/in-force";
import { NO_OUTCOME, Outcome } from "../check/outcome";
import type { FieldId } from "../columns";
import { GEAR } from "../gear/index";
import type { GearKind } from "../gear/kind";
import { type Besides, NOTHING_BESIDES } from "../log/besides";
import { type LogColumns, Row } from "../log/cells";
import { Memory, RowMemory } from "../memory";
import { matchKind } from "../names/gear-name";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import { readText } from "../reading/text";
import { inForce } from "../rules/rule-sets";
import { type Judging, type KindFacts, KindJudge } from "./kind-judge";
import { wordFindings } from "./remarks";
import { tagState, type TagState } from "./tag";
import { UNKNOWN, type UnreadColumn, unreadColumns, unreadDamage } from "./unread-damage";
import { JudgedItem } from "./verdict";
import { dateFinding, overloadFinding } from "./whole-item";

export type { Judging } from "./kind-judge";
const NO_TAG: TagState = { out: false, note: null };
const NOTHING_MORE: readonly string[] = [];
/** Where no sizes are compared, no gauge is missed. */
const UNKNOWN_FACTS: KindFacts = { needed: [], gauged: true, assumed: [] };
const isBlank = (cell: CellValue): boolean => cell === undefined || cell === null || cell === "";

export class LogJudge {
  /** The fields of the log, in the order of the row's cells. */
  readonly fields: readonly FieldId[];
  /** The row at hand: its cells are to be put in before `judge` is called. */
  readonly row: Row;
  private readonly judging: Judging;
  private readonly kinds = new Map<GearKind, KindJudge>();
  private readonly byGear = new Memory<KindJudge | null>();
  private readonly words: RowMemory<Outcome>;
  private readonly at: Readonly<Record<"gear" | "tagged" | "inspected" | "overload" | "result" | "remarks", number | undefined>>;
  private readonly outcomes: Outcome[] = [];
  private unknown: readonly UnreadColumn[] | null = null;
  constructor(columns: LogColumns, judging: Judging) {
    this.fields = withFilled(columns.fields);
    this.row = new Row({ ...columns, fields: this.fields });
    this.judging = judging;
    const at = (id: FieldId): number | undefined => this.row.slot(id);
    this.at = {
      gear: at("gear"),
      tagged: at("tagged"),
      inspected: at("inspected"),
      overload: at("overload"),
      result: at("result"),
      remarks: at("remarks"),
    };
    this.words = new RowMemory([this.at.result, this.at.remarks].filter((slot) => slot !== undefined));
  }
  /** Judges one item whose cells stand in a map. `overload` is the day on which its assembly was found overloaded. */
  judgeCells(cells: ReadonlyMap<FieldId, CellValue>, besides: Besides = NOTHING_BESIDES, overload: number | null = null): JudgedItem {
    const { values } = this.row;
    this.fields.forEach((id, slot) => {
      values[slot] = cells.get(id);
    });
    return this.judge(besides, overload);
  }
  /** Judges the item whose cells stand in `row`. */
  judge(besides: Besides, overload: number | null = null): JudgedItem {
    const { row, judging, at } = this;
    row.filled(besides);
    const { asOf } = judging;
    const tag = this.isBlankAt(at.tagged) ? NO_TAG : tagState(row, asOf);
    const kind = this.kindOf(at.gear === undefined ? undefined : row.values[at.gear]);
    // One list for all rows, from which each takes a copy that is no longer than it has to be.
    const { outcomes } = this;
    outcomes.length = 0;
    if (kind === null) return this.judgeUnknown(outcomes, tag);
    const about = kind.judge(outcomes, tag.out ? tagOutcome(tag) : null);
    if (overload !== null || !this.isBlankAt(at.overload)) add(outcomes, overloadFinding(row, asOf, overload));
    const dateNote = this.isBlankAt(at.inspected) ? null : this.dateNote(outcomes);
    if (kind.rules !== null) outcomes.push(kind.rules);
    if (besides !== NOTHING_BESIDES || !this.isBlankAt(at.result) || !this.isBlankAt(at.remarks)) {
      const words = this.wordsOf(besides);
      if (words !== NO_OUTCOME) outcomes.push(words);
    }
    if (kind.house !== null) outcomes.push(kind.house);
    const tagNote = tag.out ? null : tag.note;
    if (!tag.out && dateNote === null && tagNote === null) return new JudgedItem(outcomes.slice(), about);
    const more = [dateNote, tagNote].filter((note) => note !== null);
    return new JudgedItem(outcomes.slice(), { ...about, tagged: tag.out, more });
  }
  private isBlankAt(slot: number | undefined): boolean {
    return slot === undefined || isBlank(this.row.values[slot]);
  }
  private kindOf(gear: CellValue): KindJudge | null {
    return this.byGear.once(gear, () => {
      const match = matchKind(readText(gear));
      return match.ok ? this.judgeOf(match.kind) : null;
    });
  }
  private judgeOf(kind: GearKind): KindJudge {
    let judge = this.kinds.get(kind);
    if (!judge) this.kinds.set(kind, (judge = new KindJudge(kind, this.row, this.judging)));
    return judge;
  }
  /** Gear that is not in the catalogue: no column is read, and each tells what it shows. */
  private judgeUnknown(outcomes: Outcome[], tag: TagState): JudgedItem {
    const { row, judging } = this;
    const gear = readText(row.value("gear"));
    const match = matchKind(gear);
    add(outcomes, ofItem("gear", "NO VERDICT", "gear", { heading: row.heading("gear"), typed: gear, because: match.ok ? "" : match.why }));
    if (tag.out) outcomes.push(tagOutcome(tag));
    const situation: Situation = { kind: UNKNOWN, bases: inForce(judging.basis), gauge: null, variant: null };
    const shown: Finding[] = [];
    unreadDamage((this.unknown ??= unreadColumns(situation, row)), shown);
    for (const found of shown) add(outcomes, { ...found, decision: "NO VERDICT" });
    return new JudgedItem(outcomes.slice(), { kind: null, tagged: tag.out, facts: UNKNOWN_FACTS, more: NOTHING_MORE });
  }
  /** Adds what is wrong with the date of the inspection; a date that cannot be read is a note. */
  private dateNote(outcomes: Outcome[]): string | null {
    const { row, judging, at } = this;
    const cell = at.inspected === undefined ? undefined : row.values[at.inspected];
    if (isPlainDay(typeof cell === "object" && cell !== null ? cell.serial : cell, judging.asOf)) return null;
    add(outcomes, dateFinding(row, judging.asOf));
    const inspected = readDate(cell);
    return inspected.kind === "refused"
      ? `The date "${inspected.text}" in "${row.heading("inspected")}" cannot be used: ${inspected.why}`
      : null;
  }
  /** What the log's own words say; remembered by result and remark where nothing else speaks. */
  private wordsOf(besides: Besides): Outcome {
    const { row, words } = this;
    if (besides !== NOTHING_BESIDES) return outcomeOf(wordFindings(row));
    const known = words.get(row.values);
    if (known !== undefined) return known;
    const made = outcomeOf(wordFindings(row));
    words.set(row.values, made);
    return made;
  }
}
const outcomeOf = (findings: readonly Finding[]): Outcome => (findings.length === 0 ? NO_OUTCOME : new Outcome(findings));
const tagOutcome = (tag: TagState & { readonly out: true }): Outcome =>
  new Outcome([
    ofItem("tag", "REMOVE", "tag out", { label: tag.label, because: tag.because, ...(tag.type !== null && { type: tag.type }) }),
  ]);
const add = (outcomes: Outcome[], found: Finding | null): void => {
  if (found !== null) outcomes.push(new Outcome([found]));
};
/** A day from 1905 on that is no year by mistake and not after the day of judging: nothing is wrong with it. */
const isPlainDay = (serial: CellValue, asOf: number | null): boolean =>
  typeof serial === "number" && serial >= 2101 && serial <= 2958465 && (asOf === null || serial < asOf + 1);
/** A log that names a table of as-new sizes has room for them, whether or not it has their columns. */
function withFilled(fields: readonly FieldId[]): readonly FieldId[] {
  if (!fields.includes("asNewFrom")) return fields;
  return [...new Set([...fields, ...GEAR.flatMap((kind) => (kind.asNew ?? []).map(({ column }) => column))])];
}
