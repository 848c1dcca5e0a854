/** The round sheet's items, in millimetres: most are done, the last rows wait for the inspector. */
import { day } from "./book.mjs";
import { dice } from "./dice.mjs";

const { between, pick } = dice(2611);

const DAYS = ["2026-11-23", "2026-11-24", "2026-11-25"].map(day);
let done = 0;

function base(id, gear, size, place) {
  done += 1;
  return {
    id,
    gear,
    size,
    place,
    inspected: DAYS[Math.min(2, Math.floor(done / 15))],
    inspector: pick(["Rigging inspector", "Rigging inspector", "Store keeper"]),
  };
}

const loss = (size, most) => Number((size * (1 - between(0, most, 4))).toFixed(1));
const metal = { cracks: "none", deformed: "none", tag: "yes" };

function hook(id, gear, size, place, throat, section, own = {}) {
  return {
    ...base(id, gear, size, place),
    gauge: 0.1,
    throatNew: throat,
    throatNow: Number((throat * (1 + between(0, 0.03, 4))).toFixed(1)),
    sectionNew: section,
    sectionNow: loss(section, 0.03),
    twist: 0,
    latch: "yes",
    ...metal,
    ...own,
  };
}

function shackle(id, gear, size, place, bow, pin, own = {}) {
  return {
    ...base(id, gear, size, place),
    gauge: 0.1,
    sectionNew: bow,
    sectionNow: loss(bow, 0.06),
    pinNew: pin,
    pinNow: loss(pin, 0.05),
    pinSeated: "yes",
    ...metal,
    ...own,
  };
}

function chain(id, gear, size, place, thinnest, own = {}) {
  return { ...base(id, gear, size, place), gauge: 0.1, sectionNow: thinnest, ...metal, ...own };
}

function rope(id, size, place, own = {}) {
  return {
    ...base(id, "Wire rope sling", size, place),
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

function soft(id, gear, size, place, own = {}) {
  return { ...base(id, gear, size, place), cuts: "none", stitching: "yes", endFittings: "yes", heat: "none", tag: "yes", ...own };
}

/** What stands on the sheet before the inspector comes to the row. */
const KNOWN = new Set(["id", "gear", "size", "place", "throatNew", "sectionNew", "pinNew"]);
const waiting = (item) => Object.fromEntries(Object.entries(item).filter(([key]) => KNOWN.has(key)));

export const roundItems = [
  soft("W-01", "Web sling", "3 m", "Boat hall"),
  soft("W-02", "Web sling", "3 m", "Boat hall"),
  soft("W-03", "Web sling", "6 m", "Boat hall", { cuts: "found", remarks: "Snag on the keel side, cut up" }),
  soft("W-04", "Web sling", "6 m", "Boat hall", { stitching: null, remarks: "Stitching under the sleeve, not seen yet" }),
  soft("R-01", "Roundsling", "4 m", "Boat hall"),
  soft("R-02", "Roundsling", "4 m", "Boat hall", { heat: "found" }),
  soft("R-03", "Roundsling", "2 m", "Boat hall"),
  shackle("S-01", "Bow shackle", "19", "Boat hall", 19, 22),
  shackle("S-02", "Bow shackle", "19", "Boat hall", 19, 22),
  shackle("S-03", "Bow shackle", "25", "Boat hall", 25, 28, { sectionNow: 22.8 }),
  shackle("S-04", "Bow shackle", "25", "Boat hall", 25, 28, { sectionNow: 22.2, remarks: "Ridge inside the bow" }),
  shackle("S-05", "Bow shackle", "32", "Boat hall", 32, 35, { nickDepth: 0.8, nickPart: "bow", sectionNow: 31.8 }),
  shackle("S-06", "Bow shackle", "32", "Boat hall", 32, 35),
  hook("H-01", "Eye hook", "10", "Plate shop", 28, 20),
  hook("H-02", "Eye hook", "10", "Plate shop", 28, 20, { latch: "no", remarks: "Spring gone" }),
  hook("H-03", "Eye hook", "13", "Plate shop", 34, 26, {
    gauge: 1,
    throatNow: 35,
    sectionNow: 26,
    remarks: "Calliper away, measured with the tape",
  }),
  hook("H-04", "Clevis hook", "13", "Plate shop", 34, 26, { throatNow: 36.1 }),
  hook("H-05", "Clevis hook", "13", "Plate shop", 34, 26, { throatNow: 35.5 }),
  hook("H-06", "Eye hook", "16", "Plate shop", 42, 32, { nickDepth: 0.5, nickPart: "saddle", sectionNow: 31.8 }),
  hook("H-07", "Swivel hook", "16", "Plate shop", 42, 32),
  chain("C-01", "Chain sling, two leg", "10", "Plate shop", 9.7),
  chain("C-02", "Chain sling, two leg", "10", "Plate shop", 8.6, { remarks: "Leg 1, next to the shortener" }),
  chain("C-03", "Chain sling, single leg", "13", "Plate shop", 11.9),
  chain("C-04", "Chain sling, single leg", "13", "Plate shop", 12.7),
  chain("C-05", "Chain sling, four leg", "8", "Plate shop", 7.8, { deformed: "found", remarks: "Two links longer than the rest" }),
  rope("WR-01", "13", "Slipway"),
  rope("WR-02", "13", "Slipway", { brokenLay: 12, brokenStrand: 3 }),
  rope("WR-03", "16", "Slipway", { brokenLay: 8, brokenStrand: 1 }),
  rope("WR-04", "16", "Slipway"),
  rope("WR-05", "19", "Slipway", { brokenStrand: null }),
  rope("WR-06", "19", "Slipway"),
  shackle("S-07", "Dee shackle", "13", "Slipway", 13, 16),
  shackle("S-08", "Dee shackle", "13", "Slipway", 13, 16, { pinSeated: "no" }),
  shackle("S-09", "Dee shackle", "19", "Slipway", 19, 22),
  shackle("S-10", "Dee shackle", "19", "Slipway", 19, 22, { pinNow: 20.1 }),
  shackle("S-11", "Bow shackle", "32", "Slipway", 32, 35),
  ...[
    hook("H-08", "Swivel hook", "16", "Rigging store", 42, 32),
    hook("H-09", "Eye hook", "13", "Rigging store", 34, 26),
    shackle("S-12", "Bow shackle", "25", "Rigging store", 25, 28),
    shackle("S-13", "Bow shackle", "25", "Rigging store", 25, 28),
    chain("C-06", "Chain sling, single leg", "16", "Rigging store", 15.6),
    rope("WR-07", "13", "Rigging store"),
    rope("WR-08", "13", "Rigging store"),
    soft("W-05", "Web sling", "2 m", "Rigging store"),
    soft("R-04", "Roundsling", "3 m", "Rigging store"),
  ].map(waiting),
];
