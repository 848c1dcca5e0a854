/** Headings of a log to fields, and what is done with each column: decided here and nowhere else. */
import { field, FIELD_IDS, type FieldId } from "../columns";
import type { Unit } from "../numbers/lengths";
import { tidy } from "../reading/text";
import { offeredAnswers } from "./answers";
import { isResultWord, polarity } from "./polarity";
import { NEW, normal, NOW, spoken } from "./spoken";
import { GEAR_WORDS, MARKER } from "./which-one";
import {
  ASIDE,
  BESIDE_ASIDE,
  EARLIER,
  EXTREMES,
  FILLER,
  type Group,
  type Language,
  LIMITS,
  MEASURING,
  ON_PART,
  PLACES,
  RESULTS,
  STATES,
  WORKING,
} from "./vocabulary";

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
interface Pattern {
  readonly field: FieldId;
  /** Place among the field's patterns: of equal fits the more usual heading wins. */
  readonly place: number;
  /** Each entry must be met by one word. */
  readonly needs: readonly (readonly string[])[];
}
const wordSet = (...groups: readonly Group[]): ReadonlySet<string> =>
  new Set(groups.flatMap(({ words }) => words.flatMap((word) => [word, normal(word)])));
const FILLERS = wordSet(FILLER);
/** Filler of the patterns in `columns.ts` only: "number of legs" needs the legs. */
const PATTERN_FILLER: ReadonlySet<string> = new Set([
  ...FILLERS,
  "no",
  "fully",
  "ok",
  "diameter",
  "size",
  "dimension",
  "value",
  "check",
  "mm",
  "condition",
  "visible",
]);
const needsOf = (text: string): readonly (readonly string[])[] =>
  text
    .split(" ")
    .filter((w) => w !== "")
    .map((w) =>
      w === "NEW" ? NEW : w === "NOW" ? NOW : w.split("|").flatMap((v) => (v === "asnew" ? NEW : v === "now" ? NOW : [normal(v)])),
    );
const PATTERNS: readonly Pattern[] = FIELD_IDS.flatMap((id) =>
  [...field(id).words, field(id).heading].map((text, place) => ({
    field: id,
    place: text === field(id).heading ? 0 : place,
    needs: needsOf(
      text === field(id).heading
        ? spoken(text)
            .words.filter((w) => !PATTERN_FILLER.has(w))
            .join(" ")
        : text,
    ),
  })),
);
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
  "survey",
  "surveyed",
]);
/** Words that may stand beside a field of text, a choice or a date. */
const BESIDE_TEXT: Partial<Record<FieldId, string>> = {
  id: "gear equipment item asset company plant yard internal unique inventory register fleet stock store rigging lifting identification code mark tag serial web wires unit piece swl",
  gear: "gear equipment item lifting rigging name product full sling hook shackle block piece category",
  gearType: "gear item equipment maker makers product",
  size: "nominal rope chain body gear trade leg web hook shackle sling block link diameter dia size wires",
  ratedLoad:
    "rated load limit lifting rating working safe vertical straight stamped marked tag total capacity kg kgs t te lb lbs ton tons tonne tonnes short metric lift swl wll single deg",
  legs: "count sling chain wires rope",
  unit: "measure measurement length dimension dimensions size sizes used readings",
  gauge: "caliper calliper vernier tape reads",
  construction: "rope sling wires",
  assembly: "part lifting set tackle belongs name",
  place: "rack current present storage stored store home normal usual kept used gear item yard",
  service: "class level type duty conditions",
  inspected: [...DATE_WORDS].join(" "),
  inspector: "name initials person competent qualified inspector inspection signed examiner checker",
  tagged: "red tag out date service yard lock from use",
  releasedBy: "name person qualified competent service returned use role",
  releasedOn: "date service returned use",
  remarks:
    "inspector inspectors general additional rigger inspection examiner further any action actions defects defect findings faults observations notes comments details",
  clipTorque: "lb lbft ft nm n m last",
  nickPart: "nick gouge",
  brokenLay: "one any each worst single over rope length braid",
  brokenStrand: "one any each worst single over rope lay length",
  broken3d: "over rope length",
  broken6d: "over rope length worst",
  broken30d: "over rope length worst",
  brokenEnd: "over rope length",
  ropeCategory: "number rcn",
};
const FAULTS_TOGETHER = [
  "broken",
  "chipped",
  "cracks",
  "cuts",
  "damage",
  "damaged",
  "defect",
  "defects",
  "deformed",
  "distorted",
  "frayed",
  "split",
  "torn",
  "twisted",
  "wear",
  "worn",
];
/** A load of one hitch is told from the straight one; breaking and proof loads are no working load limit. */
const HITCH_WORDS = ["basket", "choker", "choke", "choked", "bridle", "original", "old", "derated", "reduced", "legs", "leg"];
const besideByType = {
  sound: wordSet(FILLER, PLACES, WORKING, STATES.good, STATES.bad, STATES.deny, STATES.unclear, STATES.affirm, STATES.look),
  fault: wordSet(FILLER, PLACES, STATES.good, STATES.deny, STATES.denyFault, STATES.unclear, STATES.affirm, STATES.look, {
    why: "",
    words: [...FAULTS_TOGETHER, "affected", "degree", "excessive", "exposure", "extent", "level", "undue"],
  }),
  measured: wordSet(FILLER, MEASURING, ON_PART, { why: "", words: GEAR_WORDS }),
  text: wordSet(FILLER),
} as const;
const isMeasured = (id: FieldId): boolean => ["length", "count", "angle", "torque"].includes(field(id).type);
const ownWords = new Map<FieldId, ReadonlySet<string>>(
  FIELD_IDS.map((id) => [
    id,
    new Set([
      ...PATTERNS.filter((p) => p.field === id)
        .flatMap(({ needs }) => needs.filter((need) => need !== NEW && need !== NOW).flat())
        .filter((word) => !NEW.includes(word) && !NOW.includes(word)),
      ...(BESIDE_TEXT[id] ?? "").split(" ").map(normal),
      ...(id === "ratedLoad" ? HITCH_WORDS : []),
    ]),
  ]),
);
const EXTREME = wordSet(EXTREMES);
/** Whether a word that no need of the pattern met is known beside that field. A word that is not makes the heading a question. */
function known(word: string, id: FieldId, words: readonly string[]): boolean {
  const { type } = field(id);
  // "Tag no." is the number on it.
  if (FILLERS.has(word)) return word !== "number" || (type !== "sound" && type !== "fault");
  if (id === "result") return isResultWord(word) || MARKER.test(word) || word === "last" || word === "latest";
  if (isMeasured(id)) {
    const measured = words.some((w) => NOW.includes(w) && !EXTREME.has(w)) || words.includes("thinnest");
    if (EXTREME.has(word)) return measured;
    if (NOW.includes(word)) return !id.endsWith("New");
    if (NEW.includes(word)) return id.endsWith("New");
    return MARKER.test(word) || besideByType.measured.has(word) || ownWords.get(id)?.has(word) === true;
  }
  if (type === "sound" || type === "fault")
    return (
      besideByType[type].has(word) || MARKER.test(word) || word === "condition" || word === "state" || ownWords.get(id)?.has(word) === true
    );
  return ownWords.get(id)?.has(word) === true || (id === "id" && MARKER.test(word));
}
interface Fit {
  readonly score: number;
  /** Every word of the heading is known for the field. */
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
  const strange = left.filter((w) => !PATTERN_FILLER.has(w));
  return {
    score: pattern.needs.length * 10 - strange.length * 6 - (left.length - strange.length) + (left.length === 0 ? 3 : 0),
    whole: left.every((w) => known(w, pattern.field, words)),
  };
}
export interface ReadHeading {
  readonly field: FieldId;
  readonly score: number;
  readonly place: number;
  readonly whole: boolean;
}
const LIMIT_WORDS = wordSet(LIMITS);
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
const ANOTHER_LOAD = new Set(["breaking", "break", "ultimate", "proof", "test", "tested", "mbl", "mbs", "max"]);
/** "Min section" may be the least that was measured or the least that is allowed: it is asked about. */
const UNSURE = 12;
/**
 * What a heading loses as a heading of this field; null when it cannot be one: a column of limits or of worked-out wear
 * holds no reading, and the date of the next inspection, of a test or of purchase is not the inspection's.
 */
function lessFor(words: readonly string[], id: FieldId): number | null {
  const said = (set: ReadonlySet<string>): boolean => words.some((w) => set.has(w));
  if (id === "inspected") return words.every((w) => DATE_WORDS.has(w)) ? 0 : null;
  if (id === "result") return words.includes("date") || words.includes("number") ? null : 0;
  if (id === "service") return words.includes("date") || said(new Set(["next", "due"])) ? null : 0;
  if (id === "ratedLoad") return said(ANOTHER_LOAD) ? null : words.some((w) => HITCH_WORDS.includes(w)) ? 3 : 0;
  if (!isMeasured(id) || id === "gauge") return 0;
  // "Worn?" asks whether it is and measures nothing; "Ref" alone is a number of the item, not its size when new.
  if (words.every((w) => w === "worn") || words.every((w) => w === "reference" || w === "number")) return null;
  const own = ownWords.get(id);
  const measured = words.some((w) => NOW.includes(w) && !LEAST.has(w));
  if (measured) return 0;
  if (words.some((w) => LIMIT_WORDS.has(w) && own?.has(w) !== true)) return null;
  if (said(CHANGE_WORDS) && !words.some((w) => NEW.includes(w))) return null;
  return words.some((w) => LEAST.has(w)) && own?.has("maker") !== true ? UNSURE : 0;
}
const LEAST = new Set(["min", "minimum"]);
/** A heading of results that none of the usual ones in `columns.ts` meets. */
const RESULT_CORE = new Set(
  [RESULTS.fit, RESULTS.inUse, RESULTS.rejected, RESULTS.damaged, RESULTS.open]
    .flatMap(({ words }): readonly string[] => words)
    .map(normal),
);
const RESULT_SCORE = 9;
/** Fields that the words of a heading may mean, best first. */
function fieldsOfWords(words: readonly string[]): readonly ReadHeading[] {
  const best = new Map<FieldId, ReadHeading>();
  if (words.length === 0 || words.length > 12) return [];
  for (const pattern of PATTERNS) {
    const plain = fit(words, pattern);
    const less = plain === null ? null : lessFor(words, pattern.field);
    if (plain === null || less === null) continue;
    const here: ReadHeading = {
      field: pattern.field,
      score: plain.score - less,
      place: pattern.place,
      whole: plain.whole && less !== UNSURE,
    };
    const before = best.get(pattern.field);
    if (before === undefined || Number(here.whole) > Number(before.whole) || (here.whole === before.whole && here.score > before.score))
      best.set(pattern.field, here);
  }
  const elsewhere = [...best.values()].some(({ field: id, whole }) => whole && id !== "result" && isRead(id));
  if (
    !elsewhere &&
    !best.get("result")?.whole &&
    words.some((w) => RESULT_CORE.has(w)) &&
    words.every((w) => known(w, "result", words)) &&
    lessFor(words, "result") !== null
  )
    best.set("result", { field: "result", score: RESULT_SCORE, place: 99, whole: true });
  return [...best.values()].sort((a, b) => b.score - a.score || a.place - b.place);
}
interface Meant {
  readonly candidates: readonly ReadHeading[];
  readonly unit: Unit | null;
  readonly aside: boolean;
  readonly earlier: FieldId | null;
  readonly about: boolean;
  /** Year and month that the heading names, as 202603; null when none. */
  readonly dated: number | null;
}
const cache = new Map<string, Meant>();
const EARLIER_WORDS = wordSet(EARLIER);
function meaning(heading: string, language: Language | undefined): Meant {
  const id = `${language?.name ?? ""}\u0001${heading}`;
  const before = cache.get(id);
  if (before) return before;
  const said = spoken(heading, language);
  const { words } = said;
  const sized = said.unit !== null || said.otherUnit !== null;
  // What is seen has no unit: "Cotter pin (mm)" is a size that nothing here reads.
  // A heading that offers answers asks for one of them and measures nothing.
  const plain = fieldsOfWords(words).map((c) => (said.offered !== null && isMeasured(c.field) ? { ...c, whole: false } : c));
  // "Strand (whole/parted)" and "Saddle on (live/dead) end" say the thing together with its good answer.
  const well = [...offeredAnswers(said)].flatMap(([word, is]) => (is === "good" ? [normal(word)] : []));
  const found = well.length === 0 || plain.some(({ whole }) => whole) ? plain : fieldsOfWords([...words, ...well]);
  const all = found.map((c) => (sized && ["sound", "fault"].includes(field(c.field).type) ? { ...c, whole: false } : c));
  const older = said.earlier
    ? all
    : words.some((w) => EARLIER_WORDS.has(w))
      ? fieldsOfWords(words.filter((w) => !EARLIER_WORDS.has(w)))
      : [];
  const earlier = all.some((c) => c.whole && !said.earlier)
    ? null
    : (older.find((c) => c.whole && isRead(c.field) && c.field !== "tagged")?.field ?? null);
  const meant: Meant = {
    candidates: said.earlier ? [] : all,
    unit: said.unit,
    aside: said.aside,
    earlier,
    about: !isAside(words),
    dated: yearOf(words),
  };
  if (cache.size > 4000) cache.clear();
  cache.set(id, meant);
  return meant;
}
const ASIDE_NEEDS = ASIDE.flatMap(({ words }) => words.map(needsOf));
const ASIDE_BESIDE = wordSet(FILLER, BESIDE_ASIDE, { why: "", words: GEAR_WORDS });
/** "Certificate expiry date" says twice that it is of the office. */
const ASIDE_WORDS = new Set(ASIDE_NEEDS.flatMap((needs) => (needs.length === 1 ? needs.flat() : [])));
const OWN_HEADINGS = new Set([
  "comes out at",
  "due state",
  "flag",
  "log differs",
  "needed",
  "overload sign",
  "reason",
  "share used",
  "short reason",
  "source",
  "used",
  "why",
]);
/** Whether a heading says nothing of condition: a column of the office, of limits, or of how a reading was when new. */
function isAside(words: readonly string[]): boolean {
  if (words.length === 0) return false;
  if (OWN_HEADINGS.has(words.join(" "))) return true;
  const office = ASIDE_NEEDS.some((needs) => {
    const left = [...words];
    for (const need of needs) {
      const index = left.findIndex((w) => need.includes(w));
      if (index < 0) return false;
      left.splice(index, 1);
    }
    return left.every((w) => ASIDE_BESIDE.has(w) || ASIDE_WORDS.has(w) || MARKER.test(w));
  });
  return office || isLimit(words) || isAsNewOnly(words);
}
/** "Max throat", "Wear limit (mm)": what is allowed of a size, a count or an angle. The most broken wires may be what was counted, so they are asked about. */
function isLimit(words: readonly string[]): boolean {
  const limits = words.filter((w) => LIMIT_WORDS.has(w));
  if (limits.length === 0 || words.some((w) => NOW.includes(w) && !LEAST.has(w))) return false;
  const rest = words.filter((w) => !LIMIT_WORDS.has(w) && !EXTREME.has(w) && !CHANGE_WORDS.has(w));
  return rest.length === 0
    ? words.some((w) => CHANGE_WORDS.has(w))
    : PATTERNS.some(
        (pattern) =>
          isMeasured(pattern.field) &&
          (field(pattern.field).type !== "count" || limits.some((w) => !EXTREME.has(w))) &&
          fit(rest, pattern)?.whole === true,
      );
}
/** "Twist when new": a reading that has no as-new column of its own, as it was when new. */
function isAsNewOnly(words: readonly string[]): boolean {
  if (!words.some((w) => NEW.includes(w))) return false;
  const rest = words.filter((w) => !NEW.includes(w));
  return PATTERNS.some((pattern) => isMeasured(pattern.field) && !/(New|Now)$/.test(pattern.field) && fit(rest, pattern)?.whole === true);
}
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
function yearOf(words: readonly string[]): number | null {
  const at = words.findIndex((w) => /^(19|20)\d\d$/.test(w));
  if (at < 0) return null;
  const month = [words[at + 1], words[at - 1]].map((w) => {
    if (w === undefined) return 0;
    if (/^(0?[1-9]|1[0-2])$/.test(w)) return Number(w);
    if (/^q[1-4]$/.test(w)) return Number(w.slice(1)) * 3;
    return MONTHS.findIndex((name) => w.startsWith(name)) + 1;
  });
  return Number(words[at]) * 100 + (month.find((m) => m > 0) ?? 0);
}
export function unitOfHeading(heading: string, language?: Language): Unit | null {
  return spoken(heading, language).unit;
}
export interface Headings {
  readonly matches: readonly HeadingMatch[];
  readonly columns: ReadonlyMap<FieldId, number>;
  readonly units: ReadonlyMap<FieldId, Unit>;
  readonly names: ReadonlyMap<FieldId, string>;
  /** Further columns of a field: "Crushing" beside "Kinks", "Throat left" beside "Throat right". */
  readonly also: ReadonlyMap<FieldId, readonly AlsoColumn[]>;
  /** Sentences on headings that stand twice. */
  readonly problems: readonly string[];
  /** Unit of bare sizes that neither heading, column nor cell tells: the user's answer for the whole log. */
  readonly bareUnit: Unit | null;
  readonly language?: Language;
}
/** A further column of a field that another column is read as. */
export interface AlsoColumn {
  readonly column: number;
  readonly heading: string;
  readonly unit: Unit | null;
  /** What its heading says without the words for new and now: columns of the same say belong together. */
  readonly stem: string;
}
const isSeen = (id: FieldId): boolean => ["sound", "fault"].includes(field(id).type);
/** Fields of which a second column is never passed over. Of other fields, and of dates, the best column counts. */
export const isRead = (id: FieldId): boolean => isMeasured(id) || isSeen(id) || id === "tagged" || id === "result" || id === "remarks";
const stemOf = (heading: string, language: Language | undefined): string =>
  spoken(heading, language)
    .words.filter((w) => !NEW.includes(w) && !NOW.includes(w))
    .sort()
    .join(" ");
/** Answers of the user, and what else holds for a whole log. */
export interface HeadingOptions {
  /** Fields found by a column's contents, by column; the user's choices come first. */
  readonly byContents?: ReadonlyMap<number, FieldId>;
  readonly bareUnit?: Unit | null;
  readonly language?: Language | undefined;
}
/**
 * Gives each field at most one heading and each heading at most one field: the best fits first. `choices` are the
 * user's corrections by lower-case heading text and always win; null sets a column aside.
 */
export function matchHeadings(
  headings: readonly string[],
  choices: Readonly<Record<string, FieldId | null>> = {},
  options: HeadingOptions = {},
): Headings {
  const { language } = options;
  const meant = headings.map((heading) => meaning(heading, language));
  const taken = new Map<FieldId, number>();
  const given = new Set<number>();
  const further = new Map<number, FieldId>();
  const earlier = new Map<number, FieldId>();
  const give = (column: number, id: FieldId): void => {
    given.add(column);
    if (taken.has(id)) further.set(column, id);
    else taken.set(id, column);
  };
  headings.forEach((heading, column) => {
    const choice = chosen(choices, heading);
    if (choice === null || (choice === undefined && meant[column]?.aside === true)) given.add(column);
    else if (choice !== undefined) give(column, choice);
  });
  for (const [column, id] of options.byContents ?? []) if (!given.has(column) && !taken.has(id)) give(column, id);
  const offers = headings
    .flatMap((_, column) =>
      given.has(column) ? [] : (meant[column]?.candidates ?? []).filter((c) => c.whole).map((c) => ({ ...c, column })),
    )
    // A heading "Type" names the gear, and a type of it only where another heading names the gear.
    .sort(
      (a, b) =>
        Number(a.field === "gearType") - Number(b.field === "gearType") || b.score - a.score || a.place - b.place || a.column - b.column,
    );
  const old = older(offers, meant);
  // A heading that says the opposite is read only where none says the thing itself.
  for (const plainly of [true, false])
    for (const offer of offers) {
      if (given.has(offer.column) || taken.has(offer.field) || old.has(offer.column)) continue;
      // A second "Hook section" is a further reading of it, never the section of something else.
      if (offers.some((one) => one.column === offer.column && one.score > offer.score && isMeasured(one.field) && taken.has(one.field)))
        continue;
      if (plainly && polarity(headings[offer.column] ?? "", offer.field) !== "straight") continue;
      give(offer.column, offer.field);
    }
  for (const offer of offers) {
    // "WLL marked" may hold the load, or say that it is not there.
    if (isSeen(offer.field) && taken.has(offer.field) && [...taken].some(([id, column]) => column === offer.column && !isRead(id)))
      further.set(offer.column, offer.field);
    if (given.has(offer.column) || !isRead(offer.field)) continue;
    given.add(offer.column);
    if (old.has(offer.column)) earlier.set(offer.column, offer.field);
    else further.set(offer.column, offer.field);
  }
  meant.forEach(({ earlier: id }, column) => {
    if (id === null || given.has(column)) return;
    given.add(column);
    earlier.set(column, id);
  });
  return assemble(headings, { taken, further, earlier, meant, choices, options });
}
/** Columns of a thing that name a day before the newest one that is named for it: they are older readings. */
function older(offers: readonly (ReadHeading & { readonly column: number })[], meant: readonly Meant[]): ReadonlySet<number> {
  const first = new Map<number, FieldId>();
  for (const { column, field: id } of offers) if (!first.has(column)) first.set(column, id);
  const newest = new Map<FieldId, number>();
  for (const [column, id] of first) newest.set(id, Math.max(newest.get(id) ?? 0, meant[column]?.dated ?? 0));
  return new Set(
    [...first].flatMap(([column, id]) => {
      const dated = meant[column]?.dated ?? null;
      return dated !== null && isRead(id) && !id.endsWith("New") && isBefore(dated, newest.get(id) ?? 0) ? [column] : [];
    }),
  );
}
/** Of the same year, a column that names no month is before none. */
const isBefore = (a: number, b: number): boolean => Math.floor(a / 100) < Math.floor(b / 100) || (a < b && a % 100 !== 0);
/** What the user chose for a heading; undefined when nothing. */
function chosen(choices: Readonly<Record<string, FieldId | null>>, heading: string): FieldId | null | undefined {
  return Object.hasOwn(choices, key(heading)) ? choices[key(heading)] : undefined;
}
/** Key under which a heading's correction is remembered. */
export function key(heading: string): string {
  return tidy(heading).toLowerCase();
}
interface Given {
  readonly taken: ReadonlyMap<FieldId, number>;
  readonly further: ReadonlyMap<number, FieldId>;
  readonly earlier: ReadonlyMap<number, FieldId>;
  readonly meant: readonly Meant[];
  readonly choices: Readonly<Record<string, FieldId | null>>;
  readonly options: HeadingOptions;
}
function assemble(headings: readonly string[], { taken, further, earlier, meant, choices, options }: Given): Headings {
  const { language, bareUnit = null } = options;
  const byColumn = new Map([...taken].map(([id, column]) => [column, id]));
  const matches = headings.map((heading, column): HeadingMatch => {
    const { candidates, unit, aside, about } = meant[column] ?? meaning(heading, language);
    const choice = chosen(choices, heading);
    const read = byColumn.has(column) || further.has(column) || earlier.has(column);
    // A second id, name or place: the best column counts, and the others hold no finding either.
    const other = candidates.some((c) => c.whole);
    const state = read ? "read" : choice === null || aside ? "set aside" : other || !about ? "not about condition" : "not understood";
    return {
      column,
      heading: tidy(heading),
      field: byColumn.get(column) ?? null,
      also: further.get(column) ?? null,
      unit,
      chosen: choice !== undefined,
      state,
      proposal: state === "not understood" ? (candidates.find((c) => c.score > 0)?.field ?? null) : null,
      earlier: earlier.get(column) ?? null,
    };
  });
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
  for (const [column, id] of [...further].sort(([a], [b]) => a - b)) {
    const heading = tidy(headings[column] ?? "");
    also.set(id, [...(also.get(id) ?? []), { column, heading, unit: unitOfHeading(heading, language), stem: stemOf(heading, language) }]);
  }
  return { matches, columns, units, names, also, problems: doubled(matches), bareUnit, ...(language === undefined ? {} : { language }) };
}
/** Whether the register has to carry a column under its own heading: nothing else of the register would tell what it says. */
export const isCarried = (match: HeadingMatch): boolean => match.state === "not understood" || match.earlier !== null;
/** The heading under which the register carries such a column. */
export const carriedHeading = (match: HeadingMatch): string =>
  match.earlier === null || /^earlier ?:/i.test(match.heading) ? match.heading : `Earlier: ${match.heading}`;
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
