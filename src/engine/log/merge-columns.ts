/**
 * The cells of one row, one for each field. Where several columns say the same thing they become one cell that holds the
 * worst of what they say: "Crushing" beside "Kinks", "Throat 2026" beside "Throat 2024", the sections of a hook and of a
 * shackle in columns of their own.
 */
import { field, FIELD_IDS, type FieldId } from "../columns";
import type { Exact } from "../numbers/exact";
import { convert, namedUnit, type Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readLength } from "../reading/length";
import { readCount, readDegrees, readPlain } from "../reading/number";
import { readSeen } from "../reading/observation";
import type { Read } from "../reading/read";
import { readText, recordedText } from "../reading/text";
import { type Besides, NOTHING_BESIDES } from "./besides";
import { type AlsoColumn, asksWhether, type Headings, spoken, turned } from "./match-headings";

type Line = readonly CellValue[];
type Reader = (cell: CellValue) => CellValue;
/** How the columns of a log are read; made once for its headings. */
interface Plan {
  readonly mains: readonly (readonly [id: FieldId, column: number, read: Reader])[];
  readonly seen: readonly (readonly [id: FieldId, more: readonly Also[]])[];
  readonly texts: readonly (readonly [id: FieldId, more: readonly Also[]])[];
  readonly families: readonly Family[];
}
interface Also extends AlsoColumn {
  readonly read: Reader;
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
export function rowCells(line: Line, headings: Headings): ReadonlyMap<FieldId, CellValue> {
  let plan = plans.get(headings);
  if (!plan) plans.set(headings, (plan = planFor(headings)));
  const cells = new Map<FieldId, CellValue>();
  for (const [id, column, read] of plan.mains) cells.set(id, read(line[column]));
  for (const [id, more] of plan.seen)
    cells.set(
      id,
      worstSeen(id, [{ cell: cells.get(id), weak: false }, ...more.map((one) => ({ cell: one.read(line[one.column]), weak: one.weak }))]),
    );
  for (const [id, more] of plan.texts) cells.set(id, allSaid([cells.get(id), ...more.map((one) => one.read(line[one.column]))]));
  for (const family of plan.families) measure(family, line, cells, headings);
  return cells;
}
/** What stands in a row beside the cells that `rowCells` made of it. */
export function besidesOf(line: Line, headings: Headings, _cells: ReadonlyMap<FieldId, CellValue>): Besides {
  const open = headings.matches.flatMap((match) => {
    if (match.state !== "not understood") return [];
    const text = readText(line[match.column]);
    return text === "" ? [] : [{ column: match.column, heading: match.heading, text, proposal: match.proposal }];
  });
  return open.length === 0 ? NOTHING_BESIDES : { open, earlier: [] };
}
const asItIs: Reader = (cell) => cell;
function planFor(headings: Headings): Plan {
  const name = (id: FieldId): string => headings.names.get(id) ?? "";
  const also = new Map(
    [...headings.also].map(([id, columns]) => [
      id,
      columns.map((one): Also => ({ ...one, read: readerOf(id, one.heading, headings.units.get(id) ?? null) })),
    ]),
  );
  const ofType = (types: readonly string[]): [FieldId, Also[]][] => [...also].filter(([id]) => types.includes(field(id).type));
  return {
    mains: [...headings.columns].map(([id, column]) => [id, column, readerOf(id, name(id), headings.units.get(id) ?? null)] as const),
    seen: ofType(["sound", "fault"]),
    texts: ofType(["text", "choice"]),
    families: familiesOf(also),
  };
}
/** What a cell under a heading says in the field's own terms. */
function readerOf(id: FieldId, heading: string, mainUnit: Unit | null): Reader {
  const { type } = field(id);
  if (id === "assembly") return (cell) => (recordedText(cell) === "" ? null : cell);
  if (id === "result") return resultReader(heading);
  if (type === "length") return lengthReader(heading, mainUnit);
  if (type !== "sound" && type !== "fault") return asItIs;
  if (turned(heading, id)) return turnedReader(type, heading);
  return asksWhether(heading, id)
    ? (cell) => (/^(yes|no|y|n|true|false|done)$/i.test(readText(cell)) ? `${readText(cell)}? (${heading})` : cell)
    : asItIs;
}
/** A bare figure under a heading in centimetres, or in another unit than the field's first column, carries its unit. */
function lengthReader(heading: string, mainUnit: Unit | null): Reader {
  const { unit, otherUnit } = spoken(heading);
  const named = otherUnit ?? (unit === mainUnit ? null : unit);
  return named === null ? asItIs : (cell) => withUnit(cell, named);
}
/** A bare figure with its unit, set before a note that may stand behind it. A fraction is inches, so under another unit it is doubtful. */
export function withUnit(cell: CellValue, unit: string): CellValue {
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
/** "Latch missing: yes" is no latch in order; "Free of cracks: yes" is no crack. */
function turnedReader(type: "sound" | "fault", heading: string): Reader {
  const other = type === "sound" ? "fault" : "sound";
  const [well, badly] = type === "sound" ? ["yes", "no"] : ["none", "found"];
  return (cell) => {
    const read = readSeen(cell, other);
    if (read.kind === "missing") return cell;
    if (read.kind === "refused") return `${read.text}? (${heading})`;
    return read.value === "sound" ? well : `${badly}: ${read.text} (${heading})`;
  };
}
/** Headings under which yes speaks against an item, and those under which no does. */
const AGAINST = /\b(reject\w*|defects?|fail\w*|condemn\w*|action|faults?)\b/i;
const FOR = /\b(ok|okay|fit|safe|usable|serviceable|serviceability|in[- ]service|pass(ed)?|use)\b/i;
const NOTHING =
  /^(no|n|none|nil|nothing|false|0|n\/?a|-+|ok|okay|(none|no \w+|nothing|nil) (found|noted|seen|required|needed)|no (defects?|faults?|action|damage))$/i;
/** Words that tell a finding against an item's use from what the log says under such a heading. */
export const SPEAKS_AGAINST = "against its use";
function resultReader(heading: string): Reader {
  if (FOR.test(heading) && AGAINST.test(heading)) return asItIs;
  if (AGAINST.test(heading))
    return (cell) => (readText(cell) === "" || NOTHING.test(readText(cell)) ? null : `${SPEAKS_AGAINST}: ${readText(cell)} (${heading})`);
  if (FOR.test(heading))
    return (cell) =>
      /^(no|n|not|false)\b/i.test(readText(cell)) || cell === false ? `${SPEAKS_AGAINST}: ${readText(cell)} (${heading})` : cell;
  return asItIs;
}
/** The worst of what several columns of observations say: a fault, then what cannot be told, then nothing. */
function worstSeen(id: FieldId, cells: readonly { readonly cell: CellValue; readonly weak: boolean }[]): CellValue {
  const { type, soundWords = [] } = field(id);
  const read = cells.map(({ cell, weak }) => ({
    cell,
    weak,
    read: readSeen(cell, type === "sound" ? "sound" : "fault", { mayBeAbsent: true, sound: soundWords }),
  }));
  const fault = read.find((one) => one.read.kind === "value" && one.read.value === "fault");
  const plain = read.filter((one) => !one.weak);
  const unclear = plain.find((one) => one.read.kind === "refused");
  return (fault ?? unclear ?? plain.find((one) => one.read.kind === "value") ?? read[0])?.cell;
}
/** All that is said, once; a lone date stays one. */
function allSaid(cells: readonly CellValue[]): CellValue {
  const said = cells.filter((cell) => !/^(|no|n|none|nil|false)$/i.test(readText(cell)));
  if (said.length === 0) return cells[0];
  return said.length === 1 ? said[0] : [...new Set(said.map((cell) => readText(cell)))].join("; ");
}
/** Sizes that grow with damage; all other sizes and counts shrink with it, or are as told in `LESS_IS_WORSE`. */
const GROWS: ReadonlySet<FieldId> = new Set<FieldId>(["throatNow"]);
const LESS_IS_WORSE: ReadonlySet<FieldId> = new Set<FieldId>([
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
function measure({ now, asNew, pairs, nows, news }: Family, line: Line, cells: Map<FieldId, CellValue>, headings: Headings): void {
  const rowUnit = rowUnitOf(cells.get("unit"));
  // Under a heading without a unit it is the row's, whatever the first column of the field names.
  const at = (one: Also): CellValue =>
    one.unit === null && rowUnit !== null ? withUnit(one.read(line[one.column]), rowUnit) : one.read(line[one.column]);
  const unit = (id: FieldId): Unit | null => headings.units.get(id) ?? rowUnit;
  if (asNew !== null)
    for (const pair of pairs) {
      const there = at(pair.now);
      if (readText(there) === "") continue;
      const other = { now: there, asNew: at(pair.asNew) };
      const mine = { now: cells.get(now), asNew: cells.get(asNew) };
      if (!worsePair(other, mine, { now: unit(now), asNew: unit(asNew) }, GROWS.has(now))) continue;
      cells.set(now, other.now);
      cells.set(asNew, other.asNew);
    }
  for (const one of nows)
    cells.set(now, worse(now, cells.get(now), at(one), unit(now), asNew === null ? !LESS_IS_WORSE.has(now) : GROWS.has(now)));
  if (asNew !== null) for (const one of news) cells.set(asNew, worse(asNew, cells.get(asNew), at(one), unit(asNew), !GROWS.has(now)));
}
interface Sizes<T> {
  readonly now: T;
  readonly asNew: T;
}
/** Whether another pair of sizes says more against the item than the one at hand: nothing stands there, or it has lost a larger share. */
function worsePair(other: Sizes<CellValue>, mine: Sizes<CellValue>, units: Sizes<Unit | null>, grows: boolean): boolean {
  if (readText(mine.now) === "") return true;
  const share = ({ now, asNew }: Sizes<CellValue>): Exact | null => {
    const [is, was] = [reading("throatNow", now, units.now), reading("throatNew", asNew, units.asNew)];
    if (is.kind !== "value" || was.kind !== "value" || was.value.equals(0)) return null;
    return grows ? is.value.div(was.value) : was.value.div(is.value.equals(0) ? was.value : is.value);
  };
  const [theirs, ours] = [share(other), share(mine)];
  // What cannot be read comes to the fore, so that it is told.
  if (theirs === null) return true;
  return ours !== null && largest([theirs, ours]) === theirs && !theirs.equals(ours);
}
/** The worse of two cells of one reading; what is there but cannot be read is worse than any figure. */
function worse(id: FieldId, mine: CellValue, other: CellValue, unit: Unit | null, moreIsWorse: boolean): CellValue {
  const [ours, theirs] = [reading(id, mine, unit), reading(id, other, unit)];
  if (theirs.kind === "missing" || ours.kind === "refused") return mine;
  if (theirs.kind === "refused") return /\d/.test(theirs.text) ? other : mine;
  if (ours.kind === "missing") return other;
  if (theirs.value.equals(ours.value)) return mine;
  if (NEITHER.has(id)) return `${ours.text} or ${theirs.text}?`;
  const most = largest([ours.value, theirs.value]);
  return (most === theirs.value) === moreIsWorse ? other : mine;
}
const largest = ([a, b]: readonly [Exact, Exact]): Exact => [a, b].sort((one, two) => two.compare(one))[0] ?? a;
/** A reading as one figure: a length in millimetres; one without any unit is refused by its check. */
function reading(id: FieldId, cell: CellValue, unit: Unit | null): Read<Exact> {
  const { type } = field(id);
  if (type !== "length") return type === "count" ? readCount(cell) : type === "angle" ? readDegrees(cell) : readPlain(cell);
  const read = readLength(cell, { assume: unit ?? "in", zero: true });
  return read.kind === "value" ? { ...read, value: convert(read.value.size, read.value.unit, "mm") } : read;
}
