/**
 * Logs with rows of every gear kind, as the catalogue of this tree has them: for the benchmark and for comparing two builds. They hold
 * no planted truth; `tools/fuzz` has that. In a rough log any cell may be something else: a word, a blank as the host hands it over,
 * a size in another notation, a date.
 */
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = fileURLToPath(new URL("..", import.meta.url));

/** Numbers that come the same in every run. */
export function chances(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Gear kinds and columns of this tree. */
export async function catalogue() {
  const contents = `export { GEAR } from "./src/engine/gear/index";
export { FIELDS, FIELD_IDS } from "./src/engine/columns";
export { fieldsOf } from "./src/engine/gear/columns-of";`;
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root, loader: "ts" },
    bundle: true,
    write: false,
    format: "esm",
    logLevel: "error",
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString("base64")}`);
}

const SIZES = { in: [0.375, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5], mm: [10, 12, 13, 16, 19, 20, 25, 32, 40] };
const NOMINAL = ["3/8", "1/2", "5/8", "3/4", "1 in", "10 mm", "13 mm", "16 mm", "22 mm"];
const CHOICES = {
  ratedLoad: ["2 t", "4.75 t", "1000 kg", "2 ton", "3.25"],
  legs: ["2", "1", "4 leg", "single"],
  asNewFrom: ["", "", "", "dee shackle table", "bow shackle table", "measured"],
  construction: ["strand laid", "6x19", "6x36 IWRC", "cable laid", "braided 8 or more", "", "18x7"],
  service: ["normal", "severe", "heavy", "yearly", "", "idle"],
  usedOn: ["crane", "hoist", "sling", ""],
  clipType: ["forged", "fist grip", "malleable", ""],
  ropeCategory: ["1", "02", "RCN 06", "13", ""],
  ropeLay: ["ordinary", "Lang", ""],
  drumLayers: ["single", "multi", "2", ""],
  inspector: ["Clerk A", "Clerk B"],
  releasedBy: ["", "", "", "", "Qualified Person C"],
  // The least common words last: a column that condemns every row tells nothing apart.
  tagged: ["", "", "", "", "", "", "", "no", "yes", "2026-01-05"],
  result: ["", "", "", "ok", "pass", "good", "fit for use", "see remarks", "failed", "out"],
  remarks: ["", "", "", "", "cleaned", "new latch fitted", "paint worn", "hairline at saddle", "do not use", "repaired by shop"],
  place: ["Bay 1", "Bay 2", "Store", "Dock 4"],
};
const GOOD = { fault: ["none", "none", "no", "nil", "none found"], sound: ["yes", "yes", "ok", "good", "y"] };
const BAD = { fault: ["found", "yes", "hairline at saddle", "slight", "some rust"], sound: ["no", "missing", "worn", "stiff", "bent"] };
/** What may stand where anything else was meant. */
const ROUGH = [
  null,
  "",
  0,
  " ",
  "?",
  "n/a",
  "-",
  "none",
  "0",
  "1,5",
  "1 1/2",
  "1-1/2",
  '2"',
  "50mm",
  "5 cm",
  "abc",
  "ok?",
  true,
  false,
  -1,
  1e16,
  2.05,
  "crack at eye",
  "see photo",
  "approx 20",
  "<19",
  "#N/A",
  { serial: 46100 },
];

/** Every heading of the register, a heading that nobody understands, and in some logs columns that say the same again. */
function headingsFor(catalogued, fields, chance, rough) {
  const columns = fields.map((id) => ({ id, heading: catalogued.FIELDS[id].heading }));
  if (!rough) return columns;
  const extra = [
    { id: "cracks", heading: "Cracks seen" },
    { id: "throatNow", heading: "Throat now 2024" },
    { id: "sectionNow", heading: "Previous section now" },
    { id: "sectionNow", heading: "Section now 2" },
    { id: "remarks", heading: "Comments" },
    { id: null, heading: "Bin" },
    { id: null, heading: "Wobble factor" },
    { id: null, heading: "Not judged: paint" },
  ].filter(() => chance() < 0.25);
  return [...columns, ...extra];
}
const pick = (list, chance) => list[Math.floor(chance() * list.length)];
/** As gauges read: a thousandth of an inch, a hundredth of a millimetre. */
const cut = (value, unit) => (unit === "in" ? Math.round(value * 1e3) / 1e3 : Math.round(value * 1e2) / 1e2);

/** A row's cells by field, as somebody who reads everything would fill them; one in twenty readings is past a usual limit. */
function plainRow(catalogued, kind, at, chance, words) {
  const unit = chance() < 0.5 ? "in" : "mm";
  const row = {
    id: `${kind.id.slice(0, 2).toUpperCase()}-${at}`,
    gear: chance() < 0.9 ? kind.id : pick(kind.names, chance),
    unit,
    inspected: 46000 + Math.floor(chance() * 200),
    assembly: chance() < 0.2 ? `A${Math.floor(chance() * 40)}` : "",
  };
  const bad = () => chance() < 0.05;
  const length = (id) => (row[id] ??= pick(SIZES[unit], chance));
  for (const check of kind.checks) {
    if (!check.required && chance() < 0.6) continue;
    switch (check.kind) {
      case "loss":
        length(check.original);
        row[check.measured] ??= cut(row[check.original] * (1 - chance() * (bad() ? 0.2 : 0.045)), unit);
        break;
      case "growth":
        length(check.original);
        row[check.measured] ??= cut(row[check.original] * (1 + chance() * (bad() ? 0.2 : 0.045)), unit);
        break;
      case "least":
        row[check.size] ??= pick(NOMINAL, chance);
        row[check.measured] ??= pick(SIZES[unit], chance);
        break;
      default:
        for (const id of catalogued.fieldsOf(check)) {
          const { type } = catalogued.FIELDS[id];
          if (row[id] !== undefined) continue;
          if (type === "fault" || type === "sound") row[id] = bad() ? pick(BAD[type], chance) : words(type);
          else if (type === "count") row[id] = bad() ? Math.floor(chance() * 14) : id === "clips" ? 4 : 0;
          else if (type === "angle") row[id] = bad() ? 11 : 0;
          else if (type === "torque") row[id] = 65;
          else if (type === "length") row[id] = check.kind === "nick" && !bad() ? "" : pick(SIZES[unit], chance);
          else if (id === "size") row[id] = pick(NOMINAL, chance);
          else if (id === "nickPart") row[id] = bad() ? pick(Object.keys(kind.parts), chance) : "";
          else if (CHOICES[id] !== undefined) row[id] = pick(CHOICES[id], chance);
        }
    }
  }
  return row;
}

/**
 * A log: its headings and `count` rows that take the kinds in turn.
 * @param {{catalogued: object, seed: number, count: number, rough?: boolean, kinds?: string[]}} how
 */
export function mixedLog({ catalogued, seed, count, rough = false, kinds }) {
  const chance = chances(seed);
  const taken = catalogued.GEAR.filter(({ id }) => kinds === undefined || kinds.includes(id));
  const general = ["id", "gear", "unit", "inspected", "assembly", "place", "remarks", "result", "tagged", "releasedBy", "releasedOn"];
  const more = rough ? ["gauge", "construction", "asNewFrom", "ratedLoad", "overload", "service"].filter(() => chance() < 0.5) : [];
  const read = taken.flatMap((kind) => [
    ...kind.checks.flatMap((check) => catalogued.fieldsOf(check)),
    ...(kind.variants === undefined ? [] : [kind.variants.field]),
  ]);
  const wanted = new Set([...(rough ? general.filter(() => chance() < 0.8) : general), "gear", ...more, ...read]);
  // Of a rough log any column may be missing.
  const fields = catalogued.FIELD_IDS.filter((id) => wanted.has(id) && (!rough || id === "gear" || chance() < 0.92));
  const columns = headingsFor(catalogued, fields, chance, rough);
  const blank = rough ? pick([null, "", "", 0], chance) : "";
  // A clerk has a word of his own for what is in order; several clerks have several.
  const own = { fault: pick(GOOD.fault, chance), sound: pick(GOOD.sound, chance) };
  const words = (type) => (rough || chance() < 0.1 ? pick(GOOD[type], chance) : own[type]);
  const noise = rough ? pick([0, 0.01, 0.03, 0.1], chance) : 0;
  const rows = Array.from({ length: count }, (_, at) => {
    const plain = plainRow(catalogued, taken[at % taken.length], at, chance, words);
    return columns.map(({ id }, place) => {
      if (id !== null && chance() < noise) return pick(ROUGH, chance);
      // A column that says the same again is mostly empty.
      if (place >= fields.length && chance() < 0.8) return blank;
      if (id === null) return pick(["", "7", "PO-4471", "red", 12], chance);
      const cell =
        plain[id] ?? (["place", "remarks", "result", "tagged", "releasedBy"].includes(id) ? pick(CHOICES[id], chance) : undefined);
      if (cell !== undefined) return cell === "" ? blank : cell;
      if (!rough) return "";
      if (id === "gauge") return chance() < 0.2 ? 0.005 : blank;
      if (id === "overload" || id === "releasedOn") return chance() < 0.1 ? 46000 + Math.floor(chance() * 300) : blank;
      if (CHOICES[id] !== undefined && more.includes(id)) return pick(CHOICES[id], chance);
      // Now and then a column of another kind is filled.
      return chance() < 0.01 ? pick([...SIZES.mm, "none", "yes", "found", 1], chance) : blank;
    });
  });
  return { headings: [columns.map(({ heading }) => heading)], rows };
}
