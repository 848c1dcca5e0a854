/** Headings of a log to fields: by sets of words, with units, abbreviations and two heading rows. */
import { field, FIELD_IDS, type FieldId } from "../columns";
import { namedUnit, type Unit } from "../numbers/lengths";
import { tidy } from "../reading/text";

/** How one heading of a log was read. */
export interface HeadingMatch {
  /** Zero-based column inside the grid. */
  readonly column: number;
  /** The heading as it stands, two heading rows joined by a space. */
  readonly heading: string;
  /** Field it is read as, or null when it is not used. */
  readonly field: FieldId | null;
  /** Field that another column is read as and this one is read with; null when it stands alone or is not used. */
  readonly also: FieldId | null;
  /** Unit named in the heading. */
  readonly unit: Unit | null;
  /** True when the user chose it. */
  readonly chosen: boolean;
  readonly state: ColumnState;
  /** Field that a heading which is not understood may mean: a question for the user, never a reading by itself. */
  readonly proposal: FieldId | null;
  /** Field of which the column holds an older reading, such as last year's; null where it holds none. */
  readonly earlier: FieldId | null;
}
/**
 * What is done with a column. "read": every word of its heading is known for that reading. "not about condition": it
 * holds no finding (a price, a purchase date). "set aside": by the user. "not understood": asks before anything is kept.
 */
export type ColumnState = "read" | "not about condition" | "set aside" | "not understood";
/** Words that say "as it was when new" and "as it is now". */
const NEW = [
  "new",
  "original",
  "originally",
  "asnew",
  "nominal",
  "catalogue",
  "catalog",
  "reference",
  "baseline",
  "base",
  "initial",
  "bought",
  "start",
  "before",
];
const NOW = [
  "now",
  "measured",
  "measurement",
  "current",
  "actual",
  "present",
  "today",
  "reading",
  "worn",
  "found",
  "latest",
  "after",
  "min",
  "minimum",
  "thinnest",
];
const ABBREVIATIONS: Record<string, string> = {
  orig: "original",
  org: "original",
  ori: "original",
  nom: "nominal",
  meas: "measured",
  msd: "measured",
  msrd: "measured",
  act: "actual",
  curr: "current",
  cur: "current",
  ref: "reference",
  cat: "catalogue",
  dia: "diameter",
  diam: "diameter",
  thk: "thickness",
  thick: "thickness",
  sect: "section",
  sec: "section",
  insp: "inspection",
  inspn: "inspection",
  inspd: "inspected",
  dt: "date",
  loc: "location",
  locn: "location",
  desc: "description",
  descr: "description",
  equip: "equipment",
  eqpt: "equipment",
  assy: "assembly",
  ident: "identification",
  id: "id",
  idn: "identification",
  cond: "condition",
  rem: "remarks",
  rmks: "remarks",
  rmk: "remarks",
  brk: "broken",
  brkn: "broken",
  bkn: "broken",
  w: "wires",
  strd: "strand",
  str: "strand",
  clr: "clearance",
  clear: "clearance",
  tw: "twist",
  deg: "degrees",
  degs: "degrees",
  opng: "opening",
  opg: "opening",
  thr: "throat",
  thrt: "throat",
  qty: "quantity",
  num: "number",
  no: "number",
  nr: "number",
  ser: "serial",
  sn: "serial",
  res: "resolution",
  constr: "construction",
  const: "construction",
  by: "by",
  wr: "wire",
  corr: "corrosion",
  fab: "fabrication",
  svc: "service",
  serv: "service",
  sad: "saddle",
  ovl: "overload",
  exam: "examination",
};
const SYNONYMS: Record<string, string> = {
  crack: "cracks",
  cracked: "cracks",
  kink: "kinks",
  wire: "wires",
  cut: "cuts",
  tear: "tears",
  nicks: "nick",
  gouges: "gouge",
  stretch: "stretched",
  bend: "bent",
  dia: "diameter",
};
/** The words above as maps: a heading may say "constructor". */
const FULL = new Map(Object.entries(ABBREVIATIONS));
const SAME = new Map(Object.entries(SYNONYMS));
const normal = (word: string): string => {
  const full = FULL.get(word) ?? word;
  return SAME.get(full) ?? full;
};
interface Spoken {
  readonly words: readonly string[];
  readonly unit: Unit | null;
  /** A unit such as cm, which goes with each bare number under the heading. */
  readonly otherUnit: string | null;
}
/** Heading as a list of words without its unit. */
export function spoken(heading: string): Spoken {
  const text = tidy(heading)
    .replace(/\bin[- ]service\b\??(?! (class|duty|level|type))/gi, "inservice")
    .replace(/["]/g, " in ")
    .replace(/°/g, " ° ")
    .replace(/%/g, " percent ")
    .replace(/\bid(?:ent(?:ification)?)?\.? tag\b/gi, "identification")
    .replace(/\bas[- ]new\b/gi, "asnew")
    .replace(/\bwhen new\b/gi, "asnew")
    .replace(/\bout of\b/gi, "out")
    .replace(/[#№]/g, " number ");
  let unit: Unit | null = null;
  let otherUnit: string | null = null;
  let clash = false;
  const raw = text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}°./]+/gu, " ")
    .replace(/[./]+(?=\s|$)/g, " ")
    .replace(/[./]/g, " ")
    .trim()
    .split(/\s+/)
    .filter((w) => w !== "");
  const words: string[] = [];
  for (const [index, word] of raw.entries()) {
    const named = word.length > 1 || word === "m" ? namedUnit(word) : null;
    const last = index === raw.length - 1;
    // "in" is a unit only at the end or in brackets; elsewhere it is the word "in".
    if (named && !(word === "in" && !last && !/[([{]\s*in\.?\s*[)\]}]/i.test(tidy(heading)))) {
      if (!named.times.equals(1)) otherUnit ??= word;
      else if (unit === null) unit = named.unit;
      else clash ||= unit !== named.unit;
      continue;
    }
    words.push(normal(word));
  }
  // "Clearance (mm/in)" names none of the two.
  return { words, unit: clash ? null : unit, otherUnit };
}
interface Pattern {
  readonly field: FieldId;
  /** Place among the field's patterns: of equal fits the more usual heading wins. */
  readonly place: number;
  /** Each entry must be met by one word. */
  readonly needs: readonly (readonly string[])[];
}
const FILLER = new Set([
  "the",
  "of",
  "a",
  "an",
  "and",
  "or",
  "at",
  "in",
  "to",
  "for",
  "is",
  "per",
  "with",
  "any",
  "this",
  "visible",
  "on",
  "no",
  "fully",
  "ok",
  "number",
  "°",
  "degrees",
  "diameter",
  "size",
  "dimension",
  "value",
  "check",
  "mm",
  "s",
  "condition",
]);
const PATTERNS: readonly Pattern[] = FIELD_IDS.flatMap((id) =>
  [...field(id).words, field(id).heading].map((text, place) => ({
    field: id,
    place: text === field(id).heading ? 0 : place,
    needs: (text === field(id).heading
      ? spoken(text)
          .words.filter((w) => !FILLER.has(w))
          .join(" ")
      : text
    )
      .split(" ")
      .filter((w) => w !== "")
      .map((w) =>
        w === "NEW" ? NEW : w === "NOW" ? NOW : w.split("|").flatMap((v) => (v === "asnew" ? NEW : v === "now" ? NOW : [normal(v)])),
      ),
  })),
);
/** Words that tell one reading of a place from another of the same place: "Throat 2024", "Bow X", "Pin left". */
const MARKER = /^(\p{N}+(st|nd|rd|th)?|[a-z]|left|right|lh|rh|first|second|front|back|rear|mpi|mt|pt|ndt|visual|side)$/u;
interface Fit {
  readonly score: number;
  /** True when nothing of the heading is left over but what tells one column from the next. */
  readonly whole: boolean;
}
/** How well a heading fits a pattern: words met, less what is left over. Null when a needed word is missing. */
function fit(words: readonly string[], pattern: Pattern): Fit | null {
  const left = [...words];
  for (const need of pattern.needs) {
    const index = left.findIndex((w) => need.includes(w));
    if (index < 0) return null;
    left.splice(index, 1);
  }
  const strange = left.filter((w) => !FILLER.has(w));
  return {
    score: pattern.needs.length * 10 - strange.length * 6 - (left.length - strange.length) + (left.length === 0 ? 3 : 0),
    whole: strange.every((w) => MARKER.test(w)),
  };
}
export interface ReadHeading {
  readonly field: FieldId;
  readonly unit: Unit | null;
  readonly score: number;
  readonly place: number;
  readonly whole: boolean;
}
const NEGATED = /^no\b(?!\.| ?[\d#]| of\b)|\b(not|non|without|never)\b|\bun(?=seated|readable)/i;
const NEGATED_FAULT = /\bfree (of|from)\b|[a-z][- ]free\b|^free\b/i;
const FAULT_WORD =
  /\b(missing|damage[ds]?|broken|loose|wobbl\w*|illegible|worn|wear|defects?|defective|gone|lost|mismatch\w*|seized|stuck|stiff|bent|cracks?|cracked|faulty|fault|fail(ed|ure)?|absent|inoperative|wrong|reversed|torn|cut|frayed)\b/i;
const GOOD_WORD = /\b(ok|okay|sound|good|pass(ed)?|clear|intact|acceptable|satisfactory|none)\b/i;
/**
 * Whether yes and no mean the opposite of what the field takes: "Latch missing" in a column of what is in order, "Free of
 * cracks" among the faults. "Threads not damaged" turns twice.
 */
export function turned(heading: string, id: FieldId): boolean {
  const { type } = field(id);
  const text = tidy(heading);
  if (type === "sound") return NEGATED.test(text) !== FAULT_WORD.test(text);
  if (type === "fault") return (NEGATED.test(text) || NEGATED_FAULT.test(text)) !== GOOD_WORD.test(text);
  return false;
}
/** "Crack test: no" may say that there was no test. Yes and no settle nothing there. */
export function asksWhether(heading: string, id: FieldId): boolean {
  return field(id).type === "fault" && /\b(check(ed)?|test(ed)?|examined|examination|looked)\b/i.test(tidy(heading));
}
const LIMIT_WORDS = new Set([
  "max",
  "maximum",
  "limit",
  "limits",
  "allowed",
  "allowable",
  "permitted",
  "permissible",
  "required",
  "recommended",
  "specified",
  "spec",
  "target",
  "reject",
  "rejection",
  "discard",
  "tolerance",
]);
const CHANGE_WORDS = new Set([
  "growth",
  "percent",
  "pct",
  "wear",
  "loss",
  "change",
  "difference",
  "diff",
  "increase",
  "decrease",
  "reduction",
]);
const LEAST_WORDS = new Set(["min", "minimum"]);
/** All that the heading of the inspection's date may say; any other date is another one: of purchase, repair, test, the next. */
const DATE_WORDS = new Set([
  "inspected",
  "inspection",
  "examined",
  "examination",
  "checked",
  "date",
  "last",
  "latest",
  "this",
  "on",
  "of",
  "the",
  "visual",
  "thorough",
  "annual",
  "periodic",
  "day",
]);
const ANOTHER_LOAD = new Set(["breaking", "break", "ultimate", "proof", "test", "tested", "mbl", "mbs", "max"]);
const HITCH_WORDS = new Set(["basket", "choker", "choke", "choked", "bridle", "original", "old", "derated", "reduced", "legs", "leg"]);
/** "Min section" may be the least that was measured or the least that is allowed: any plainer heading comes first. */
const UNSURE = 12;
/**
 * What a heading loses as a heading of this field; null when it cannot be one: a column of limits or of worked-out wear
 * holds no reading, and the date of the next inspection, of a test or of purchase is not the inspection's.
 */
function lessFor(words: readonly string[], id: FieldId): number | null {
  const { type } = field(id);
  const said = (set: ReadonlySet<string>): boolean => words.some((w) => set.has(w));
  if (id === "inspected") return words.every((w) => DATE_WORDS.has(w)) ? 0 : null;
  if (id === "result") return words.includes("date") || words.includes("number") ? null : 0;
  if (id === "service") return words.includes("date") || said(new Set(["next", "due"])) ? null : 0;
  // A tag names the load of one hitch only where it says so; breaking and proof loads are no working load limit.
  if (id === "ratedLoad") return said(ANOTHER_LOAD) ? null : said(HITCH_WORDS) ? 3 : 0;
  if ((type !== "length" && type !== "count" && type !== "angle" && type !== "torque") || id === "gauge") return 0;
  const measured = words.some((w) => NOW.includes(w) && !LEAST_WORDS.has(w));
  if (measured) return 0;
  if (said(LIMIT_WORDS)) return null;
  if (said(CHANGE_WORDS) && !words.some((w) => NEW.includes(w))) return null;
  return said(LEAST_WORDS) ? UNSURE : 0;
}
const cache = new Map<string, readonly ReadHeading[]>();
/** Fields that a heading may mean, best first. */
function candidates(heading: string): readonly ReadHeading[] {
  const known = cache.get(heading);
  if (known) return known;
  const { words, unit } = spoken(heading);
  const best = new Map<FieldId, { readonly score: number; readonly place: number; readonly whole: boolean }>();
  if (words.length > 0 && words.length <= 9)
    for (const pattern of PATTERNS) {
      const plain = fit(words, pattern);
      const less = plain === null ? null : lessFor(words, pattern.field);
      if (plain === null || less === null) continue;
      const score = plain.score - less;
      const before = best.get(pattern.field);
      if (score > 0 && score > (before?.score ?? 0))
        best.set(pattern.field, { score, place: pattern.place, whole: plain.whole || before?.whole === true });
      else if (score > 0 && plain.whole && before) best.set(pattern.field, { ...before, whole: true });
    }
  const list = [...best].map(([id, found]) => ({ field: id, unit, ...found })).sort((a, b) => b.score - a.score || a.place - b.place);
  if (cache.size > 4000) cache.clear();
  cache.set(heading, list);
  return list;
}
export function unitOfHeading(heading: string): Unit | null {
  return spoken(heading).unit;
}
export interface Headings {
  readonly matches: readonly HeadingMatch[];
  readonly columns: ReadonlyMap<FieldId, number>;
  readonly units: ReadonlyMap<FieldId, Unit>;
  readonly names: ReadonlyMap<FieldId, string>;
  /** Further columns of a field: "Crushing" beside "Kinks", "Throat 2026" beside "Throat 2024". */
  readonly also: ReadonlyMap<FieldId, readonly AlsoColumn[]>;
  /** Sentences on headings that stand twice. */
  readonly problems: readonly string[];
}
/** A further column of a field that another column is read as. */
export interface AlsoColumn {
  readonly column: number;
  readonly heading: string;
  readonly unit: Unit | null;
  /** More stands in its heading than the field's words: only a fault is taken from it. */
  readonly weak: boolean;
  /** What its heading says without the words for new and now: columns of the same say belong together. */
  readonly stem: string;
}
/** Fields of which a second column is never passed over. Of other fields, and of dates, the best column counts. */
export const isRead = (id: FieldId): boolean =>
  ["length", "count", "angle", "torque", "sound", "fault"].includes(field(id).type) || id === "tagged" || id === "result";
const isSeen = (id: FieldId): boolean => field(id).type === "sound" || field(id).type === "fault";
interface Further {
  readonly field: FieldId;
  readonly weak: boolean;
}
const stemOf = (heading: string): string =>
  spoken(heading)
    .words.filter((w) => !NEW.includes(w) && !NOW.includes(w))
    .sort()
    .join(" ");
/**
 * Gives each field at most one heading and each heading at most one field: the best fits first. `choices` are the
 * user's corrections by lower-case heading text and always win.
 */
export function matchHeadings(headings: readonly string[], choices: Readonly<Record<string, FieldId | null>> = {}): Headings {
  const taken = new Map<FieldId, number>();
  const given = new Map<number, FieldId | null>();
  const further = new Map<number, Further>();
  headings.forEach((heading, column) => {
    const choice = chosen(choices, heading);
    if (choice === undefined || given.has(column)) return;
    given.set(column, choice);
    if (choice === null) return;
    if (taken.has(choice)) further.set(column, { field: choice, weak: false });
    else taken.set(choice, column);
  });
  const offers = headings
    .flatMap((heading, column) => (given.has(column) ? [] : candidates(heading).map((c) => ({ ...c, column }))))
    .sort((a, b) => b.score - a.score || a.place - b.place || a.column - b.column);
  // A heading that says the opposite is read only where none says the thing itself.
  for (const plainly of [true, false])
    for (const offer of offers) {
      if (given.has(offer.column) || taken.has(offer.field) || (plainly && turned(headings[offer.column] ?? "", offer.field))) continue;
      given.set(offer.column, offer.field);
      taken.set(offer.field, offer.column);
    }
  for (const offer of offers)
    if (!given.has(offer.column) && !further.has(offer.column) && (offer.whole || isSeen(offer.field)) && isRead(offer.field))
      further.set(offer.column, { field: offer.field, weak: !offer.whole });
  return assemble(headings, taken, further, choices);
}
/** What the user chose for a heading; undefined when nothing. */
function chosen(choices: Readonly<Record<string, FieldId | null>>, heading: string): FieldId | null | undefined {
  return Object.hasOwn(choices, key(heading)) ? choices[key(heading)] : undefined;
}
/** Key under which a heading's correction is remembered. */
export function key(heading: string): string {
  return tidy(heading).toLowerCase();
}
function assemble(
  headings: readonly string[],
  taken: ReadonlyMap<FieldId, number>,
  further: ReadonlyMap<number, Further>,
  choices: Readonly<Record<string, FieldId | null>>,
): Headings {
  const byColumn = new Map([...taken].map(([id, column]) => [column, id]));
  const matches = headings.map((heading, column): HeadingMatch => ({
    column,
    heading: tidy(heading),
    field: byColumn.get(column) ?? null,
    also: further.get(column)?.field ?? null,
    unit: unitOfHeading(heading),
    chosen: chosen(choices, heading) !== undefined,
    state: byColumn.has(column) || further.has(column) ? "read" : chosen(choices, heading) === null ? "set aside" : "not about condition",
    proposal: null,
    earlier: null,
  }));
  const units = new Map<FieldId, Unit>();
  const names = new Map<FieldId, string>();
  for (const match of matches) {
    if (match.field === null) continue;
    names.set(match.field, match.heading);
    if (match.unit !== null) units.set(match.field, match.unit);
  }
  // One column for heat and chemicals is read for both.
  const heat = names.get("heat");
  const columns = new Map(taken);
  const both = taken.get("heat");
  if (heat !== undefined && both !== undefined && !taken.has("chemical") && /chem|acid/i.test(heat)) {
    columns.set("chemical", both);
    names.set("chemical", heat);
  }
  const also = new Map<FieldId, AlsoColumn[]>();
  for (const [column, { field: id, weak }] of [...further].sort(([a], [b]) => a - b)) {
    const heading = tidy(headings[column] ?? "");
    also.set(id, [...(also.get(id) ?? []), { column, heading, unit: unitOfHeading(heading), weak, stem: stemOf(heading) }]);
  }
  return { matches, columns, units, names, also, problems: doubled(matches) };
}
/** The same heading twice cannot be told apart; it matters where the heading is one that is read. */
function doubled(matches: readonly HeadingMatch[]): readonly string[] {
  const seen = new Map<string, HeadingMatch[]>();
  for (const match of matches) if (match.heading !== "") seen.set(key(match.heading), [...(seen.get(key(match.heading)) ?? []), match]);
  return [...seen.values()]
    .filter((group) => group.length > 1 && group.some((m) => m.field !== null && m.field !== "result"))
    .map(
      (group) => `The heading "${group[0]?.heading ?? ""}" stands ${String(group.length)} times; give each column a heading of its own.`,
    );
}
