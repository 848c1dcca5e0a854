/** The tidy register's items: sound gear from the dice, and the rows that show a decision, written out. */
import { day, daysAgo } from "./book.mjs";
import { dice } from "./dice.mjs";

const { between, pick, chance } = dice(1871);

/** Calliper in each unit; a reading is written as finely as it reads. */
const FINE = { in: { gauge: 0.001, decimals: 3 }, mm: { gauge: 0.1, decimals: 1 } };

/** Days since the last inspection that each service class usually shows. */
const SINCE = {
  normal: [15, 350],
  yearly: [30, 350],
  severe: [3, 84],
  quarterly: [5, 86],
  "6 monthly": [10, 175],
  monthly: [2, 27],
  idle: [2, 26],
};

function seenDay(service) {
  const [low, high] = SINCE[service];
  return daysAgo(between(low, high));
}

const worn = (size, most, unit) => Number((size * (1 - between(0, most, 4))).toFixed(FINE[unit].decimals));
const grown = (size, most, unit) => Number((size * (1 + between(0, most, 4))).toFixed(FINE[unit].decimals));

const order = () => `PO ${pick(["19", "21", "22", "23", "24", "25"])}-${String(between(102, 988))}`;

function base(id, gear, unit, size, load, where, service) {
  return {
    id,
    gear,
    size,
    unit,
    load,
    order: order(),
    place: where,
    service,
    inspected: seenDay(service),
    inspector:
      where === "Slipway"
        ? "Slipway foreman"
        : where === "Gantry"
          ? "Crane foreman"
          : pick(["Rigging inspector", "Rigging inspector", "Store keeper"]),
  };
}

const gauge = (unit) => ({ gauge: FINE[unit].gauge });
const noFaults = { cracks: "none", deformed: "none", tag: "yes", heat: "none", corrosion: "none", fieldChange: "none", nickDepth: 0 };

const HOOKS = {
  in: [
    ["3/4", 1.125, 0.75, 2],
    ["1", 1.375, 1.0, 3],
    ["1 1/4", 1.75, 1.25, 5],
    ["1 1/2", 2.0, 1.5, 7],
  ],
  mm: [
    ["10", 28, 20, 2],
    ["13", 34, 26, 3],
    ["16", 42, 32, 5],
  ],
};
function hook(id, gear, unit, step, where, service, own = {}) {
  const [size, throat, section, load] = HOOKS[unit][step];
  return {
    ...base(id, gear, unit, size, load, where, service),
    ...gauge(unit),
    ...noFaults,
    throatNew: throat,
    throatNow: grown(throat, 0.03, unit),
    sectionNew: section,
    sectionNow: worn(section, 0.03, unit),
    twist: 0,
    latch: "yes",
    ...own,
  };
}

const SHACKLES = {
  in: [
    ["1/2", 0.5, 0.625, 2],
    ["5/8", 0.625, 0.75, 3.25],
    ["3/4", 0.75, 0.875, 4.75],
    ["7/8", 0.875, 1.0, 6.5],
    ["1", 1.0, 1.125, 8.5],
    ["1 1/4", 1.25, 1.375, 12],
  ],
  mm: [
    ["13", 13, 16, 2],
    ["19", 19, 22, 4.75],
    ["25", 25, 28, 8.5],
  ],
};
function shackle(id, gear, unit, step, where, service, own = {}) {
  const [size, bow, pin, load] = SHACKLES[unit][step];
  return {
    ...base(id, gear, unit, size, load, where, service),
    ...gauge(unit),
    ...noFaults,
    sectionNew: bow,
    sectionNow: worn(bow, 0.06, unit),
    pinNew: pin,
    pinNow: worn(pin, 0.05, unit),
    pinSeated: "yes",
    ...own,
  };
}

const LINKS = {
  in: [
    ["3/4", 0.75, 5],
    ["1", 1.0, 9],
    ["1 1/4", 1.25, 14],
  ],
  mm: [
    ["20", 20, 5],
    ["26", 26, 9],
    ["32", 32, 14],
  ],
};
function link(id, gear, unit, step, where, service, own = {}) {
  const [size, crown, load] = LINKS[unit][step];
  return {
    ...base(id, gear, unit, size, load, where, service),
    ...gauge(unit),
    ...noFaults,
    sectionNew: crown,
    sectionNow: worn(crown, 0.06, unit),
    ...own,
  };
}

const SWIVELS = {
  in: [
    ["3/4", 0.75, 3.5],
    ["1", 1.0, 6],
  ],
  mm: [
    ["20", 20, 3.5],
    ["26", 26, 6],
  ],
};
function swivel(id, gear, unit, step, where, service, own = {}) {
  const [size, section, load] = SWIVELS[unit][step];
  return {
    ...base(id, gear, unit, size, load, where, service),
    ...gauge(unit),
    ...noFaults,
    sectionNew: section,
    sectionNow: worn(section, 0.025, unit),
    clearance: unit === "in" ? between(0.031, 0.062, 3) : between(0.8, 1.6, 1),
    turnsFreely: "yes",
    fasteners: "yes",
    ...own,
  };
}

const BLOCKS = {
  in: [
    ["6", 0.5, 1.25, 4],
    ["8", 0.625, 1.5, 8],
  ],
  mm: [
    ["150", 12, 32, 4],
    ["200", 16, 38, 8],
  ],
};
function block(id, gear, unit, step, where, service, own = {}) {
  const [size, plate, pin, load] = BLOCKS[unit][step];
  return {
    ...base(id, gear, unit, size, load, where, service),
    ...gauge(unit),
    ...noFaults,
    sectionNew: plate,
    sectionNow: worn(plate, 0.05, unit),
    pinNew: pin,
    pinNow: worn(pin, 0.05, unit),
    sheaveTrue: "yes",
    fasteners: "yes",
    ...own,
  };
}

const CHAINS = {
  in: [
    ["5/16", 0.302, 2],
    ["3/8", 0.36, 3.2],
    ["1/2", 0.48, 5.4],
    ["5/8", 0.6, 8.2],
  ],
  mm: [
    ["8", 7.7, 2],
    ["10", 9.6, 3.2],
    ["13", 12.5, 5.4],
    ["16", 15.4, 8.2],
  ],
};
function chain(id, gear, unit, step, where, service, own = {}) {
  const [size, least, load] = CHAINS[unit][step];
  return {
    ...base(id, gear, unit, size, load, where, service),
    ...gauge(unit),
    ...noFaults,
    sectionNow: between(least, least * 1.03, FINE[unit].decimals),
    endFittings: "yes",
    ...own,
  };
}

const ROPES = [
  ["1/2", 2.3],
  ["5/8", 3.6],
  ["3/4", 5.1],
  ["1", 8.9],
];
function rope(id, gear, step, where, service, own = {}) {
  const [size, load] = ROPES[step];
  return {
    ...base(id, gear, "in", size, load, where, service),
    construction: "strand laid",
    brokenLay: between(0, 4),
    brokenStrand: between(0, 2),
    kinks: "none",
    endFittings: "yes",
    heat: "none",
    corrosion: "none",
    tag: "yes",
    ...own,
  };
}

function soft(id, gear, load, where, service, own = {}) {
  return {
    ...base(id, gear, "", `${String(pick([2, 3, 4, 6]))} m`, load, where, service),
    cuts: "none",
    stitching: "yes",
    heat: "none",
    chemical: "none",
    endFittings: "yes",
    tag: "yes",
    fieldChange: "none",
    ...own,
  };
}

const WINCH = {
  place: "Slipway",
  assembly: "Slipway winch tackle",
  service: "severe",
  inspected: day("2026-10-14"),
  inspector: "Slipway foreman",
};
const GANTRY = { place: "Gantry", assembly: "Gantry hook set" };
const BOAT = { place: "Boat hall", assembly: "Boat lift set", inspected: day("2026-09-02"), inspector: "Rigging inspector" };
const MAST = { place: "Mast rack", assembly: "Mast derrick tackle" };

const hooks = [
  hook("HK-101", "Swivel hook", "in", 3, "Gantry", "severe", { ...GANTRY, remarks: "Main fall" }),
  hook("HK-102", "Swivel hook", "in", 2, "Gantry", "severe", { ...GANTRY, remarks: "Auxiliary fall" }),
  hook("HK-103", "Eye hook", "in", 3, "Rigging store", "normal", {
    throatNow: 2.1,
    gauge: null,
    sectionNow: 1.485,
    remarks: "Throat measured twice",
  }),
  hook("HK-104", "Eye hook", "in", 3, "Rigging store", "normal", { throatNow: 2.13, sectionNow: 1.49 }),
  hook("HK-105", "Shank hook", "in", 2, "Plate shop", "normal", { sectionNow: 1.18, remarks: "Rubs on the clamp" }),
  hook("HK-106", "Eye hook", "in", 1, "Plate shop", "normal", { throatNow: 1.4375, gauge: "1/16", remarks: "Measured with a tape" }),
  hook("HK-107", "Eye hook", "in", 0, "Plate shop", "normal", { latch: "missing" }),
  hook("HK-108", "Eye hook", "in", 0, "Rigging store", "normal", { nickDepth: 0.015, nickPart: "saddle", sectionNow: 0.744 }),
  hook("HK-109", "Clevis hook", "in", 1, "Rigging store", "normal", { twist: null, remarks: "Angle not taken, protractor away" }),
  hook("HK-110", "Shank hook", "in", 2, "Boat hall", "normal", {
    tagged: day("2026-08-17"),
    remarks: "Dropped from the hall crane; waiting for the crack test",
  }),
  hook("HK-111", "Eye hook", "mm", 2, "Boat hall", "normal", {
    tagged: day("2026-06-08"),
    releasedBy: "Yard rigging engineer",
    releasedOn: day("2026-06-30"),
    inspected: day("2026-07-02"),
    remarks: "Crack test clear",
  }),
  hook("HK-112", "Clevis hook", "mm", 0, "Plate shop", "quarterly", { latch: "none required", remarks: "Used at the sorting bench" }),
  hook("HK-113", "Clevis hook", "mm", 1, "Plate shop", "quarterly", { twist: 4 }),
  hook("HK-114", "Swivel hook", "mm", 2, "Mast rack", "idle", MAST),
  hook("HK-115", "Eye hook", "mm", 1, "Rigging store", "normal", { throatNow: 35.4, sectionNow: 25.8 }),
  hook("HK-116", "Eye hook", "mm", 0, "Rigging store", "normal", { inspected: day("2025-08-04") }),
];

const shackles = [
  shackle("SH-201", "Bow shackle", "in", 5, "Slipway", "severe", WINCH),
  shackle("SH-202", "Bow shackle", "in", 5, "Slipway", "severe", {
    ...WINCH,
    inspected: day("2026-10-21"),
    remarks: "Looked at again, no damage",
  }),
  shackle("SH-203", "Bow shackle", "in", 4, "Gantry", "severe", GANTRY),
  shackle("SH-204", "Bow shackle", "in", 4, "Rigging store", "normal", { sectionNow: 0.9, gauge: null, remarks: "Ten per cent is out" }),
  shackle("SH-205", "Bow shackle", "in", 4, "Rigging store", "normal", { sectionNow: 0.915 }),
  shackle("SH-206", "Bow shackle", "in", 2, "Rigging store", "normal", { pinNow: 0.8, sectionNow: 0.74 }),
  shackle("SH-207", "Dee shackle", "in", 2, "Rigging store", "normal", { pinSeated: "no", remarks: "Shoulder stands off, thread burred" }),
  shackle("SH-208", "Dee shackle", "in", 1, "Rigging store", "normal"),
  shackle("SH-209", "Dee shackle", "in", 0, "Rigging store", "normal"),
  shackle("SH-210", "Dee shackle", "in", 0, "Plate shop", "quarterly", { nickDepth: 0.012, nickPart: "bow", sectionNow: 0.495 }),
  shackle("SH-211", "Bow shackle", "in", 3, "Boat hall", "6 monthly", BOAT),
  shackle("SH-212", "Bow shackle", "in", 3, "Boat hall", "6 monthly", BOAT),
  shackle("SH-213", "Bow shackle", "in", 3, "Boat hall", "6 monthly", {
    acrossNew: 0.875,
    acrossNow: 0.826,
    sectionNow: 0.828,
    remarks: "Worn both ways",
  }),
  shackle("SH-214", "Bow shackle", "mm", 1, "Mast rack", "idle", MAST),
  shackle("SH-215", "Bow shackle", "mm", 1, "Plate shop", "quarterly"),
  shackle("SH-216", "Dee shackle", "mm", 0, "Plate shop", "quarterly", {
    pinNew: null,
    remarks: "Pin from another shackle, size when new not known",
  }),
  shackle("SH-217", "Bow shackle", "mm", 2, "Rigging store", "yearly", { inspected: day("2025-12-10") }),
  shackle("SH-218", "Bow shackle", "mm", 2, "Rigging store", "yearly", { inspected: day("2025-07-28") }),
];

const links = [
  link("LK-301", "Master link", "in", 2, "Slipway", "severe", {
    ...WINCH,
    deformed: "found",
    remarks: "Sides drawn in, two gauge lines longer",
  }),
  link("LK-302", "Master link", "in", 1, "Gantry", "severe", GANTRY),
  link("LK-303", "Pear link", "in", 1, "Boat hall", "6 monthly", BOAT),
  link("LK-304", "Master link", "in", 0, "Rigging store", "normal", { sectionNow: 0.69 }),
  link("LK-305", "Ring", "in", 0, "Rigging store", "normal", { tag: "no" }),
  link("LK-306", "Ring", "in", 1, "Rigging store", "normal"),
  link("LK-307", "Coupling link", "mm", 0, "Plate shop", "quarterly"),
  link("LK-308", "Master link", "mm", 1, "Plate shop", "quarterly", { nickDepth: 0.6, nickPart: "crown", sectionNow: 25.8 }),
  link("LK-309", "Master link", "mm", 2, "Rigging store", "normal", { fieldChange: "found", remarks: "Lug welded on, date not known" }),
  link("LK-310", "Pear link", "mm", 1, "Mast rack", "idle", MAST),
];

const swivels = [
  swivel("SW-401", "Jaw swivel", "in", 1, "Slipway", "severe", WINCH),
  swivel("SW-402", "Eye swivel", "in", 1, "Gantry", "severe", GANTRY),
  swivel("SW-403", "Eye swivel", "in", 0, "Rigging store", "normal", { clearance: 0.14 }),
  swivel("SW-404", "Jaw swivel", "in", 0, "Rigging store", "normal", { clearance: 0.205, remarks: "Rocks by hand" }),
  swivel("SW-405", "Jaw swivel", "mm", 0, "Plate shop", "quarterly", { turnsFreely: "no" }),
  swivel("SW-406", "Eye swivel", "mm", 1, "Mast rack", "idle", MAST),
  swivel("SW-407", "Eye swivel", "mm", 0, "Rigging store", "normal"),
];

const blocks = [
  block("BL-501", "Snatch block", "in", 1, "Slipway", "severe", WINCH),
  block("BL-502", "Lead block", "in", 1, "Slipway", "severe", { sheaveTrue: "no", remarks: "Groove corrugated by the rope" }),
  block("BL-503", "Snatch block", "in", 0, "Boat hall", "6 monthly"),
  block("BL-504", "Snatch block", "in", 0, "Rigging store", "normal", { pinNow: 1.142 }),
  block("BL-505", "Double sheave block", "mm", 1, "Mast rack", "idle", MAST),
  block("BL-506", "Snatch block", "mm", 0, "Rigging store", "normal", { fasteners: null, remarks: "Cotters not looked at" }),
  block("BL-507", "Tail block", "mm", 0, "Rigging store", "normal"),
];

const chains = [
  chain("CS-601", "Chain sling, two leg", "in", 1, "Plate shop", "severe"),
  chain("CS-602", "Chain sling, two leg", "in", 1, "Plate shop", "severe", {
    sectionNow: 0.34,
    remarks: "Thinnest at the third link of leg 2",
  }),
  chain("CS-603", "Chain sling, single leg", "in", 2, "Plate shop", "severe", { sectionNow: 0.465 }),
  chain("CS-604", "Chain sling, four leg", "in", 2, "Boat hall", "normal"),
  chain("CS-605", "Chain sling, single leg", "in", 3, "Rigging store", "normal"),
  chain("CS-606", "Chain sling, single leg", "in", 0, "Rigging store", "normal", {
    size: "1/4",
    sectionNow: 0.24,
    remarks: "Old leg from the paint store",
  }),
  chain("CS-607", "Chain sling, two leg", "mm", 1, "Plate shop", "quarterly", { heat: "found", remarks: "Weld spatter over four links" }),
  chain("CS-608", "Chain sling, two leg", "mm", 2, "Rigging store", "normal"),
  chain("CS-609", "Chain sling, single leg", "mm", 0, "Rigging store", "normal", {
    throatNew: 25,
    throatNow: 25.4,
    twist: 0,
    latch: "yes",
  }),
  chain("CS-610", "Chain sling, single leg", "mm", 3, "Rigging store", "yearly", { inspected: day("2025-11-03") }),
];

const ropes = [
  rope("WR-701", "Wire rope sling", 3, "Slipway", "severe", WINCH),
  rope("WR-702", "Wire rope sling", 2, "Gantry", "severe"),
  rope("WR-703", "Wire rope sling", 2, "Rigging store", "normal", { brokenLay: 10, brokenStrand: 4 }),
  rope("WR-704", "Wire rope sling", 1, "Rigging store", "normal", { brokenLay: 8, brokenStrand: 2 }),
  rope("WR-705", "Wire rope sling", 1, "Rigging store", "normal", { kinks: "found" }),
  rope("WR-706", "Cable laid sling", 2, "Boat hall", "6 monthly", { construction: "cable laid", brokenLay: 11, brokenStrand: null }),
  rope("WR-707", "Wire rope sling", 0, "Plate shop", "monthly"),
  rope("WR-708", "Wire rope sling", 0, "Plate shop", "monthly", { brokenStrand: null, remarks: "Strand not counted" }),
  rope("WR-709", "Wire rope strop", 1, "Mast rack", "idle"),
  rope("WR-710", "Wire rope sling", 3, "Rigging store", "normal", { tagged: "yes", remarks: "Tag hung by the store" }),
];

const webs = [
  soft("WS-801", "Web sling", 2, "Boat hall", "6 monthly", BOAT),
  soft("WS-802", "Web sling", 2, "Boat hall", "6 monthly", BOAT),
  soft("WS-803", "Web sling", 3, "Boat hall", "6 monthly", { cuts: "found", remarks: "Edge cut beside the eye" }),
  soft("WS-804", "Web sling", 1, "Plate shop", "quarterly", { tag: null, remarks: "Turned inside the keeper" }),
  soft("WS-805", "Web sling", 1, "Rigging store", "normal"),
  soft("WS-806", "Web sling", 3, "Rigging store", "normal", { inspected: day("2025-09-15") }),
  soft("WS-807", "Web sling", 2, "Rigging store", "normal"),
];

const rounds = [
  soft("RS-901", "Roundsling", 2, "Boat hall", "6 monthly"),
  soft("RS-902", "Roundsling", 3, "Boat hall", "6 monthly", { chemical: "found", remarks: "Antifouling thinner" }),
  soft("RS-903", "Roundsling", 5, "Gantry", "quarterly"),
  soft("RS-904", "Roundsling", 2, "Rigging store", "normal"),
  soft("RS-905", "Roundsling", 3, "Rigging store", "normal", { service: "special", remarks: "Interval not yet set by the engineer" }),
];

/** A few more slips of the pen than the written rows show: a late inspection here and there. */
function late(item) {
  return item.service === "normal" && item.assembly === undefined && item.remarks === undefined && chance(0.12)
    ? { ...item, inspected: daysAgo(between(370, 480)) }
    : item;
}

export const tidyItems = [...hooks, ...shackles, ...links, ...swivels, ...blocks, ...chains, ...ropes, ...webs, ...rounds].map(late);
