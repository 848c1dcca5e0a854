/**
 * A log as a clerk keeps it: columns with headings, rows with cells. Each column and cell also has its plainest form, so that a
 * failure can be made simpler one column at a time.
 */
import { ASIDE, REMARKS, RESULT } from "./columns.mjs";
import { cleanFacts } from "./facts.mjs";
import { KINDS } from "./kinds.mjs";
import { plainly, written } from "./notations.mjs";
import { dressed, inUnit, NEW, NOW, paired, PARTS, SECTION_OF, SINGLES } from "./readings.mjs";
import { BAD, GOOD, SIGHTS } from "./sights.mjs";

const DIMENSION = /^(.*\.(asNew|now)|clearance|size|link|leastLink|gauged|gaugedMost|nick|gauge|rope|groove|spacing|span|bend)$/;
export const isDimension = (of) => DIMENSION.test(of);
export const isSight = (of) => of in SIGHTS;
export const isCount = (of) => ["lay", "oneStrand", "six", "thirty", "atEnd", "clipsFitted"].includes(of);

/** Words after which yes and no say something; a bare "Stitching" takes words only. */
const TELLS =
  /works?\b|\bok\b|closes|working|functions|legible|readable|present|marked|seat|engaged|home|free|true|turns|place|tight|fitted|sound|intact|matches|correct|live|locks?\b|tag|mark|ident|latch|catch|good/i;
/** Headings of a state: "OK" beneath them could be either. */
const STATE =
  /found|present|seen|any|cracked|bent|deformed|distorted|stretched|modified|welded|corroded|kinked|cut or torn|burns|parted|broken|\?/i;

function sightColumn(of, style, d) {
  const { sense, heading, plain, asks, turned, choices } = SIGHTS[of];
  const form = d.weighted([
    [80, "plain"],
    [14, "asks"],
    [style.turned ? 20 : 0, "turned"],
    [style.turned && choices.length > 0 ? 15 : 0, "choice"],
  ]);
  const yes = ["yes", "Y", "Yes"],
    no = ["no", "N", "No"];
  const told = (words, opposite) => ((sense === "fault") === opposite ? words[0] : words[1]);
  if (form === "choice") {
    const [written, good, bad] = d.pick(choices);
    return { heading: written, form, good: [good], bad: [bad, "yes"] };
  }
  if (form === "turned") return { heading: d.pick(turned), form, good: told([yes, no], true), bad: told([no, yes], true) };
  const list = form === "asks" ? asks : plain;
  const said = d.chance(0.3) ? heading : d.pick(list);
  const question = form === "asks" || said.endsWith("?");
  if (question) return { heading: said, form: "asks", good: told([no, yes], true), bad: [...told([yes, no], true), sense === "fault"] };
  const words = GOOD[sense].filter((word) =>
    sense === "fault" ? !(STATE.test(said) && /^ok$/i.test(String(word))) : TELLS.test(said) || !/^(yes|y|true)$/i.test(String(word)),
  );
  return { heading: said, form, good: words, bad: BAD[sense].filter((word) => !(word === "present" && sense === "sound")) };
}

function sizeHeading(of, kinds, style, d) {
  const [part, role] = of.split(".");
  const names = part === "section" && kinds.length === 1 ? (SECTION_OF[kinds[0]] ?? ["Section"]) : PARTS[part].names;
  // Both columns of a pair go by one name and one pair of roles, as in a log.
  style.parts[part] ??= { name: d.chance(0.4) ? PARTS[part].register : d.pick(names), asNew: d.pick(NEW), now: d.pick(NOW) };
  return paired(style.parts[part].name, style.parts[part][role], d);
}
const REGISTER_ROLE = { asNew: "as-new", now: "now" };
const registerHeading = (of) => {
  if (isSight(of)) return SIGHTS[of].heading;
  const [part, role] = of.split(".");
  return role ? `${PARTS[part].register} ${REGISTER_ROLE[role]}` : SINGLES[of === "clipSize" ? "size" : of][0];
};
const withUnit = (heading, of, style) => (isDimension(of) && style.place === "heading" ? `${heading} (${style.unit})` : heading);

/** A column for one fact. */
export function columnOf(of, kinds, style, d) {
  const plain = withUnit(registerHeading(of), of, style);
  if (isSight(of)) return { of, plain, ...sightColumn(of, style, d) };
  const bare = of.includes(".")
    ? sizeHeading(of, kinds, style, d)
    : d.chance(0.4)
      ? SINGLES[of === "clipSize" ? "size" : of][0]
      : d.pick(SINGLES[of === "clipSize" ? "size" : of]);
  return { of, plain, heading: isDimension(of) && style.place === "heading" ? inUnit(bare, style.unit, d) : bare };
}

/** The cell of a fact, and its plainest form. */
export function cellOf(column, fact, style, d) {
  const { of } = column;
  if (isSight(of)) return [d.pick(column.good), SIGHTS[of].sense === "fault" ? "none" : "yes"];
  if (isDimension(of)) return [written(fact, style.unit, style.place, d), plainly(fact, style.unit, style.place)];
  if (of === "clipSize") return [`${fact} in`, `${fact} in`];
  if (of === "chainSize") {
    const own = `${fact} ${style.unit}`;
    return style.place === "column" ? [d.pick([fact, own]), fact] : [own, own];
  }
  return [d.pick([fact, fact, String(fact)]), fact];
}

/** Kinds whose columns would go by one heading and mean two things do not stand in one log. */
const CLASH = [
  ["chain sling", "clips", "sheave", "running rope"],
  ["chain sling", "clips", "rotation resistant rope"],
  ["chain sling", "clips", "standing rope"],
  ["plate clamp", "hook"],
  ["plate clamp", "load block"],
  ["shackle", "lifting point"],
  ["shackle", "beam clamp"],
  ["plate clamp", "coupling"],
  ["plate clamp", "headache ball"],
];
function together(kinds, count) {
  const taken = [];
  for (const kind of kinds)
    if (taken.length < count && !CLASH.some((clash) => clash.includes(kind) && taken.some((other) => clash.includes(other))))
      taken.push(kind);
  return taken;
}
/** Beside a section of other gear, the link of a chain goes by its own name. */
function linkColumn(column, facts, style, d) {
  if (column.of !== "link" || !facts.includes("section.now")) return column;
  const heading = withUnit(d.pick(SINGLES.link.slice(1)), "link", style);
  return { ...column, heading, plain: withUnit("Thinnest link", "link", style) };
}

/** A log with clean rows. `only` names its kinds. */
export function cleanLog(d, only) {
  const kinds =
    only ??
    together(
      d.shuffle(Object.keys(KINDS)),
      d.weighted([
        [7, 1],
        [2, 2],
        [1, 3],
      ]),
    );
  const style = {
    unit: d.pick(["mm", "in"]),
    place: d.pick(["heading", "column", "cell"]),
    blank: d.pick([null, "", 0]),
    turned: d.chance(0.25),
    parts: {},
  };
  const items = Array.from({ length: d.whole(kinds.length, 16) }, (_, i) => cleanFacts(kinds[i % kinds.length], style.unit, d));
  const facts = [...new Set(items.flatMap(({ is }) => Object.keys(is)))];
  const columns = facts.map((of) => linkColumn(columnOf(of, kinds, style, d), facts, style, d));
  const log = {
    kinds,
    style,
    columns: [
      { of: "id", heading: d.pick(["Id", "ID", "Id", "ID no.", "Item no.", "Asset no.", "Tag no."]), plain: "Id" },
      { of: "gear", heading: d.pick(["Gear", "Gear", "Type", "Gear type", "Equipment", "Description"]), plain: "Gear" },
      ...(style.place === "column" ? [{ of: "unit", heading: d.pick(["Unit", "Unit", "Units", "UOM"]), plain: "Unit" }] : []),
      ...columns,
    ],
    rows: [],
  };
  for (const [i, { kind, name, is }] of items.entries()) {
    const cells = [
      [`${kind[0].toUpperCase()}-${i + 1}${d.whole(0, 9)}`, "A-17"],
      [name, kind],
    ];
    if (style.place === "column") cells.push([style.unit, style.unit]);
    for (const column of columns) cells.push(column.of in is ? cellOf(column, is[column.of], style, d) : [style.blank, style.blank]);
    // Where the host hands blanks on as 0, a count of 0 beside one cannot be told from a blank: either answer will do.
    const zero = style.blank === 0 && Object.values(is).includes(0) && columns.some(({ of }) => !(of in is));
    log.rows.push({
      kind,
      is,
      cells: cells.map(([cell]) => cell),
      plain: cells.map(([, plain]) => plain),
      truth: { wanted: zero ? "free" : "in", family: zero ? "0 beside a blank handed on as 0" : "clean", pins: [] },
    });
  }
  addAside(log, d);
  mixColumns(log, d);
  for (const column of log.columns) column.heading = dressed(column.heading, d);
  const own = log.columns.filter((column) => column.form === "turned" || column.form === "choice").map(({ of }) => of);
  for (const row of log.rows) if (row.truth.family === "clean" && own.some((of) => of in row.is)) row.truth.family = "turned";
  return log;
}

/** Adds a column with a cell for each row; `cell` gives the cell. Gives the column's place. */
export function addColumn(log, heading, cell, more = {}) {
  log.columns.push({ of: "added", heading, plain: heading, ...more });
  for (const row of log.rows) {
    const given = cell(row);
    row.cells.push(given);
    row.plain.push(given);
  }
  return log.columns.length - 1;
}
function addAside(log, d) {
  for (const [heading, cells] of d.shuffle(ASIDE).slice(
    0,
    d.weighted([
      [4, 0],
      [3, 1],
      [2, 3],
      [1, 6],
    ]),
  ))
    addColumn(log, heading, () => (d.chance(0.15) ? blankText(log) : d.pick(cells)), { of: "aside", optional: true });
  if (d.chance(0.2)) addColumn(log, d.pick(REMARKS.headings), () => blankText(log), { of: "remarks", optional: true });
  if (d.chance(0.15))
    addColumn(log, d.pick(RESULT.headings), (row) => (row.truth.wanted === "in" ? d.pick(RESULT.good) : ""), {
      of: "result",
      optional: true,
    });
}
/** A blank where text would stand; the add-in hands these on guarded, so 0 is not one of them. */
export const blankText = (log) => (log.style.blank === 0 ? "" : log.style.blank);

/** Puts the columns into another order, in a third of the logs. */
function mixColumns(log, d) {
  if (!d.chance(0.33)) return;
  reorder(log, d.shuffle(log.columns.map((_, i) => i)));
}
export function reorder(log, order) {
  log.columns = order.map((i) => log.columns[i]);
  for (const row of log.rows) {
    row.cells = order.map((i) => row.cells[i]);
    row.plain = order.map((i) => row.plain[i]);
    row.truth.pins = row.truth.pins.map((pin) => ({ ...pin, at: order.indexOf(pin.at) }));
  }
}
/** Headings of the list that the log does not have yet. */
export const unused = (log, headings) =>
  headings.filter((heading) => !log.columns.some((column) => column.heading.trim().toLowerCase() === heading.toLowerCase()));
export const placeOf = (log, of) => log.columns.findIndex((column) => column.of === of);
