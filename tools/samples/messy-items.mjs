/** The old log's items: what the clerk found and wrote; each row as it stands in the sheet. */
import { day, daysAgo } from "./book.mjs";
import { clerk } from "./clerk-hand.mjs";

const { between, pick, chance, inches, millimetres, sound, none, blank, zero } = clerk(1906);

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "June", "July", "Aug", "Sept", "Oct", "Nov", "Dec"];

/** A day as the clerk writes it: mostly a date, sometimes words or figures. The doubtful ones stand in the rows. */
function written(date) {
  const d = date.getUTCDate(),
    m = date.getUTCMonth(),
    y = date.getUTCFullYear();
  const words = `${String(d)} ${MONTHS[m]} ${String(y)}`;
  const points = `${String(d)}.${String(m + 1).padStart(2, "0")}.${String(y)}`;
  return pick([date, date, date, date, date, words, date.toISOString().slice(0, 10), d > 12 ? points : words]);
}

const SERVICE = ["normal", "Normal", "normal", "yearly", "", "", "6 monthly", "quarterly", "Severe"];
const SINCE = { severe: 100, quarterly: 110, "6 monthly": 220, monthly: 40, idle: 35 };

let shelf = 0;
function base(id, gear, size, own) {
  const service = own.service ?? pick(SERVICE);
  shelf += 1;
  return {
    id,
    gear,
    size,
    service: service === "" ? null : service,
    inspected: written(daysAgo(between(4, SINCE[service.toLowerCase()] ?? 430))),
    inspector: pick(["store keeper", "St. keeper", "rigging insp.", "crane foreman", "SK", "SK", "slip foreman"]),
    shelf: `${pick(["A", "B", "C", "D"])}${String((shelf % 9) + 1)}`,
  };
}

/** Cells that mean nothing for this kind of gear: most are blank, some say so. */
const idle = (...keys) => Object.fromEntries(keys.map((key) => [key, blank()]));
const ROPE_KEYS = ["brokenLay", "brokenStrand", "kinks"],
  SOFT_KEYS = ["cuts", "stitching"];
const metal = () => ({
  cracks: none(),
  deformed: none(),
  tag: sound(),
  corrosion: chance(0.6) ? none() : null,
  heat: chance(0.3) ? none() : null,
});

export function hook(id, gear, size, throat, section, own = {}) {
  return {
    ...base(id, gear, size, own),
    ...metal(),
    ...idle(...ROPE_KEYS, ...SOFT_KEYS, "pinNew", "pinNow", "pinSeated", "clearance", "turnsFreely", "sheaveTrue"),
    throatNew: inches(throat),
    throatNow: inches(throat + between(0, throat * 0.025)),
    sectionNew: inches(section),
    sectionNow: inches(section - between(0, section * 0.025)),
    twist: zero(),
    latch: sound(),
    ...own,
  };
}

export function shackle(id, gear, size, bow, pin, own = {}) {
  return {
    ...base(id, gear, size, own),
    ...metal(),
    ...idle(...ROPE_KEYS, ...SOFT_KEYS, "throatNew", "throatNow", "latch", "twist"),
    sectionNew: inches(bow),
    sectionNow: inches(bow - between(0, bow * 0.05)),
    pinNew: millimetres(pin),
    pinNow: millimetres(pin - between(0, pin * 0.05, 1)),
    pinSeated: sound(),
    ...own,
  };
}

export function link(id, gear, size, crown, own = {}) {
  return {
    ...base(id, gear, size, own),
    ...metal(),
    ...idle(...SOFT_KEYS, "throatNew", "throatNow", "latch", "pinNew", "pinNow", "pinSeated"),
    sectionNew: inches(crown),
    sectionNow: inches(crown - between(0, crown * 0.05)),
    ...own,
  };
}

export function swivel(id, gear, size, section, own = {}) {
  return {
    ...base(id, gear, size, own),
    ...metal(),
    ...idle("latch", "throatNew", "throatNow", ...ROPE_KEYS),
    sectionNew: inches(section),
    sectionNow: inches(section - between(0, section * 0.02)),
    clearance: inches(between(2, 5)),
    turnsFreely: sound(),
    fasteners: sound(),
    ...own,
  };
}

export function block(id, gear, size, plate, pin, own = {}) {
  return {
    ...base(id, gear, size, own),
    ...metal(),
    ...idle("latch", "throatNew", "throatNow", ...SOFT_KEYS),
    sectionNew: inches(plate),
    sectionNow: inches(plate - between(0, plate * 0.03)),
    pinNew: millimetres(pin),
    pinNow: millimetres(pin - between(0, pin * 0.04, 1)),
    sheaveTrue: sound(),
    fasteners: sound(),
    ...own,
  };
}

export function chain(id, gear, size, thinnest, own = {}) {
  return {
    ...base(id, gear, size, own),
    ...metal(),
    ...idle("throatNew", "throatNow", "pinNew", "pinNow", "sheaveTrue"),
    sectionNow: inches(thinnest),
    endFittings: sound(),
    ...own,
  };
}

export function rope(id, gear, size, own = {}) {
  return {
    ...base(id, gear, size, own),
    ...idle("throatNew", "throatNow", "sectionNew", "sectionNow", "latch", "pinSeated", "sheaveTrue"),
    brokenLay: zero(),
    brokenStrand: zero(),
    kinks: none(),
    endFittings: sound(),
    heat: none(),
    corrosion: none(),
    tag: sound(),
    ...own,
  };
}

export function soft(id, gear, size, own = {}) {
  return {
    ...base(id, gear, size, own),
    ...idle("throatNew", "throatNow", "sectionNow", "latch", "brokenLay", "kinks"),
    cuts: none(),
    stitching: sound(),
    heat: none(),
    endFittings: sound(),
    tag: sound(),
    ...own,
  };
}

/** A size such as 3/4 that the spreadsheet took for a day of that year. */
export const becameDay = (iso) => ({ slipped: day(iso) });
export { day };
