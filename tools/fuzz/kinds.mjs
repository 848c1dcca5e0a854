/** What each kind of gear has that an inspection looks at, and what clerks call the kind. Common practice, no source. */
import { LIMITS } from "./limits.mjs";

const N = LIMITS.counts;
const size = (of, low, high, change, limit) => ({ of, low, high, change, limit });
const section = (low, high) => size("section", low, high, "loss", LIMITS.section);
const HARDWARE = ["cracks", "deformed", "tag"];
const ROPE = ["kinks", "strand", "heat", "corrosion", "ends"];
const TEXTILE = ["cuts", "stitching", "heat", "chemical", "ends", "tag"];

const HOIST = {
  sizes: [size("throat", 22, 60, "growth", LIMITS.throat), size("hook", 15, 50, "loss", LIMITS.hookSection)],
  twist: true,
  maker: true,
  sights: ["latch", "brake", "controls", "fasteners", "corrosion", ...HARDWARE],
  optional: [],
};
/** Sizes are in mm; the log turns them into its own unit. `optional` is seen on some logs and not needed. */
export const KINDS = {
  hook: {
    names: ["hook", "Hook", "sling hook", "hoist hook", "eye hook", "clevis hook", "swivel hook", "Hooks"],
    sizes: [size("throat", 22, 80, "growth", LIMITS.throat), size("section", 18, 60, "loss", LIMITS.hookSection)],
    twist: true,
    sights: ["latch", "cracks", "tag"],
    optional: ["deformed", "corrosion", "weld"],
  },
  shackle: {
    names: ["shackle", "Shackle", "bow shackle", "screw pin shackle", "anchor shackle", "dee shackle", "bolt type shackle"],
    sizes: [section(10, 50), size("pin", 12, 55, "loss", LIMITS.section)],
    sights: ["seated", ...HARDWARE],
    optional: ["corrosion", "weld"],
  },
  link: {
    names: ["link", "master link", "ring", "pear link", "oblong link"],
    sizes: [section(10, 50)],
    sights: HARDWARE,
    optional: ["corrosion", "weld"],
  },
  swivel: {
    names: ["swivel", "eye swivel", "jaw swivel"],
    sizes: [section(12, 50)],
    clearance: true,
    sights: ["turns", ...HARDWARE],
    optional: ["corrosion"],
  },
  block: {
    names: ["block", "snatch block", "sheave block", "rigging block"],
    sizes: [size("section", 8, 30, "loss", LIMITS.blockPin)],
    sights: ["sheave", "fasteners", ...HARDWARE],
    optional: ["corrosion"],
  },
  "chain sling": {
    names: ["chain sling", "alloy chain sling", "2 leg chain sling", "grade 80 chain sling", "chain sling grade 100"],
    chain: [
      ["3/8", 9.525],
      ["1/2", 12.7],
      ["5/8", 15.875],
    ],
    sizes: [],
    sights: ["deformed", "cracks", "tag"],
    optional: ["corrosion", "heat"],
  },
  "wire rope sling": {
    names: ["wire rope sling", "wire rope strop", "single leg wire rope sling", "steel wire rope sling"],
    sizes: [],
    counts: { lay: N.slingLay, oneStrand: N.slingStrand },
    sights: ["kinks", "ends", "heat", "corrosion", "tag"],
    optional: [],
  },
  "web sling": { names: ["web sling", "webbing sling", "flat web sling", "synthetic web sling"], sizes: [], sights: TEXTILE, optional: [] },
  roundsling: {
    names: ["roundsling", "round sling", "endless round sling", "polyester roundsling"],
    sizes: [],
    sights: TEXTILE,
    optional: [],
  },
  eyebolt: {
    names: ["eyebolt", "eye bolt", "shoulder eyebolt"],
    sizes: [section(8, 40)],
    sights: ["threads", ...HARDWARE],
    optional: ["corrosion"],
  },
  "eye nut": { names: ["eye nut", "lifting eye nut"], sizes: [section(8, 40)], sights: ["threads", ...HARDWARE], optional: [] },
  "hoist ring": {
    names: ["hoist ring", "swivel hoist ring"],
    sizes: [section(8, 40)],
    sights: ["turns", "threads", ...HARDWARE],
    optional: [],
  },
  turnbuckle: {
    names: ["turnbuckle", "rigging screw", "jaw and eye turnbuckle"],
    sizes: [section(10, 50)],
    sights: ["threads", "fasteners", ...HARDWARE],
    optional: [],
  },
  "wedge socket": {
    names: ["wedge socket", "wedge rope socket"],
    sizes: [section(15, 60), size("pin", 15, 60, "loss", LIMITS.section)],
    sights: ["wedge", "fasteners", ...HARDWARE],
    optional: [],
  },
  clips: {
    names: ["wire rope clip", "wire rope clips", "U-bolt clips", "rope clips"],
    sizes: [],
    clips: true,
    sights: ["liveEnd", "fasteners", "cracks"],
    optional: [],
  },
  "end connection": {
    names: ["end connection", "spelter socket", "swaged socket"],
    sizes: [],
    counts: { atEnd: N.end },
    sights: ["corrosion", "cracks", "deformed", "ends"],
    optional: [],
  },
  sheave: { names: ["sheave", "rope sheave"], sizes: [], groove: true, sights: ["sheave", "cracks"], optional: [] },
  "load block": {
    names: ["load block", "hook block", "crane hook block", "bottom block"],
    sizes: [
      size("throat", 30, 100, "growth", LIMITS.throat),
      size("section", 30, 90, "loss", LIMITS.hookSection),
      size("pin", 25, 80, "loss", LIMITS.blockPin),
    ],
    twist: true,
    sights: ["latch", "sheave", "fasteners", ...HARDWARE],
    optional: [],
  },
  "running rope": {
    names: ["running rope", "hoist rope", "crane hoist rope"],
    rope: [12, 40],
    sizes: [],
    counts: { lay: N.runningLay, oneStrand: N.runningStrand },
    sights: ROPE,
    optional: [],
  },
  "rotation resistant rope": {
    names: ["rotation resistant rope", "non-rotating rope"],
    rope: [12, 40],
    sizes: [],
    counts: { six: N.six, thirty: N.thirty },
    sights: ROPE,
    optional: [],
  },
  "standing rope": {
    names: ["standing rope", "pendant rope", "guy rope", "boom pendant"],
    rope: [12, 40],
    sizes: [],
    counts: { lay: N.standingLay, atEnd: N.end },
    sights: ROPE,
    optional: [],
  },
  "mesh sling": {
    names: ["mesh sling", "metal mesh sling", "wire mesh sling"],
    sizes: [size("outerWire", 2, 4, "loss", LIMITS.meshWire)],
    sights: ["meshBroken", "turns", "ends", "tag"],
    optional: [],
  },
  "fibre rope sling": {
    names: ["fibre rope sling", "fiber rope sling", "polypropylene rope sling"],
    sizes: [],
    sights: ["powder", "cuts", "heat", "ends", "tag"],
    optional: [],
  },
  "lifting beam": {
    names: ["lifting beam", "spreader beam", "spreader bar"],
    beam: true,
    sizes: [section(12, 50)],
    sights: ["fasteners", ...HARDWARE],
    optional: [],
  },
  "plate clamp": {
    names: ["plate clamp", "vertical plate clamp", "plate lifting clamp"],
    sizes: [size("tooth", 3, 6, "loss", LIMITS.tooth), section(12, 40)],
    sights: ["lock", "fasteners", ...HARDWARE],
    optional: [],
  },
  "headache ball": {
    names: ["headache ball", "overhaul ball", "ball hook"],
    sizes: [size("throat", 30, 90, "growth", LIMITS.throat), size("section", 25, 80, "loss", LIMITS.hookSection)],
    twist: true,
    sights: ["latch", "turns", "fasteners", ...HARDWARE],
    optional: [],
  },
  grommet: {
    names: ["grommet", "wire rope grommet", "endless wire rope sling"],
    sizes: [],
    counts: { lay: N.slingLay, oneStrand: N.slingStrand },
    sights: ["kinks", "ends", "heat", "corrosion", "tag"],
    optional: [],
  },
  "lifting point": {
    names: ["lifting point", "bolt on lifting point"],
    sizes: [section(10, 40)],
    sights: ["threads", "weldSeam", "seatedOn", ...HARDWARE],
    optional: [],
  },
  coupling: {
    names: ["coupling", "coupling link", "connecting link"],
    sizes: [section(10, 40)],
    sights: ["fasteners", "ownLock", ...HARDWARE],
    optional: [],
  },
  "chain hoist": { names: ["chain hoist", "hand chain hoist", "chain block"], ...HOIST },
  "lever hoist": { names: ["lever hoist", "lever block"], ...HOIST },
  "load chain": {
    names: ["load chain", "hoist load chain"],
    sizes: [],
    maker: true,
    sights: ["cracks", "deformed", "corrosion"],
    optional: [],
  },
  "beam clamp": {
    names: ["beam clamp", "girder clamp"],
    sizes: [section(12, 40)],
    sights: ["seatedOn", "wheels", "fasteners", ...HARDWARE],
    optional: [],
  },
  "vacuum lifter": {
    names: ["vacuum lifter", "vacuum lifting device"],
    sizes: [],
    sights: ["attachPoints", "seals", "vacuumLines", "vacuumHolds", "indicator", ...HARDWARE],
    optional: [],
  },
  "lifting magnet": {
    names: ["lifting magnet", "permanent lifting magnet"],
    sizes: [],
    sights: ["magnetFace", "attachPoints", "controls", "indicator", "wiring", "tag", "cracks"],
    optional: [],
  },
};
