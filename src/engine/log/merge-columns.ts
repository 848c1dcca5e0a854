/**
 * The cells of one row, one for each field. Where several columns say the same thing they become one cell that holds the
 * worst of what they say: "Crushing" beside "Kinks", "Throat 2026" beside "Throat 2024", the sections of a hook and of a
 * shackle in columns of their own.
 */
import { field, FIELD_IDS, type FieldId } from "../columns";
import { GEAR } from "../gear/index";
import type { GearKind } from "../gear/kind";
import { Memory, RowMemory } from "../memory";
import { matchKind } from "../names/gear-name";
import type { Exact } from "../numbers/exact";
import { convert, namedUnit, type Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readLength } from "../reading/length";
import { readCount, readDegrees, readPlain } from "../reading/number";
import { readSeen } from "../reading/observation";
import type { Read } from "../reading/read";
import { isOnlyBeside, readResult, type Said } from "../reading/result";
import { readText, recordedText, tidy } from "../reading/text";
import { type Besides, type EarlierCell, NOTHING_BESIDES, openCells, type UnreadCell } from "./besides";
import type { AlsoColumn, Headings } from "./match-headings";
import { offeredAnswers } from "./answers";
import { polarityOf, resultHeading } from "./polarity";
import { spoken } from "./spoken";
import { asksForMore, asksTheSame } from "./which-one";
import type { Language } from "./vocabulary";

type Line = readonly CellValue[];
type Reader = (cell: CellValue) => CellValue;
/** How the columns of a log are read; made once for its headings. */
interface Plan {
  /** By field its first column; no reader where the cell counts as it is. */
  readonly mains: readonly (readonly [id: FieldId, column: number, read: Reader | null])[];
  readonly seen: readonly Merged[];
  readonly texts: readonly Merged[];
  readonly families: readonly Family[];
  /** Whether there is a column that some kind reads as another. */
  readonly renames: boolean;
  readonly earlier: readonly {
    readonly column: number;
    readonly heading: string;
    readonly field: FieldId;
    readonly read: Reader;
    readonly unit: Unit | null;
  }[];
}
interface Also extends AlsoColumn {
  readonly read: Reader;
}
/** Columns that say the same in words, and what came of their cells together. */
interface Merged {
  readonly id: FieldId;
  readonly more: readonly Also[];
  /** For each column of observations, the first one at 0, those whose blank it cannot fill: it asks for less, or for something else. */
  readonly leaves: readonly (readonly number[])[];
  readonly lately: RowMemory<{ readonly cell: CellValue }>;
}
/** Cells by field, to be read and to be changed: a map, or the row of a judge. */
export interface FieldCells {
  get(id: FieldId): CellValue;
  set(id: FieldId, cell: CellValue): unknown;
}
/** A size with its as-new size, or a reading without one, and the further columns of both. */
interface Family {
  readonly now: FieldId;
  readonly asNew: FieldId | null;
  /** By what their headings say: pairs of their own, such as those of a shackle's bow beside a hook's saddle. */
  readonly pairs: readonly { readonly now: Also; readonly asNew: Also }[];
  readonly nows: readonly Also[];
  readonly news: readonly Also[];
}
const plans = new WeakMap<Headings, Plan>();
function planOf(headings: Headings): Plan {
  let plan = plans.get(headings);
  if (!plan) plans.set(headings, (plan = planFor(headings)));
  return plan;
}
/** The first column of each field, and how its cell is read: not at all where it counts as it is. */
export const firstColumns = (headings: Headings): Plan["mains"] => planOf(headings).mains;
/** Of rows in which a reading cannot be read beside one of the same thing that can. */
const unreadOf = new WeakMap<ReadonlyMap<FieldId, CellValue>, readonly UnreadCell[]>();
const NONE_UNREAD: readonly UnreadCell[] = [];
export function rowCells(line: Line, headings: Headings): ReadonlyMap<FieldId, CellValue> {
  const cells = new Map<FieldId, CellValue>();
  for (const [id, column, read] of planOf(headings).mains) cells.set(id, read === null ? line[column] : read(line[column]));
  const unread = mergeColumns(line, headings, cells);
  if (unread.length > 0) unreadOf.set(cells, unread);
  return cells;
}
/**
 * Merges what further columns say into cells that hold the first column of each field. Readings that cannot be read beside one of
 * the same thing that can come back.
 */
export function mergeColumns(line: Line, headings: Headings, cells: FieldCells): readonly UnreadCell[] {
  const plan = planOf(headings);
  // The user's answer for the whole log stands in each row that names no unit, as if it had been typed there.
  if (headings.bareUnit !== null && readText(cells.get("unit")) === "") cells.set("unit", headings.bareUnit);
  for (const merged of plan.seen) mergeWords(merged, line, cells, (said) => worstSeen(merged.id, said, merged.leaves));
  for (const merged of plan.texts) mergeWords(merged, line, cells, allSaid);
  let unread = NONE_UNREAD;
  if (plan.families.length > 0) {
    const found: UnreadCell[] = [];
    for (const family of plan.families) measure(family, line, cells, headings, found);
    unread = found;
  }
  const result = cells.get("result");
  if (typeof result === "string" && result !== "") passOn(result, cells);
  if (plan.renames) underOtherNames(cells, headings);
  return unread;
}
function mergeWords({ id, more, lately }: Merged, line: Line, cells: FieldCells, merge: (said: readonly CellValue[]) => CellValue): void {
  let made = lately.get(line);
  if (made === undefined) {
    made = { cell: merge([cells.get(id), ...more.map(({ read, column }) => read(line[column]))]) };
    lately.set(line, made);
  }
  cells.set(id, made.cell);
}
/** What a kind reads under a column of another name: the section of an eyebolt is its eye, the lock of a plate clamp its latch. */
function underOtherNames(cells: FieldCells, headings: Headings): void {
  const match = matchKind(readText(cells.get("gear")));
  if (!match.ok) return;
  for (const [to, from] of OTHER_NAMES.get(match.kind) ?? []) {
    if (readText(cells.get(to)) !== "" || readText(cells.get(from)) === "") continue;
    const unit = headings.units.get(from) ?? null;
    // The unit of its own heading goes with it.
    cells.set(to, unit === null || unit === headings.units.get(to) ? cells.get(from) : withUnit(cells.get(from), unit));
    cells.set(from, null);
  }
}
type Renamed = readonly [to: FieldId, from: FieldId];
const OTHER_NAMES: ReadonlyMap<GearKind, readonly Renamed[]> = new Map(
  GEAR.map((kind) => {
    const reads = (id: FieldId): boolean => kind.checks.some(({ measured }) => measured === id);
    const ofEye = kind.checks.some((check) => check.kind === "loss" && check.measured === "sectionNow" && check.part === "eye");
    const eye: readonly Renamed[] =
      (ofEye || Object.keys(kind.parts)[0] === "eye") && !reads("eyeNow")
        ? [
            ["sectionNew", "eyeNew"],
            ["sectionNow", "eyeNow"],
          ]
        : [];
    const lock: readonly Renamed[] =
      !reads("lock") && kind.checks.some(({ name, measured }) => name === "lock" && measured === "latch") ? [["latch", "lock"]] : [];
    return [kind, [...eye, ...lock]] as const;
  }),
);
const RESULTS = new Memory<Said | null>();
/** A tag or a crack that stands in the column of results counts as one. */
function passOn(result: string, cells: FieldCells): void {
  const said = RESULTS.once(result, () => readResult(result)?.said ?? null);
  if (said === "tagged") cells.set("tagged", allSaid([cells.get("tagged"), result]));
  if (said === "cracked") cells.set("cracks", worstSeen("cracks", [cells.get("cracks"), result], [[], [0]]));
}
/**
 * What stands in a row beside its cells: columns that nobody understands (`asked` as in `openCells`), older readings, and the
 * readings that `mergeColumns` gave back.
 */
export function besidesOf(
  line: Line,
  headings: Headings,
  cells: Pick<FieldCells, "get">,
  asked?: ReadonlySet<number>,
  unread: readonly UnreadCell[] = unreadOf.get(cells as ReadonlyMap<FieldId, CellValue>) ?? NONE_UNREAD,
): Besides {
  const open = openCells(line, headings, asked);
  const earlier = earlierCells(line, headings, cells);
  return open.length + earlier.length + unread.length === 0 ? NOTHING_BESIDES : { open, earlier, unread };
}
const NONE_EARLIER: readonly EarlierCell[] = [];
function earlierCells(line: Line, headings: Headings, cells: Pick<FieldCells, "get">): readonly EarlierCell[] {
  const { earlier } = planOf(headings);
  if (earlier.length === 0) return NONE_EARLIER;
  return earlier.flatMap(({ column, heading, field: id, read, unit }): readonly EarlierCell[] => {
    const cell = read(line[column]);
    return readText(cell) === "" ? [] : [{ column, heading, field: id, cell, unit: unit ?? rowUnitOf(cells.get("unit")) }];
  });
}
const asItIs: Reader = (cell) => cell;
function planFor(headings: Headings): Plan {
  const { language } = headings;
  const name = (id: FieldId): string => headings.names.get(id) ?? "";
  const numbers = new Set(headings.columns.values());
  const also = new Map(
    [...headings.also].map(([id, columns]) => [
      id,
      columns.map((one): Also => {
        const words = readerOf(id, one.heading, headings.units.get(id) ?? null, language);
        // What is also read as a load or a number says something here only in words.
        const read = numbers.has(one.column) ? (cell: CellValue) => (/\d/.test(readText(cell)) ? null : words(cell)) : words;
        return { ...one, read };
      }),
    ]),
  );
  const ofType = (types: readonly string[]): Merged[] =>
    [...also]
      .filter(([id]) => types.includes(field(id).type))
      .map(([id, more]) => {
        const first = headings.columns.get(id);
        const leaves = leftBy([name(id), ...more.map(({ heading }) => heading)], language);
        return { id, more, leaves, lately: new RowMemory([...(first === undefined ? [] : [first]), ...more.map(({ column }) => column)]) };
      });
  return {
    mains: [...headings.columns].map(([id, column]) => {
      const read = readerOf(id, name(id), headings.units.get(id) ?? null, language);
      return [id, column, read === asItIs ? null : read] as const;
    }),
    seen: ofType(["sound", "fault"]),
    texts: ofType(["text", "choice"]),
    families: familiesOf(also),
    renames: (["eyeNow", "eyeNew", "lock"] as const).some((id) => headings.columns.has(id)),
    earlier: headings.matches.flatMap(({ column, heading, earlier: id, unit }) =>
      id === null ? [] : [{ column, heading, field: id, read: readerOf(id, heading, unit, language), unit }],
    ),
  };
}
/** What a cell under a heading says in the field's own terms, in English. */
function readerOf(id: FieldId, heading: string, mainUnit: Unit | null, language: Language | undefined): Reader {
  const read = plainReaderOf(id, heading, mainUnit, language);
  if (language === undefined) return read === asItIs ? read : lately(read);
  const measured = ["length", "count", "angle", "torque"].includes(field(id).type) || id === "size";
  return lately((cell) => read(inEnglish(cell, language, measured)));
}
/** The same, each cell read once. */
function lately(read: Reader): Reader {
  const kept = new Memory<{ readonly cell: CellValue }>();
  return (cell) => kept.once(cell, () => ({ cell: read(cell) })).cell;
}
/** A cell of another language in English words; its decimal comma as a point. */
function inEnglish(cell: CellValue, language: Language, measured: boolean): CellValue {
  if (typeof cell !== "string") return cell;
  const text = tidy(cell);
  const word = (part: string): string => language.cells[part.toLowerCase().trim()] ?? part;
  const whole = word(text);
  if (whole !== text) return whole;
  if (measured && language.decimalComma && /^[^\d]*\d+,\d+(?![\d,])/.test(text)) return text.replace(/(\d),(\d)/, "$1.$2");
  return text.includes(",") ? text.split(",").map(word).join(", ").replace(/ +/g, " ") : text;
}
function plainReaderOf(id: FieldId, heading: string, mainUnit: Unit | null, language: Language | undefined): Reader {
  const { type } = field(id);
  if (id === "assembly") return (cell) => (recordedText(cell) === "" ? null : cell);
  if (id === "result") return resultReader(heading, language);
  if (type === "length") return lengthReader(heading, mainUnit, language);
  return type === "sound" || type === "fault" ? seenReader(id, type, heading, language) : asItIs;
}
/** A bare figure under a heading in centimetres, or in another unit than the field's first column, carries its unit. */
function lengthReader(heading: string, mainUnit: Unit | null, language: Language | undefined): Reader {
  const { unit, otherUnit } = spoken(heading, language);
  const named = otherUnit ?? (unit === mainUnit ? null : unit);
  return named === null ? asItIs : (cell) => withUnit(cell, named);
}
const WITH_UNIT = new Map<string, Memory<{ readonly cell: CellValue }>>();
/** A bare figure with its unit, set before a note that may stand behind it. A fraction is inches, so under another unit it is doubtful. */
export function withUnit(cell: CellValue, unit: string): CellValue {
  if (typeof cell !== "number") return unitPutIn(cell, unit);
  let kept = WITH_UNIT.get(unit);
  if (kept === undefined) WITH_UNIT.set(unit, (kept = new Memory()));
  return kept.once(cell, () => ({ cell: unitPutIn(cell, unit) })).cell;
}
function unitPutIn(cell: CellValue, unit: string): CellValue {
  const reads = (assume: Unit | null): boolean => readLength(cell, { assume, zero: true }).kind === "value";
  if (cell === 0 || reads(null) || !reads("in")) return cell;
  const text = typeof cell === "string" ? cell.trim() : readText(cell);
  if (namedUnit(unit)?.unit !== "in" && !reads("mm")) return `${text} (in or ${unit}?)`;
  const [, figure = text, note = ""] = /^([^\p{L}(]*\S)(\s+[\p{L}(].*)?$/u.exec(text) ?? [];
  return `${figure.trim()} ${unit}${note}`;
}
/** A Unit column says in or mm; a multiple such as cm is none of them and leaves the row without a unit. */
export function rowUnitOf(cell: CellValue): Unit | null {
  const text = readText(cell);
  const named = text === "" ? null : namedUnit(text);
  return named?.times.equals(1) === true ? named.unit : null;
}
const YES = /^(yes|y|true)$/i;
const NO = /^(no|n|false)$/i;
/** "Latch missing: yes" is no latch in order; "Free of cracks: yes" is no crack; P under P/F is good. */
function seenReader(id: FieldId, type: "sound" | "fault", heading: string, language: Language | undefined): Reader {
  const said = spoken(heading, language);
  const offered = offeredAnswers(said);
  const way = polarityOf(said, id);
  const [well, badly] = type === "sound" ? ["yes", "no"] : ["none", "found"];
  if (way === "straight" && offered.size === 0) return asItIs;
  return (cell) => {
    const text = readText(cell);
    if (text === "") return cell;
    const answer = offered.get(text.toLowerCase());
    if (answer !== undefined) return answer === "good" ? well : `${badly}: ${text} (${heading})`;
    if (!YES.test(text) && !NO.test(text)) return way === "turned" ? turnedCell(cell, type, heading) : cell;
    if (way === "open") return `${text}? (${heading})`;
    if (way === "straight") return cell;
    // "Latch missing: yes" is badly, "Free of cracks: yes" is well.
    return YES.test(text) === (type === "fault") ? well : `${badly}: ${text} (${heading})`;
  };
}
/** Other words under a heading that says the opposite: "none" under Latch missing, "cracked" under Free of cracks. */
function turnedCell(cell: CellValue, type: "sound" | "fault", heading: string): CellValue {
  const [well, badly] = type === "sound" ? ["yes", "no"] : ["none", "found"];
  const own = readSeen(cell, type);
  const turned = readSeen(cell, type === "sound" ? "fault" : "sound");
  if (turned.kind === "missing" || own.kind === "missing") return cell;
  // A word that says by itself how it is, is not turned; one that could go either way is asked about.
  const says = turned.kind === "value" ? turned.value : null;
  const itself = own.kind === "value" ? own.value : null;
  if (says === null && itself === null) return `${turned.text}? (${heading})`;
  if (says !== null && itself !== null && says !== itself)
    return type === "sound" && says === "sound" ? well : `${turned.text}? (${heading})`;
  if (says === "fault" || itself === "fault") return `${badly}: ${turned.text} (${heading})`;
  return says === "sound" ? well : cell;
}
/** Nothing to report, under a heading that asks for what is wrong. */
const NOTHING =
  /^(none|nil|nothing|0|n\/?a|-+|ok|okay|good|clear|(none|no \w+|nothing|nil) (found|noted|seen|required|needed)|no (defects?|faults?|action|damage|repairs?|issues?|problems?))$/i;
/** The result in words that say the same without their heading: "rejected: yes (Failed)". */
function resultReader(heading: string, language: Language | undefined): Reader {
  const said = spoken(heading, language);
  const offered = offeredAnswers(said);
  const { yes, no } = resultHeading(said);
  const against = yes === "rejected" || yes === "damaged";
  const tell = (text: string, means: string): CellValue => {
    if (means === "good") return against ? null : "ok";
    if (means === "open") return `${text}? (${heading})`;
    return `${means === "not in use" ? "not in service" : means}: ${text} (${heading})`;
  };
  return (cell) => {
    const text = readText(cell);
    if (text === "") return cell;
    const answer = offered.get(text.toLowerCase());
    if (answer !== undefined) return answer === "good" ? "ok" : `rejected: ${text} (${heading})`;
    if (YES.test(text)) return tell(text, yes);
    if (NO.test(text)) return tell(text, no);
    if (against && NOTHING.test(text)) return null;
    // A figure or a day is no answer, and beside a good word of another column it would read as the day of that word.
    if (isOnlyBeside(text)) return `${text}? (${heading})`;
    if (!against) return cell;
    // "Findings: serviceable" is good; "Defects: new" and "Rejected: current" are no answer.
    const good = readResult(cell)?.said === "good";
    return good && (yes === "rejected" || /^(new|as new|current|active|kept?|keep|stored|spare)\b/i.test(text))
      ? `${text}? (${heading})`
      : cell;
  };
}
/** The worst of what several columns of observations say: a fault, then what cannot be told, then nothing. */
function worstSeen(id: FieldId, cells: readonly CellValue[], leaves: Merged["leaves"]): CellValue {
  const { type, soundWords = [], faultWords = [] } = field(id);
  const read = cells.map((cell) => ({
    cell,
    read: readSeen(cell, type === "sound" ? "sound" : "fault", { mayBeAbsent: true, sound: soundWords, fault: faultWords }),
  }));
  const fault = read.find((one) => one.read.kind === "value" && one.read.value === "fault");
  // "Not checked" in one column leaves it open as much as a word that nobody can read.
  const undone = read.find((one) => one.read.kind === "missing" && isUndone(one.read.text));
  const unclear =
    read.find((one) => one.read.kind === "refused") ??
    (undone === undefined ? undefined : { ...undone, cell: `${readText(undone.cell)}?` });
  const isBlank = (at: number): boolean => read[at]?.read.kind === "missing";
  const sound = read.find((one, at) => one.read.kind === "value" && leaves[at]?.some(isBlank) !== true);
  return (fault ?? unclear ?? sound ?? read.find((one) => one.read.kind === "missing") ?? read[0])?.cell;
}
const leftBy = (headings: readonly string[], language: Language | undefined): Merged["leaves"] =>
  headings.map((own, at) =>
    headings.flatMap((other, i) =>
      i !== at && ((i === 0 && !asksTheSame(other, own, language)) || asksForMore(other, own, language)) ? [i] : [],
    ),
  );
const isUndone = (text: string): boolean =>
  /^(not (measured|taken|done|checked|looked at|inspected|recorded|counted)|tb[acd])$/i.test(text);
/** All that is said, once; a lone date stays one. */
function allSaid(cells: readonly CellValue[]): CellValue {
  const said = cells.filter((cell) => !/^(|no|n|none|nil|false)$/i.test(readText(cell)));
  if (said.length === 0) return cells[0];
  return said.length === 1 ? said[0] : [...new Set(said.map((cell) => readText(cell)))].join("; ");
}
/** Sizes that grow with damage; all other sizes and counts shrink with it, or are as told in `LESS_IS_WORSE`. */
const CHECKS = GEAR.flatMap(({ checks }) => checks);
const GROWS: ReadonlySet<FieldId> = new Set(CHECKS.filter(({ kind }) => kind === "growth").map(({ measured }) => measured));
const LESS_IS_WORSE: ReadonlySet<FieldId> = new Set<FieldId>([
  ...CHECKS.filter(({ kind }) => kind === "enough" || kind === "least").map(({ measured }) => measured),
  "ropeNow",
  "sheave",
  "clips",
  "clipSpacing",
  "turnBack",
  "clipTorque",
  "corrodedNow",
]);
/** Readings of which neither the largest nor the smallest is the worst. */
const NEITHER: ReadonlySet<FieldId> = new Set<FieldId>(["groove", "span"]);
function familiesOf(also: ReadonlyMap<FieldId, readonly Also[]>): readonly Family[] {
  const measured = (id: FieldId): boolean => ["length", "count", "angle", "torque"].includes(field(id).type);
  const asNewOf = (id: FieldId): FieldId | null =>
    FIELD_IDS.find((other) => id.endsWith("Now") && other === `${id.slice(0, -3)}New`) ?? null;
  const touched = FIELD_IDS.filter((id) => measured(id) && !id.endsWith("New") && (also.has(id) || also.has(asNewOf(id) ?? id)));
  return touched.map((now): Family => {
    const asNew = asNewOf(now);
    const nows = also.get(now) ?? [],
      news = asNew === null ? [] : (also.get(asNew) ?? []);
    const pairs = nows.flatMap((one) =>
      news
        .filter((other) => other.stem === one.stem && one.stem !== "")
        .slice(0, 1)
        .map((other) => ({ now: one, asNew: other })),
    );
    const paired = new Set<Also>(pairs.flatMap((pair) => [pair.now, pair.asNew]));
    return { now, asNew, pairs, nows: nows.filter((one) => !paired.has(one)), news: news.filter((one) => !paired.has(one)) };
  });
}
function measure(family: Family, line: Line, cells: FieldCells, headings: Headings, unread: UnreadCell[]): void {
  const { now, asNew, pairs, nows, news } = family;
  const rowUnit = rowUnitOf(cells.get("unit"));
  // Under a heading without a unit it is the row's, whatever the first column of the field names.
  const at = (one: Also): CellValue =>
    one.unit === null && rowUnit !== null ? withUnit(one.read(line[one.column]), rowUnit) : one.read(line[one.column]);
  const unit = (id: FieldId): Unit | null => headings.units.get(id) ?? rowUnit;
  const keep = (id: FieldId, cell: CellValue, heading: string): void => {
    unread.push({ field: id, heading, text: readText(cell) });
  };
  if (asNew !== null) {
    let from = headings.names.get(now) ?? field(now).heading;
    for (const pair of pairs) {
      const there = at(pair.now);
      if (readText(there) === "") continue;
      const other = { now: there, asNew: at(pair.asNew) };
      const mine = { now: cells.get(now), asNew: cells.get(asNew) };
      const worst = worsePair(other, mine, { now: unit(now), asNew: unit(asNew) }, GROWS.has(now));
      if (worst.lost === "mine") keep(now, mine.now, from);
      if (worst.lost === "other") keep(now, other.now, pair.now.heading);
      if (!worst.other) continue;
      from = pair.now.heading;
      cells.set(now, other.now);
      cells.set(asNew, other.asNew);
    }
  }
  const further = (id: FieldId, more: readonly Also[], moreIsWorse: boolean): void => {
    let from = headings.names.get(id) ?? field(id).heading;
    for (const one of more) {
      const [mine, other] = [cells.get(id), at(one)];
      const worst = worse(id, mine, other, unit(id), moreIsWorse);
      if (worst.lost === "mine") keep(id, mine, from);
      if (worst.lost === "other") keep(id, other, one.heading);
      if (worst.cell !== mine) from = one.heading;
      cells.set(id, worst.cell);
    }
  };
  further(now, nows, asNew === null ? !LESS_IS_WORSE.has(now) : GROWS.has(now));
  if (asNew !== null) further(asNew, news, !GROWS.has(now));
}
interface Sizes<T> {
  readonly now: T;
  readonly asNew: T;
}
/** Which of two does not count although it stands there: it cannot be read, and has to be told. */
type Lost = "mine" | "other" | null;
/** Whether another pair of sizes says more against the item than the one at hand: nothing stands there, or it has lost a larger share. */
function worsePair(
  other: Sizes<CellValue>,
  mine: Sizes<CellValue>,
  units: Sizes<Unit | null>,
  grows: boolean,
): { readonly other: boolean; readonly lost: Lost } {
  if (readText(mine.now) === "") return { other: true, lost: null };
  const share = ({ now, asNew }: Sizes<CellValue>): Exact | null => {
    const [is, was] = [reading("throatNow", now, units.now), reading("throatNew", asNew, units.asNew)];
    if (is.kind !== "value" || was.kind !== "value" || was.value.equals(0)) return null;
    return grows ? is.value.div(was.value) : was.value.div(is.value.equals(0) ? was.value : is.value);
  };
  const [theirs, ours] = [share(other), share(mine)];
  // What can be read counts; what cannot is told beside it.
  if (theirs === null) return { other: false, lost: "other" };
  if (ours === null) return { other: true, lost: "mine" };
  return { other: largest([theirs, ours]) === theirs && !theirs.equals(ours), lost: null };
}
/** The worse of two cells of one reading. One that cannot be read hides none that can. */
function worse(
  id: FieldId,
  mine: CellValue,
  other: CellValue,
  unit: Unit | null,
  moreIsWorse: boolean,
): { readonly cell: CellValue; readonly lost: Lost } {
  const [ours, theirs] = [reading(id, mine, unit), reading(id, other, unit)];
  if (theirs.kind === "missing") return { cell: mine, lost: isUndone(theirs.text) ? "other" : null };
  if (ours.kind === "missing") return { cell: other, lost: null };
  if (theirs.kind === "refused") return { cell: mine, lost: "other" };
  if (ours.kind === "refused") return { cell: other, lost: "mine" };
  if (theirs.value.equals(ours.value)) return { cell: mine, lost: null };
  if (NEITHER.has(id)) return { cell: `${ours.text} or ${theirs.text}?`, lost: null };
  const most = largest([ours.value, theirs.value]);
  return { cell: (most === theirs.value) === moreIsWorse ? other : mine, lost: null };
}
const largest = ([a, b]: readonly [Exact, Exact]): Exact => [a, b].sort((one, two) => two.compare(one))[0] ?? a;
/** Lengths of which 0 is a reading: nothing there. */
const ZERO_IS_A_SIZE: ReadonlySet<FieldId> = new Set<FieldId>(["clearance", "nickDepth", "bend"]);
/** By what a cell is read as, and its unit: the same cell is read again in each row. */
const READINGS = new Map<string, Memory<Read<Exact>>>();
/** A reading as one figure: a length in millimetres; one without any unit is refused by its check. */
function reading(id: FieldId, cell: CellValue, unit: Unit | null): Read<Exact> {
  const { type } = field(id);
  const sort = type === "length" ? (unit === "mm" ? (ZERO_IS_A_SIZE.has(id) ? "mm0" : "mm") : ZERO_IS_A_SIZE.has(id) ? "in0" : "in") : type;
  let kept = READINGS.get(sort);
  if (kept === undefined) READINGS.set(sort, (kept = new Memory()));
  return kept.once(cell, () => readingOf(id, cell, unit));
}
function readingOf(id: FieldId, cell: CellValue, unit: Unit | null): Read<Exact> {
  const { type } = field(id);
  if (type !== "length") return type === "count" ? readCount(cell) : type === "angle" ? readDegrees(cell) : readPlain(cell);
  // Some hosts hand a blank over as 0, which no size can be.
  const read = readLength(cell, { assume: unit ?? "in", zero: ZERO_IS_A_SIZE.has(id) });
  return read.kind === "value" ? { ...read, value: convert(read.value.size, read.value.unit, "mm") } : read;
}
