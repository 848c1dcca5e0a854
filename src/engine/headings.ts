/** Headings of a log to fields: by sets of words, with units, abbreviations and two heading rows. */
import { tidy } from "./cell";
import { FIELD_IDS, field, type FieldId } from "./fields";
import type { HeadingMatch } from "./model";
import { namedUnit, type Unit } from "./units";

/** Words that say "as it was when new" and "as it is now". */
const NEW = ["new", "original", "originally", "asnew", "nominal", "catalogue", "catalog", "reference", "baseline", "base", "initial", "bought", "start", "before"];
const NOW = ["now", "measured", "measurement", "current", "actual", "present", "today", "reading", "worn", "found", "latest", "after", "min", "minimum", "thinnest"];

const ABBREVIATIONS: Record<string, string> = {
  orig: "original", org: "original", ori: "original", nom: "nominal", meas: "measured", msd: "measured", msrd: "measured", act: "actual", curr: "current", cur: "current", ref: "reference", cat: "catalogue",
  dia: "diameter", diam: "diameter", thk: "thickness", thick: "thickness", sect: "section", sec: "section", insp: "inspection", inspn: "inspection", inspd: "inspected", dt: "date", loc: "location", locn: "location",
  desc: "description", descr: "description", equip: "equipment", eqpt: "equipment", assy: "assembly", ident: "identification", id: "id", idn: "identification", cond: "condition", rem: "remarks", rmks: "remarks", rmk: "remarks",
  brk: "broken", brkn: "broken", bkn: "broken", w: "wires", strd: "strand", str: "strand", clr: "clearance", clear: "clearance", tw: "twist", deg: "degrees", degs: "degrees", opng: "opening", opg: "opening", thr: "throat", thrt: "throat",
  qty: "quantity", num: "number", no: "number", nr: "number", ser: "serial", sn: "serial", res: "resolution", constr: "construction", const: "construction", by: "by", wr: "wire", corr: "corrosion", fab: "fabrication", svc: "service", serv: "service",
  sad: "saddle", ovl: "overload",
};

const SYNONYMS: Record<string, string> = { crack: "cracks", cracked: "cracks", kink: "kinks", wire: "wires", cut: "cuts", tear: "tears", nicks: "nick", gouges: "gouge", stretch: "stretched", bend: "bent", dia: "diameter" };

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
  /** A unit in which bare numbers are not read, such as cm. */
  readonly otherUnit: string | null;
}

/** Heading as a list of words without its unit. */
export function spoken(heading: string): Spoken {
  const text = tidy(heading).replace(/["]/g, " in ").replace(/°/g, " ° ").replace(/%/g, " percent ").replace(/\bid(?:ent(?:ification)?)?\.? tag\b/gi, "identification").replace(/\bas[- ]new\b/gi, "asnew").replace(/\bwhen new\b/gi, "asnew").replace(/\bin service\b/gi, "service").replace(/\bout of\b/gi, "out").replace(/[#№]/g, " number ");
  let unit: Unit | null = null;
  let otherUnit: string | null = null;
  const raw = text.toLowerCase().replace(/[^\p{L}\p{N}°./]+/gu, " ").replace(/[./]+(?=\s|$)/g, " ").replace(/[./]/g, " ").trim().split(/\s+/).filter((w) => w !== "");
  const words: string[] = [];
  for (const [index, word] of raw.entries()) {
    const named = word.length > 1 || word === "m" ? namedUnit(word) : null;
    const last = index === raw.length - 1;
    // "in" is a unit only at the end or in brackets; elsewhere it is the word "in".
    if (named && !(word === "in" && !last && !/[([{]\s*in\.?\s*[)\]}]/i.test(tidy(heading)))) {
      if (named.times.equals(1)) unit ??= named.unit;
      else otherUnit ??= word;
      continue;
    }
    words.push(normal(word));
  }
  return { words, unit, otherUnit };
}

interface Pattern {
  readonly field: FieldId;
  /** Place among the field's patterns: of equal fits the more usual heading wins. */
  readonly place: number;
  /** Each entry must be met by one word. */
  readonly needs: readonly (readonly string[])[];
}

const FILLER = new Set(["the", "of", "a", "an", "and", "or", "at", "in", "to", "for", "is", "per", "with", "any", "this", "visible", "on", "no", "fully", "ok", "number", "°", "degrees", "diameter", "size", "dimension", "value", "check", "mm", "s", "condition"]);

const PATTERNS: readonly Pattern[] = FIELD_IDS.flatMap((id) =>
  [...field(id).words, field(id).heading].map((text, place) => ({
    field: id,
    place: text === field(id).heading ? 0 : place,
    needs: (text === field(id).heading ? spoken(text).words.filter((w) => !FILLER.has(w)).join(" ") : text)
      .split(" ")
      .filter((w) => w !== "")
      .map((w) => (w === "NEW" ? NEW : w === "NOW" ? NOW : w.split("|").flatMap((v) => (v === "asnew" ? NEW : v === "now" ? NOW : [normal(v)])))),
  })),
);

/** How well a heading fits a pattern: words met, less what is left over. Null when a needed word is missing. */
function fit(words: readonly string[], pattern: Pattern): number | null {
  const left = [...words];
  for (const need of pattern.needs) {
    const index = left.findIndex((w) => need.includes(w));
    if (index < 0) return null;
    left.splice(index, 1);
  }
  const strange = left.filter((w) => !FILLER.has(w));
  return pattern.needs.length * 10 - strange.length * 6 - (left.length - strange.length) + (left.length === 0 ? 3 : 0);
}

export interface ReadHeading {
  readonly field: FieldId | null;
  readonly unit: Unit | null;
  readonly score: number;
  readonly place: number;
}

const LIMIT_WORDS = new Set(["max", "maximum", "limit", "limits", "allowed", "allowable", "permitted", "permissible", "required", "recommended", "specified", "spec", "target", "reject", "rejection", "discard", "tolerance"]);
const CHANGE_WORDS = new Set(["growth", "percent", "pct", "wear", "loss", "change", "difference", "diff", "increase", "decrease", "reduction"]);
const LEAST_WORDS = new Set(["min", "minimum"]);
const OTHER_DATES = new Set(["next", "due", "manufacture", "manufactured", "mfg", "made", "purchase", "purchased", "bought", "proof", "test", "tested", "certificate", "certified", "cert", "expiry", "expires", "service", "commissioned", "received", "delivered", "issue", "issued"]);

/** "Min section" may be the least that was measured or the least that is allowed: any plainer heading comes first. */
const UNSURE = 12;

/**
 * What a heading loses as a heading of this field; null when it cannot be one: a column of limits or of worked-out wear
 * holds no reading, and the date of the next inspection, of a test or of purchase is not the inspection's.
 */
function lessFor(words: readonly string[], id: FieldId): number | null {
  const { type } = field(id);
  const said = (set: ReadonlySet<string>): boolean => words.some((w) => set.has(w));
  if (id === "inspected") return said(OTHER_DATES) ? null : 0;
  if (id === "service") return words.includes("date") || said(new Set(["next", "due"])) ? null : 0;
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
  const best = new Map<FieldId, { readonly score: number; readonly place: number }>();
  if (words.length > 0 && words.length <= 9)
    for (const pattern of PATTERNS) {
      const plain = fit(words, pattern);
      const less = plain === null ? null : lessFor(words, pattern.field);
      if (plain === null || less === null) continue;
      const score = plain - less;
      if (score > 0 && score > (best.get(pattern.field)?.score ?? 0)) best.set(pattern.field, { score, place: pattern.place });
    }
  const list = [...best].map(([id, { score, place }]) => ({ field: id, unit, score, place })).sort((a, b) => b.score - a.score || a.place - b.place);
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
  /** Sentences on headings that stand twice. */
  readonly problems: readonly string[];
}

/**
 * Gives each field at most one heading and each heading at most one field: the best fits first. `choices` are the
 * user's corrections by lower-case heading text and always win.
 */
export function matchHeadings(headings: readonly string[], choices: Readonly<Record<string, FieldId | null>> = {}): Headings {
  const taken = new Map<FieldId, number>();
  const given = new Map<number, FieldId | null>();
  headings.forEach((heading, column) => {
    const choice = chosen(choices, heading);
    if (choice === undefined || given.has(column)) return;
    given.set(column, choice);
    if (choice !== null && !taken.has(choice)) taken.set(choice, column);
  });
  const offers = headings
    .flatMap((heading, column) => (given.has(column) ? [] : candidates(heading).map((c) => ({ ...c, column }))))
    .sort((a, b) => b.score - a.score || a.place - b.place || a.column - b.column);
  for (const offer of offers) {
    if (offer.field === null || given.has(offer.column) || taken.has(offer.field)) continue;
    given.set(offer.column, offer.field);
    taken.set(offer.field, offer.column);
  }
  return assemble(headings, taken, choices);
}

/** What the user chose for a heading; undefined when nothing. */
function chosen(choices: Readonly<Record<string, FieldId | null>>, heading: string): FieldId | null | undefined {
  return Object.hasOwn(choices, key(heading)) ? choices[key(heading)] : undefined;
}

/** Key under which a heading's correction is remembered. */
export function key(heading: string): string {
  return tidy(heading).toLowerCase();
}

function assemble(headings: readonly string[], taken: ReadonlyMap<FieldId, number>, choices: Readonly<Record<string, FieldId | null>>): Headings {
  const byColumn = new Map([...taken].map(([id, column]) => [column, id]));
  const matches = headings.map((heading, column): HeadingMatch => ({
    column, heading: tidy(heading), field: byColumn.get(column) ?? null, unit: unitOfHeading(heading), chosen: chosen(choices, heading) !== undefined,
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
  return { matches, columns, units, names, problems: [...doubled(matches), ...inOtherUnits(matches)] };
}

/** Bare numbers are read in inches or millimetres; under a heading in centimetres they would be ten times too small. */
function inOtherUnits(matches: readonly HeadingMatch[]): readonly string[] {
  return matches.flatMap((match) => {
    if (match.field === null || field(match.field).type !== "length") return [];
    const { otherUnit } = spoken(match.heading);
    return otherUnit === null ? [] : [`The heading "${match.heading}" names ${otherUnit}; give that column in mm or in.`];
  });
}

/** The same heading twice cannot be told apart; it matters where the heading is one that is read. */
function doubled(matches: readonly HeadingMatch[]): readonly string[] {
  const seen = new Map<string, HeadingMatch[]>();
  for (const match of matches) if (match.heading !== "") seen.set(key(match.heading), [...(seen.get(key(match.heading)) ?? []), match]);
  return [...seen.values()]
    .filter((group) => group.length > 1 && group.some((m) => m.field !== null))
    .map((group) => `The heading "${group[0]?.heading ?? ""}" stands ${String(group.length)} times; give each column a heading of its own.`);
}
