/** What a heading says: its words without unit and answers, units, the answers it offers, and the year it is of. */
import { namedUnit, type Unit } from "../numbers/lengths";
import { tidy } from "../reading/text";
import { type Offered, offeredIn } from "./answers";
import type { Language } from "./vocabulary";

/** Words that say "as it was when new" and "as it is now". */
export const NEW = [
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
export const NOW = [
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
  cap: "capacity",
  measd: "measured",
  obs: "observed",
  dam: "damage",
  conn: "connections",
  conns: "connections",
  connection: "connections",
  reg: "register",
  registration: "register",
  op: "operation",
  func: "function",
  opern: "operation",
  dim: "dimension",
  dims: "dimension",
  matl: "material",
  mat: "material",
  defm: "deformation",
  deform: "deformation",
  distn: "distortion",
  abr: "abrasion",
  term: "terminations",
  terms: "terminations",
  termination: "terminations",
  legib: "legible",
  mkg: "marking",
  mkgs: "markings",
  mrkg: "marking",
  cert: "certificate",
  freq: "frequency",
  mod: "modification",
  mods: "modification",
  fitg: "fitting",
  fitgs: "fittings",
  ftg: "fitting",
  ftgs: "fittings",
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
  strands: "strand",
  chemicals: "chemical",
  saddles: "saddle",
  kinking: "kinks",
  alterations: "alteration",
  modifications: "modification",
  pins: "pin",
  burns: "burn",
  units: "unit",
  photos: "photo",
  color: "colour",
  certs: "certificate",
  cert: "certificate",
  chem: "chemical",
  deformity: "deformation",
  deformities: "deformation",
  marks: "markings",
  crush: "crushing",
  terminals: "terminations",
  terminal: "terminations",
  cracking: "cracks",
  fracture: "cracks",
  fractures: "cracks",
  rusting: "rust",
  rusty: "rust",
  rusted: "rust",
  abrasions: "abrasion",
  abraded: "abrasion",
  stitch: "stitching",
  sewing: "stitching",
  sewn: "stitching",
  ferrules: "ferrule",
  thimbles: "thimble",
  swages: "swage",
  seatings: "seating",
  fastenings: "fasteners",
  fastener: "fasteners",
  fixings: "fasteners",
  burnt: "burn",
  burned: "burn",
  scorching: "burn",
  scorched: "burn",
  distort: "distortion",
  elongate: "elongation",
  bending: "bent",
  bends: "bent",
  twisting: "twisted",
  stretching: "stretched",
  tearing: "tears",
  holed: "holes",
  hole: "holes",
  snag: "snags",
  dia: "diameter",
};
/** The words above as maps: a heading may say "constructor". */
const FULL = new Map(Object.entries(ABBREVIATIONS));
const SAME = new Map(Object.entries(SYNONYMS));
export const normal = (word: string): string => {
  const full = FULL.get(word) ?? word;
  return SAME.get(full) ?? full;
};

export interface Spoken {
  readonly words: readonly string[];
  readonly unit: Unit | null;
  /** A unit such as cm, which goes with each bare number under the heading. */
  readonly otherUnit: string | null;
  /** The two or three answers that the heading offers, such as none/found. */
  readonly offered: Offered | null;
  /** Begins with "Not judged:". */
  readonly aside: boolean;
  /** Begins with "Earlier:", or says previous or last. */
  readonly earlier: boolean;
}
const NOT_JUDGED = /^not judged ?:/i;
const EARLIER_MARK = /^earlier ?:/i;
/** Turns of phrase that are one word. */
const PHRASES: readonly (readonly [RegExp, string])[] = [
  // W.L.L., I.D.: letters with dots are one word; Insp'd is inspected.
  [/\b([a-z])\.([a-z])\.(?:([a-z])\.?)?(?![a-z])/gi, "$1$2$3 "],
  [/(\w)['’]d\b/g, "$1d"],
  [/[Øø⌀∅φΦ]/g, " diameter "],
  [/\bbw\b/gi, "broken wires"],
  [/\bout[- ]of[- ](?:shape|true|line|round)\b/gi, "deformed"],
  [/\bbird[- ]?cag(?:e|ed|es|ing)\b/gi, "birdcage"],
  [/\b(mark\w*|tags?|labels?|plate|id|stamp\w*) clear\b/gi, "$1 legible"],
  [/\bin[- ]service\b\??(?! (class|duty|level|type))/gi, "inservice"],
  [/\bin use\b/gi, "inuse"],
  [/\b(do not|don'?t|not to be|must not be|cannot be|can'?t be) used?\b/gi, "donotuse"],
  [/["]/g, " in "],
  [/°/g, " ° "],
  [/%/g, " percent "],
  [/\bid(?:ent(?:ification)?)?\.? tag\b/gi, "identification"],
  [/\bas[- ]new\b/gi, "asnew"],
  [/\bwhen (?:it was )?new\b/gi, "asnew"],
  [/\bfree (?:of|from)\b/gi, "freeof"],
  [/\bwithin (?:the )?(?:limits?|tolerances?|spec(?:ification)?)\b/gi, "withinlimits"],
  [/\bin (?:good )?(?:order|condition)\b/gi, "inorder"],
  [/\bin (?:its |their )?place\b/gi, "inplace"],
  [/\bout of\b/gi, "out"],
  [/(\w)n['’]t\b/gi, "$1 not"],
  [/[#№]/g, " number "],
  // Over a length of so many rope diameters.
  [/\b(3|6|10|30) ?(?:x ?)?(?:d|dia|diameters?)\b/gi, "$1d"],
  // "No." and a "no" at the end are a number; before a word it denies.
  [/\bno (?=[a-z])(?!of\b)/gi, "deny "],
];
/** Heading as a list of words without its unit. */
export function spoken(heading: string, language?: Language): Spoken {
  let text = translated(tidy(heading), language);
  const aside = NOT_JUDGED.test(text);
  const marked = EARLIER_MARK.test(text);
  if (marked) text = text.replace(EARLIER_MARK, "").trim();
  const { offered, rest } = offeredIn(text);
  text = rest;
  const bracketed = /[([{]\s*in\.?\s*[)\]}]/i.test(text);
  for (const [phrase, word] of PHRASES) text = text.replace(phrase, word);
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
    if (named && !(word === "in" && !last && !bracketed)) {
      if (!named.times.equals(1)) otherUnit ??= word;
      else if (unit === null) unit = named.unit;
      else clash ||= unit !== named.unit;
      continue;
    }
    words.push(normal(word));
  }
  // "P/F" alone is a column of results.
  if (words.length === 0 && offered !== null) words.push("result");
  // "mm/in" alone asks which of the two it is.
  if (words.length === 0 && clash) words.push("unit");
  // "Clearance (mm/in)" names none of the two.
  return { words, unit: clash ? null : unit, otherUnit, offered, aside, earlier: marked };
}
/** A heading of another language in English words. */
function translated(heading: string, language: Language | undefined): string {
  if (language === undefined) return heading;
  const parts = Object.keys(language.headings).sort((a, b) => b.length - a.length);
  let text = ` ${heading.toLowerCase()} `;
  for (const part of parts)
    text = text.replace(
      new RegExp(`(?<![\\p{L}])${part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}(?![\\p{L}])`, "gu"),
      ` ${language.headings[part] ?? part} `,
    );
  return tidy(text);
}
