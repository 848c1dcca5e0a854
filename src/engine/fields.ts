/**
 * The vocabulary of a log: every column that the engine can read, once. Register columns, heading matching, the note
 * sheet and the drop-downs are derived from it.
 */

import { SHACKLE_PATTERNS } from "./tables/shackle";

export type FieldType = "text" | "length" | "count" | "angle" | "torque" | "date" | "sound" | "fault" | "choice";

export interface Field {
  /** Heading in the register. */
  readonly heading: string;
  readonly type: FieldType;
  /** What the column takes, for the note sheet, the cell prompt and the pane. */
  readonly takes: string;
  /**
   * Headings that clerks write for it. Each entry is a set of words that must all stand in the heading;
   * `a|b` means either word. The role words NEW and NOW stand for the lists in `headings.ts`.
   */
  readonly words: readonly string[];
  /** Drop-down entries. */
  readonly choices?: readonly string[];
  /** Words that are in order in this column of observations and not in others, in small letters. */
  readonly soundWords?: readonly string[];
}

const FAULT = ["none", "found"] as const;
const SOUND = ["yes", "no"] as const;
/** Drop-down entry of an observation that may rightly have nothing to look at. */
export const NONE_REQUIRED = "none required";

const length = (heading: string, takes: string, words: readonly string[]): Field => ({ heading, type: "length", takes, words });
const fault = (heading: string, takes: string, words: readonly string[]): Field => ({ heading, type: "fault", takes, words, choices: FAULT });
const sound = (heading: string, takes: string, words: readonly string[], choices: readonly string[] = SOUND): Field => ({
  heading, type: "sound", takes, words, choices,
});

export const FIELDS = {
  id: { heading: "Id", type: "text", takes: "The mark on the item; each id once.", words: ["id", "id no|number", "sling|hook|shackle|link|swivel|block|chain id|no|number", "gear|asset|item|equipment|tag|serial|unit|rigging id|no|number|ref|mark", "serial", "mark", "identification no|number", "ref", "reference", "asset", "number", "no", "item"] },
  gear: { heading: "Gear", type: "choice", takes: "Kind of gear, such as hook, shackle, chain sling or running rope; the drop-down lists the kinds.", words: ["gear", "gear kind|type", "type", "kind", "item", "item|gear|equipment description|type|kind", "description", "equipment", "category", "type gear|equipment|hardware", "hardware"] },
  size: { heading: "Size", type: "text", takes: "Nominal size as the trade writes it, such as 3/8 or 10 mm.", words: ["size", "nominal size|diameter|dia", "nom size|diameter|dia", "chain size", "trade size", "nominal", "rope|chain diameter|dia|size"] },
  ratedLoad: { heading: "Rated load", type: "text", takes: "Working load limit with its unit as on the tag, such as 3.25 t, 4,750 lb or 2000 kg.", words: ["rated load|capacity", "wll", "swl", "working load", "working load limit", "safe working load", "capacity"] },
  legs: { heading: "Legs", type: "text", takes: "Number of legs of a sling, when its rating is for all of them together; blank or 1 for one leg.", words: ["legs", "number legs", "number leg", "leg count|quantity|configuration|arrangement"] },
  asNewFrom: { heading: "As-new from", type: "choice", takes: "For shackles without as-new sizes: the table of new shackles that they were made to; blank when the sizes are their own.", words: ["as new from", "asnew from", "as new source"], choices: SHACKLE_PATTERNS },
  unit: { heading: "Unit", type: "choice", takes: "Unit of bare numbers in the row: in or mm.", words: ["unit", "uom", "measure unit", "unit measure"], choices: ["in", "mm"] },
  gauge: { heading: "Gauge reads to", type: "length", takes: "Resolution of the gauge used, such as 0.01 or 1/64; blank when unknown.", words: ["gauge", "gauge reads|resolution|res", "resolution", "instrument resolution"] },
  construction: { heading: "Construction", type: "choice", takes: "Rope construction: strand laid, cable laid, braided under 8, braided 8 or more.", words: ["construction", "rope construction|type", "lay type", "construct"], choices: ["strand laid", "cable laid", "braided under 8", "braided 8 or more"] },
  assembly: { heading: "Assembly", type: "text", takes: "Name of the tackle that the item is part of; the same name on all its parts.", words: ["assembly", "set", "assy", "part of", "belongs", "tackle", "assembly set", "used in"] },
  place: { heading: "Place", type: "text", takes: "Where the item is kept or used.", words: ["place", "location", "where", "area", "store", "bay", "site", "department", "kept"] },
  service: { heading: "Service", type: "choice", takes: "normal, severe, idle, monthly, quarterly, 6 monthly or yearly.", words: ["service", "service class|level|type|duty", "duty", "interval", "frequency", "inspection interval|frequency"], choices: ["normal", "severe", "idle", "monthly", "quarterly", "6 monthly", "yearly"] },
  inspected: { heading: "Inspected", type: "date", takes: "Date of this inspection, as a date.", words: ["inspected", "date", "last inspected|inspection|insp|checked|examined|examination", "inspection|insp|examination date", "date inspected|checked|examined|inspection|examination", "thorough examination", "checked", "examined", "inspected on|date", "last date inspection"] },
  inspector: { heading: "Inspected by", type: "text", takes: "Name or role of the inspector.", words: ["inspector", "inspected|checked|examined by", "by", "initials", "insp by", "competent person"] },
  throatNew: length("Throat as-new", "Throat opening when new, across the throat or between the punch marks.", ["throat NEW", "throat opening NEW", "opening NEW", "mouth NEW", "gap NEW", "hook opening NEW"]),
  throatNow: length("Throat now", "Throat opening measured at the same place.", ["throat NOW", "throat opening NOW", "opening NOW", "mouth NOW", "gap NOW", "hook opening NOW", "throat", "throat opening", "mouth opening", "opening"]),
  sectionNew: length("Section as-new", "Section when new where it wears most: hook saddle, shackle bow, link crown, swivel body, block part.", ["section|saddle|bowl|bow|crown|body|wear|thickness|cheek|shell NEW", "side|cheek plate NEW", "NEW", "NEW size|dim|dimension|diameter|thickness|measurement|mm|in", "section saddle|bowl|bow|crown NEW", "catalogue|catalog size|dim|dimension"]),
  sectionNow: length("Section now", "The same section as measured, at its thinnest.", ["section|saddle|bowl|bow|crown|body|thickness|cheek|shell NOW", "side|cheek plate NOW", "NOW", "NOW size|dim|dimension|diameter|thickness|measurement|mm|in", "section saddle|bowl|bow|crown NOW", "thinnest", "thinnest link", "link thinnest|thickness|NOW", "min link", "thinnest point", "least thickness|link", "saddle", "bowl", "bow", "crown", "section"]),
  acrossNew: length("Across as-new", "The section at right angles to it when new, where wear runs in two directions.", ["across NEW", "section across NEW", "second|2nd direction NEW", "width NEW", "section 2 NEW", "NEW across|2"]),
  acrossNow: length("Across now", "The section at right angles to it as measured.", ["across NOW", "section across NOW", "second|2nd direction NOW", "width NOW", "section 2 NOW", "NOW across|2", "across"]),
  pinNew: length("Pin as-new", "Pin diameter when new.", ["pin NEW", "pin diameter|dia|size|section NEW", "load pin NEW"]),
  pinNow: length("Pin now", "Pin diameter at its thinnest.", ["pin NOW", "pin diameter|dia|size|section NOW", "load pin NOW", "pin diameter|dia", "pin"]),
  eyeNew: length("Eye as-new", "Section of the eye or shank when new.", ["eye|shank NEW", "eye section|thickness NEW"]),
  eyeNow: length("Eye now", "Section of the eye or shank as measured.", ["eye|shank NOW", "eye section|thickness NOW", "eye section"]),
  twist: { heading: "Twist deg", type: "angle", takes: "Twist out of the plane of the unbent hook, in degrees; 0 when none is visible.", words: ["twist", "twist deg|degrees|angle", "twisted", "bend angle|degrees"] },
  clearance: length("Swivel clearance", "Running clearance at the shoulder of the swivel.", ["clearance", "swivel|shoulder|running clearance|play|gap", "end play", "play"]),
  nickDepth: length("Nick depth", "Depth of the deepest nick or gouge; 0 when there is none.", ["nick depth", "gouge depth", "nick", "gouge", "nicks", "gouges", "nick gouge depth", "nicks gouges"]),
  nickPart: { heading: "Nick at", type: "text", takes: "Part with the nick: saddle, eye, throat, shank, body, tip, bow, pin, crown ...", words: ["nick at|part|where|location|place", "gouge at|part|where|location|place"] },
  nickNew: length("Section at nick as-new", "Section when new at the place of the nick, where it is not the section measured above.", ["section nick NEW", "nick section NEW"]),
  nickNow: length("Section at nick now", "The same section as measured beside the nick.", ["section nick NOW", "nick section NOW"]),
  shellNew: length("Block shell as-new", "Shell or side plate of a load block when new; a rigging block has it under Section.", ["block shell|cheek NEW", "block side plate NEW"]),
  shellNow: length("Block shell now", "The same as measured.", ["block shell|cheek NOW", "block side plate NOW"]),
  brokenLay: { heading: "Broken wires in a lay", type: "count", takes: "Broken wires in the worst rope lay (braid length on braided slings); 0 when none.", words: ["broken wires", "broken wires lay", "broken wires per|in lay", "wires lay", "brk wires lay", "breaks lay", "per lay", "broken wires braid"] },
  brokenStrand: { heading: "Broken wires in one strand", type: "count", takes: "Broken wires in one strand of that lay; 0 when none.", words: ["broken wires strand", "broken wires one|1 strand", "wires strand", "brk wires strand", "breaks strand", "one strand", "per strand"] },
  broken6d: { heading: "Broken wires in 6 diameters", type: "count", takes: "Broken wires in the worst 6 rope diameters; 0 when none.", words: ["broken wires 6 diameters", "broken wires 6d", "breaks 6d"] },
  broken30d: { heading: "Broken wires in 30 diameters", type: "count", takes: "Broken wires in the worst 30 rope diameters; 0 when none.", words: ["broken wires 30 diameters", "broken wires 30d", "breaks 30d"] },
  brokenEnd: { heading: "Broken wires at the end", type: "count", takes: "Broken wires at the end connection; 0 when none.", words: ["broken wires end|termination|socket|connection", "breaks end|termination"] },
  brokenValley: { heading: "Broken wires in a valley", type: "count", takes: "Broken wires between strands; 0 when none.", words: ["broken wires valley|valleys", "valley breaks"] },
  ropeCategory: { heading: "Rope category no.", type: "text", takes: "Rope category number from the rope's certificate, 01 to 13.", words: ["rcn", "rope category", "category rope|number"] },
  ropeLay: { heading: "Ordinary or Lang lay", type: "choice", takes: "ordinary or Lang; blank is judged as Lang, which has the lower counts.", words: ["ordinary lang", "lang lay", "ordinary|regular lang lay"], choices: ["ordinary", "Lang"] },
  drumLayers: { heading: "Drum layers", type: "choice", takes: "single or multi; blank is judged as single, which has the lower counts.", words: ["drum layers|layer", "layers drum", "drum spooling"], choices: ["single", "multi"] },
  ropeNow: length("Rope diameter now", "Rope diameter as measured over the strands, at its thinnest.", ["rope NOW", "rope diameter NOW", "rope diameter measured"]),
  wireNew: length("Outer wire as-new", "Diameter of an outer wire, or of a wire of the mesh, when new.", ["outer wires NEW", "mesh wires NEW"]),
  wireNow: length("Outer wire now", "Diameter of the most worn of these wires.", ["outer wires NOW", "mesh wires NOW"]),
  corrodedNow: length("Corroded wire now", "Diameter of the most corroded wire.", ["corroded wire|wires NOW", "corroded wires"]),
  slotNew: length("Slot as-new", "Depth of the choker fitting's slot when new.", ["slot NEW", "slot depth NEW"]),
  slotNow: length("Slot now", "Depth of the slot as measured.", ["slot NOW", "slot depth NOW"]),
  handleNew: length("Handle as-new", "Section of the handle eye or the metal at the hook opening when new.", ["handle NEW"]),
  handleNow: length("Handle now", "The same section as measured.", ["handle NOW"]),
  toothNew: length("Tooth as-new", "Height of the teeth of a clamp's cam or pad when new.", ["tooth|teeth NEW", "tooth height|length NEW"]),
  toothNow: length("Tooth now", "Height of the most worn or chipped tooth.", ["tooth|teeth NOW", "tooth height|length NOW"]),
  groove: length("Groove diameter", "Groove of the sheave by gauge, as a diameter.", ["groove", "groove diameter|gauge", "sheave groove"]),
  sheave: length("Sheave pitch diameter", "Diameter of the sheave between rope centres.", ["sheave pitch", "sheave pitch diameter", "sheave diameter", "pitch diameter"]),
  clips: { heading: "Clips fitted", type: "count", takes: "Number of wire rope clips on the end.", words: ["clips", "clips fitted", "number clips"] },
  clipSpacing: length("Clip spacing", "Least distance between two clips.", ["clip|clips spacing", "spacing"]),
  turnBack: length("Turn-back", "Length of rope turned back under the clips.", ["turn back", "turnback", "tail turned back"]),
  clipTorque: { heading: "Clip torque lb-ft", type: "torque", takes: "Torque of the loosest nut, measured again after the first load; a bare number is lb-ft, or type N·m behind it.", words: ["clip|clips torque", "torque", "nut|nuts torque", "clip|clips torque lb ft", "clip|clips torque nm|n·m", "torque lb ft", "torque nm|n·m"] },
  clipType: { heading: "Clip type", type: "choice", takes: "drop forged U-bolt, drop forged fist grip, or other material (which needs more clips).", words: ["clip|clips type|kind|make|material", "type clip|clips"], choices: ["drop forged U-bolt", "drop forged fist grip", "other material"] },
  bend: length("Permanent bend", "Permanent bend of a beam, measured from a straight line; 0 when none.", ["permanent bend", "bend beam", "permanent deflection"]),
  span: length("Span", "Length over which the bend was measured.", ["span", "beam length", "length beam"]),
  bendAngle: { heading: "Shank bend deg", type: "angle", takes: "Bend of an eyebolt's shank in degrees; 0 when none.", words: ["shank bend", "shank bend degrees|angle"] },
  threads: sound("Threads sound", "yes or no: threads whole, fully engaged, not corroded.", ["threads|thread", "thread sound|ok|condition|damage"]),
  liveEnd: sound("Saddle on live end", "yes or no: each clip's saddle sits on the load side, the U-bolt on the dead end.", ["saddle live", "saddle live end", "clips right way", "orientation clips"]),
  wedge: sound("Wedge matches", "yes or no: wedge, socket and rope belong together, live line in line with the pin.", ["wedge", "wedge matches|ok"]),
  strandBroken: fault("Parted strand", "none or found: a strand is parted, or the core stands out.", ["parted strand", "broken strand", "strand parted|broken", "core protrusion|protruding"]),
  meshBroken: fault("Broken weld or wire", "none or found: a weld or brazed joint along the edge, or any wire of the mesh, is broken.", ["broken weld", "broken weld wires", "broken mesh"]),
  powder: fault("Abnormal wear or powder", "none or found: fibres cut, powder between strands, roundness lost.", ["powder", "abnormal wear", "powder strands"]),
  cracks: fault("Cracks", "none or found; any crack takes the item out.", ["cracks", "crack", "cracked", "cracks visible|found|seen", "visible cracks"]),
  deformed: fault("Bent or stretched", "none or found: bent, twisted, stretched, elongated, opened up.", ["bent|stretched|deformed|deformation|distorted|distortion|elongated|elongation|stretch", "bent stretched", "bent stretched links", "stretched bent links", "stretched links", "deformed bent", "bent twisted"]),
  latch: sound("Latch works", "yes, no, missing, or none required.", ["latch", "latch ok|works|fitted|present|condition|closes", "safety latch|catch", "catch"], ["yes", "no", "missing", NONE_REQUIRED]),
  tag: sound("Identification legible", "yes or no: the maker's marking or the sling's tag can be read.", ["identification", "identification legible|ok|present|tag", "tag", "tag legible|ok|present|readable|fitted", "marking|markings", "marking|markings legible", "id legible|tag|plate|readable", "legible", "nameplate", "swl|wll legible|marked"]),
  pinSeated: sound("Pin fully seated", "yes or no: the pin goes fully home, shoulder touching the body.", ["pin seated|seats|engaged|engagement|home|fit", "pin fully seated|engaged|home", "seated"]),
  turnsFreely: { ...sound("Turns freely", "yes or no: the swivel turns freely when it is not loaded.", ["turns|rotates freely|free", "free rotation|turning", "turns", "rotates", "rotation", "swivels freely"]), soundWords: ["free", "freely", "turns", "turns free", "turns freely", "rotates freely", "swivels freely"] },
  sheaveTrue: { ...sound("Sheave turns true", "yes or no: the sheave turns true, without wobble, groove not corrugated or worn out.", ["sheave", "sheave true|turns|ok|condition|wobble", "sheave turns true", "sheaves"]), soundWords: ["turns true", "runs true"] },
  fasteners: sound("Fasteners in place", "yes or no: nuts, bolts, cotters, keepers and retaining devices are there and tight.", ["fasteners", "fasteners ok|tight|place", "cotters|nuts|bolts", "retaining devices|device", "keepers", "fasteners retaining devices", "bolts nuts"]),
  endFittings: sound("End fittings sound", "yes or no: fittings not cracked, bent or worn, no broken wire at the fitting; none required where the sling has none.", ["end fittings|fitting|connections|connection|attachments", "fittings", "fittings sound|ok|condition", "fitting", "terminations", "hardware fittings"], ["yes", "no", NONE_REQUIRED]),
  stitching: sound("Stitching sound", "yes or no: load-bearing stitching is whole.", ["stitching", "stitches", "stitching sound|ok|condition", "seams"]),
  kinks: fault("Kinks or crushing", "none or found: kinked, crushed, birdcaged, core standing out.", ["kinks|kinked|kink", "crushing|crushed|birdcage|birdcaging", "kinks crushing", "kink crush|crushing|birdcage"]),
  heat: fault("Heat damage", "none or found: burns, weld spatter, arc strikes, heat colour, melting.", ["heat", "heat damage|marks|discolouration", "burns|burn|arc|spatter|charring|melting", "heat burns|arc|chemical", "arc strike|strikes|burn", "weld spatter"]),
  chemical: fault("Chemical damage", "none or found: acid, caustic or other chemical attack.", ["chemical", "chemical damage|attack|burns", "acid", "acid caustic"]),
  corrosion: fault("Corrosion", "none or found: pitting or corrosion beyond surface rust.", ["corrosion", "pitting", "rust", "corrosion pitting", "corroded"]),
  cuts: fault("Cuts or tears", "none or found: holes, tears, cuts, snags, worn cover with core yarns showing.", ["cuts", "tears", "cuts tears", "cut|torn", "cuts tears snags|holes", "snags", "cover damage", "abrasion"]),
  fieldChange: fault("Field weld or change", "none or found: welded, drilled, heated or altered without the maker's consent, or a part replaced by a makeshift.", ["weld|welds|welded|welding", "field weld|change|changes|modification", "modified|modification|modifications|altered|alteration", "field weld change", "repairs|repaired"]),
  tagged: { heading: "Tagged out", type: "choice", takes: "yes or the date when the item was tagged out; blank otherwise.", words: ["tagged out", "tagged", "tag out", "tagged|tag out date|on", "out service", "withdrawn", "condemned", "date removed|scrapped|withdrawn", "quarantined|quarantine", "locked out", "removed", "removed service", "scrapped"], choices: ["yes"] },
  releasedBy: { heading: "Released by", type: "text", takes: "Name of the qualified person who released a tagged-out item.", words: ["released by", "release by|name", "returned service by", "cleared by"] },
  releasedOn: { heading: "Released on", type: "date", takes: "Date of that release.", words: ["released", "released on|date", "release date", "returned service date|on", "cleared on|date"] },
  result: { heading: "Result in the log", type: "text", takes: "What the log says of the item: in use, passed, rejected. Words against its use keep it out; clear them when they no longer hold.", words: ["result|results", "status", "pass fail", "verdict", "disposition", "outcome", "ok|fit|safe use", "usable|serviceable|serviceability|inservice", "rejected|reject", "action|action required", "defects|defect", "defects found|noted", "condition", "result visual|inspection", "visual inspection|examination|check"] },
  remarks: { heading: "Remarks", type: "text", takes: "Anything else; not judged.", words: ["remarks", "remark", "comments|comment", "notes|note", "observations", "other"] },
  overload: { heading: "Overload in assembly", type: "date", takes: "Worked out: date on which another part of the assembly was found stretched.", words: ["overload assembly", "overload"] },
} as const satisfies Record<string, Field>;

export type FieldId = keyof typeof FIELDS;

export const FIELD_IDS = Object.keys(FIELDS) as FieldId[];

export function field(id: FieldId): Field {
  return FIELDS[id];
}
