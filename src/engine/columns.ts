
/**
 * The vocabulary of a log: every column that the engine can read, once. Register columns, heading matching, the note
 * sheet and the drop-downs are derived from it.
 */

export type FieldType = "text" | "length" | "count" | "angle" | "torque" | "date" | "sound" | "fault" | "choice";
export interface Field {
  /** Heading in the register. */
  readonly heading: string;
  readonly type: FieldType;
  /**
   * Headings that clerks write for it. Each entry is a set of words that must all stand in the heading;
   * `a|b` means either word. The role words NEW and NOW stand for the lists in `headings.ts`.
   */
  readonly words: readonly string[];
  /** Words that are in order in this column of observations and not in others, in small letters. */
  readonly soundWords?: readonly string[];
}
const length = (heading: string, words: readonly string[]): Field => ({ heading, type: "length", words });
const fault = (heading: string, words: readonly string[]): Field => ({ heading, type: "fault", words });
const sound = (heading: string, words: readonly string[]): Field => ({ heading, type: "sound", words });
export const FIELDS = {
  id: { heading: "Id", type: "text", words: ["id", "id no|number", "sling|hook|shackle|link|swivel|block|chain id|no|number", "gear|asset|item|equipment|tag|serial|unit|rigging id|no|number|ref|mark", "serial", "mark", "identification no|number", "ref", "reference", "asset", "number", "no", "item"] },
  gear: { heading: "Gear", type: "choice", words: ["gear", "gear kind|type", "type", "kind", "item", "item|gear|equipment description|type|kind", "description", "equipment", "category", "type gear|equipment|hardware", "hardware"] },
  size: { heading: "Size", type: "text", words: ["size", "nominal size|diameter|dia", "nom size|diameter|dia", "chain size", "trade size", "nominal", "rope|chain diameter|dia|size"] },
  ratedLoad: { heading: "Rated load", type: "text", words: ["rated load|capacity", "wll", "swl", "working load", "working load limit", "safe working load", "capacity"] },
  legs: { heading: "Legs", type: "text", words: ["legs", "number legs", "number leg", "leg count|quantity|configuration|arrangement"] },
  asNewFrom: { heading: "As-new from", type: "choice", words: ["as new from", "asnew from", "as new source"] },
  unit: { heading: "Unit", type: "choice", words: ["unit", "uom", "measure unit", "unit measure"] },
  gauge: { heading: "Gauge reads to", type: "length", words: ["gauge", "gauge reads|resolution|res", "resolution", "instrument resolution"] },
  construction: { heading: "Construction", type: "choice", words: ["construction", "rope construction|type", "lay type", "construct"] },
  assembly: { heading: "Assembly", type: "text", words: ["assembly", "set", "assy", "part of", "belongs", "tackle", "assembly set", "used in"] },
  place: { heading: "Place", type: "text", words: ["place", "location", "where", "area", "store", "bay", "site", "department", "kept"] },
  service: { heading: "Service", type: "choice", words: ["service", "service class|level|type|duty", "duty", "interval", "frequency", "inspection interval|frequency"] },
  inspected: { heading: "Inspected", type: "date", words: ["inspected", "date", "last inspected|inspection|insp|checked|examined|examination", "inspection|insp|examination date", "date inspected|checked|examined|inspection|examination", "thorough examination", "checked", "examined", "inspected on|date", "last date inspection"] },
  inspector: { heading: "Inspected by", type: "text", words: ["inspector", "inspected|checked|examined by", "by", "initials", "insp by", "competent person"] },
  throatNew: length("Throat as-new", ["throat NEW", "throat opening NEW", "opening NEW", "mouth NEW", "gap NEW", "hook opening NEW"]),
  throatNow: length("Throat now", ["throat NOW", "throat opening NOW", "opening NOW", "mouth NOW", "gap NOW", "hook opening NOW", "throat", "throat opening", "mouth opening", "opening"]),
  sectionNew: length("Section as-new", ["section|saddle|bowl|bow|crown|body|wear|thickness|cheek|shell NEW", "side|cheek plate NEW", "NEW", "NEW size|dim|dimension|diameter|thickness|measurement|mm|in", "section saddle|bowl|bow|crown NEW", "catalogue|catalog size|dim|dimension"]),
  sectionNow: length("Section now", ["section|saddle|bowl|bow|crown|body|thickness|cheek|shell NOW", "side|cheek plate NOW", "NOW", "NOW size|dim|dimension|diameter|thickness|measurement|mm|in", "section saddle|bowl|bow|crown NOW", "thinnest", "thinnest link", "link thinnest|thickness|NOW", "min link", "thinnest point", "least thickness|link", "saddle", "bowl", "bow", "crown", "section"]),
  acrossNew: length("Across as-new", ["across NEW", "section across NEW", "second|2nd direction NEW", "width NEW", "section 2 NEW", "NEW across|2"]),
  acrossNow: length("Across now", ["across NOW", "section across NOW", "second|2nd direction NOW", "width NOW", "section 2 NOW", "NOW across|2", "across"]),
  pinNew: length("Pin as-new", ["pin NEW", "pin diameter|dia|size|section NEW", "load pin NEW"]),
  pinNow: length("Pin now", ["pin NOW", "pin diameter|dia|size|section NOW", "load pin NOW", "pin diameter|dia", "pin"]),
  eyeNew: length("Eye as-new", ["eye|shank NEW", "eye section|thickness NEW"]),
  eyeNow: length("Eye now", ["eye|shank NOW", "eye section|thickness NOW", "eye section"]),
  twist: { heading: "Twist deg", type: "angle", words: ["twist", "twist deg|degrees|angle", "twisted", "bend angle|degrees"] },
  clearance: length("Swivel clearance", ["clearance", "swivel|shoulder|running clearance|play|gap", "end play", "play"]),
  nickDepth: length("Nick depth", ["nick depth", "gouge depth", "nick", "gouge", "nicks", "gouges", "nick gouge depth", "nicks gouges"]),
  nickPart: { heading: "Nick at", type: "text", words: ["nick at|part|where|location|place", "gouge at|part|where|location|place"] },
  nickNew: length("Section at nick as-new", ["section nick NEW", "nick section NEW"]),
  nickNow: length("Section at nick now", ["section nick NOW", "nick section NOW"]),
  shellNew: length("Block shell as-new", ["block shell|cheek NEW", "block side plate NEW"]),
  shellNow: length("Block shell now", ["block shell|cheek NOW", "block side plate NOW"]),
  brokenLay: { heading: "Broken wires in a lay", type: "count", words: ["broken wires", "broken wires lay", "broken wires per|in lay", "wires lay", "brk wires lay", "breaks lay", "per lay", "broken wires braid"] },
  brokenStrand: { heading: "Broken wires in one strand", type: "count", words: ["broken wires strand", "broken wires one|1 strand", "wires strand", "brk wires strand", "breaks strand", "one strand", "per strand"] },
  broken6d: { heading: "Broken wires in 6 diameters", type: "count", words: ["broken wires 6 diameters", "broken wires 6d", "breaks 6d"] },
  broken30d: { heading: "Broken wires in 30 diameters", type: "count", words: ["broken wires 30 diameters", "broken wires 30d", "breaks 30d"] },
  brokenEnd: { heading: "Broken wires at the end", type: "count", words: ["broken wires end|termination|socket|connection", "breaks end|termination"] },
  brokenValley: { heading: "Broken wires in a valley", type: "count", words: ["broken wires valley|valleys", "valley breaks"] },
  ropeCategory: { heading: "Rope category no.", type: "text", words: ["rcn", "rope category", "category rope|number"] },
  ropeLay: { heading: "Ordinary or Lang lay", type: "choice", words: ["ordinary lang", "lang lay", "ordinary|regular lang lay"] },
  drumLayers: { heading: "Drum layers", type: "choice", words: ["drum layers|layer", "layers drum", "drum spooling"] },
  ropeNow: length("Rope diameter now", ["rope NOW", "rope diameter NOW", "rope diameter measured"]),
  wireNew: length("Outer wire as-new", ["outer wires NEW", "mesh wires NEW"]),
  wireNow: length("Outer wire now", ["outer wires NOW", "mesh wires NOW"]),
  corrodedNow: length("Corroded wire now", ["corroded wire|wires NOW", "corroded wires"]),
  slotNew: length("Slot as-new", ["slot NEW", "slot depth NEW"]),
  slotNow: length("Slot now", ["slot NOW", "slot depth NOW"]),
  handleNew: length("Handle as-new", ["handle NEW"]),
  handleNow: length("Handle now", ["handle NOW"]),
  toothNew: length("Tooth as-new", ["tooth|teeth NEW", "tooth height|length NEW"]),
  toothNow: length("Tooth now", ["tooth|teeth NOW", "tooth height|length NOW"]),
  groove: length("Groove diameter", ["groove", "groove diameter|gauge", "sheave groove"]),
  sheave: length("Sheave pitch diameter", ["sheave pitch", "sheave pitch diameter", "sheave diameter", "pitch diameter"]),
  clips: { heading: "Clips fitted", type: "count", words: ["clips", "clips fitted", "number clips"] },
  clipSpacing: length("Clip spacing", ["clip|clips spacing", "spacing"]),
  turnBack: length("Turn-back", ["turn back", "turnback", "tail turned back"]),
  clipTorque: { heading: "Clip torque lb-ft", type: "torque", words: ["clip|clips torque", "torque", "nut|nuts torque", "clip|clips torque lb ft", "clip|clips torque nm|n·m", "torque lb ft", "torque nm|n·m"] },
  clipType: { heading: "Clip type", type: "choice", words: ["clip|clips type|kind|make|material", "type clip|clips"] },
  bend: length("Permanent bend", ["permanent bend", "bend beam", "permanent deflection"]),
  span: length("Span", ["span", "beam length", "length beam"]),
  bendAngle: { heading: "Shank bend deg", type: "angle", words: ["shank bend", "shank bend degrees|angle"] },
  threads: sound("Threads sound", ["threads|thread", "thread sound|ok|condition|damage"]),
  liveEnd: sound("Saddle on live end", ["saddle live", "saddle live end", "clips right way", "orientation clips"]),
  wedge: sound("Wedge matches", ["wedge", "wedge matches|ok"]),
  strandBroken: fault("Parted strand", ["parted strand", "broken strand", "strand parted|broken", "core protrusion|protruding"]),
  meshBroken: fault("Broken weld or wire", ["broken weld", "broken weld wires", "broken mesh"]),
  powder: fault("Abnormal wear or powder", ["powder", "abnormal wear", "powder strands"]),
  cracks: fault("Cracks", ["cracks", "crack", "cracked", "cracks visible|found|seen", "visible cracks"]),
  deformed: fault("Bent or stretched", ["bent|stretched|deformed|deformation|distorted|distortion|elongated|elongation|stretch", "bent stretched", "bent stretched links", "stretched bent links", "stretched links", "deformed bent", "bent twisted"]),
  latch: sound("Latch works", ["latch", "latch ok|works|fitted|present|condition|closes", "safety latch|catch", "catch"]),
  tag: sound("Identification legible", ["identification", "identification legible|ok|present|tag", "tag", "tag legible|ok|present|readable|fitted", "marking|markings", "marking|markings legible", "id legible|tag|plate|readable", "legible", "nameplate", "swl|wll legible|marked"]),
  pinSeated: sound("Pin fully seated", ["pin seated|seats|engaged|engagement|home|fit", "pin fully seated|engaged|home", "seated"]),
  turnsFreely: { ...sound("Turns freely", ["turns|rotates freely|free", "free rotation|turning", "turns", "rotates", "rotation", "swivels freely"]), soundWords: ["free", "freely", "turns", "turns free", "turns freely", "rotates freely", "swivels freely"] },
  sheaveTrue: { ...sound("Sheave turns true", ["sheave", "sheave true|turns|ok|condition|wobble", "sheave turns true", "sheaves"]), soundWords: ["turns true", "runs true"] },
  fasteners: sound("Fasteners in place", ["fasteners", "fasteners ok|tight|place", "cotters|nuts|bolts", "retaining devices|device", "keepers", "fasteners retaining devices", "bolts nuts"]),
  endFittings: sound("End fittings sound", ["end fittings|fitting|connections|connection|attachments", "fittings", "fittings sound|ok|condition", "fitting", "terminations", "hardware fittings"]),
  stitching: sound("Stitching sound", ["stitching", "stitches", "stitching sound|ok|condition", "seams"]),
  kinks: fault("Kinks or crushing", ["kinks|kinked|kink", "crushing|crushed|birdcage|birdcaging", "kinks crushing", "kink crush|crushing|birdcage"]),
  heat: fault("Heat damage", ["heat", "heat damage|marks|discolouration", "burns|burn|arc|spatter|charring|melting", "heat burns|arc|chemical", "arc strike|strikes|burn", "weld spatter"]),
  chemical: fault("Chemical damage", ["chemical", "chemical damage|attack|burns", "acid", "acid caustic"]),
  // The column takes pitting and corrosion beyond surface rust.
  corrosion: { ...fault("Corrosion", ["corrosion", "pitting", "rust", "corrosion pitting", "corroded"]), soundWords: ["surface rust", "light surface rust", "slight surface rust", "surface rust only", "superficial rust"] },
  cuts: fault("Cuts or tears", ["cuts", "tears", "cuts tears", "cut|torn", "cuts tears snags|holes", "snags", "cover damage", "abrasion"]),
  fieldChange: fault("Field weld or change", ["weld|welds|welded|welding", "field weld|change|changes|modification", "modified|modification|modifications|altered|alteration", "field weld change", "repairs|repaired"]),
  tagged: { heading: "Tagged out", type: "choice", words: ["tagged out", "tagged", "tag out", "tagged|tag out date|on", "out service", "withdrawn", "condemned", "date removed|scrapped|withdrawn", "quarantined|quarantine", "locked out", "removed", "removed service", "scrapped"] },
  releasedBy: { heading: "Released by", type: "text", words: ["released by", "release by|name", "returned service by", "cleared by"] },
  releasedOn: { heading: "Released on", type: "date", words: ["released", "released on|date", "release date", "returned service date|on", "cleared on|date"] },
  result: { heading: "Result in the log", type: "text", words: ["result|results", "status", "pass fail", "verdict", "disposition", "outcome", "ok|fit|safe use", "usable|serviceable|serviceability|inservice", "rejected|reject", "action", "defects|defect", "condition", "visual inspection|examination|check"] },
  remarks: { heading: "Remarks", type: "text", words: ["remarks", "remark", "comments|comment", "notes|note", "observations", "other"] },
  overload: { heading: "Overload in assembly", type: "date", words: ["overload assembly", "overload"] },
} as const satisfies Record<string, Field>;
export type FieldId = keyof typeof FIELDS;
export const FIELD_IDS = Object.keys(FIELDS) as FieldId[];
export function field(id: FieldId): Field {
  return FIELDS[id];
}
