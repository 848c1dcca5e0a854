/**
 * Planted truth. Each plant changes a clean log so that a row's truth is known without any engine: `wanted` is "in", "out",
 * "REMOVE" or "free" (either will do), `family` names the plant, `pins` are the cells and headings that make it true.
 */
import { isCount, isDimension, isSight, placeOf } from "./log.mjs";
import { changed, chainFigure, needed } from "./facts.mjs";
import { FITNESS, REMARKS, RESULT, STRANGE, TAGGED } from "./columns.mjs";
import { KINDS } from "./kinds.mjs";
import { LIMITS } from "./limits.mjs";
import { addColumn, blankText, unused } from "./log.mjs";
import { NO_COUNT, NO_SIZE, written } from "./notations.mjs";
import { inUnit, PARTS, SINGLES } from "./readings.mjs";
import { DOUBTFUL, SIGHTS, SUSPECTED } from "./sights.mjs";

const pin = (at, what = "cell") => ({ at, what });
/** Sets a row's truth; what was already known to be out stays so, by its first reason. */
export function tell(row, wanted, family, ...pins) {
  if (row.truth.wanted === "out" || row.truth.wanted === "REMOVE") return;
  if (wanted === "free" && row.truth.wanted === "free") return;
  row.truth = { wanted, family, pins };
}
const own = (log, row, test) => log.columns.flatMap(({ of }, at) => (of in row.is && test(of) ? [at] : []));

/** Sizes of an item that have a limit: where the cell stands, and a figure past it. */
function pastLimit(log, row, d) {
  const { unit } = log.style;
  const { is } = row;
  const more = KINDS[row.kind];
  const by = d.weighted([
    [3, 0.002],
    [4, 0.05],
    [3, 0.2],
  ]);
  const ways = more.sizes.map((part) => () => {
    const from = row.is[`${part.of}.asNew`];
    const share = Math.min(0.9, part.limit.past + d.between(0, by, 5));
    return [`${part.of}.now`, changed(from, share, part.change, unit, true), part.of];
  });
  if (more.chain)
    ways.push(() => [
      "link",
      changed(chainFigure(row.is.chainSize), LIMITS.chain.past + d.between(0, by, 5), "loss", unit, true),
      "chain link",
    ]);
  if (more.maker)
    ways.push(
      () => ["link", changed(is.leastLink, LIMITS.maker.past + d.between(0, by, 5), "loss", unit, true), "least link of the maker"],
      () => ["gauged", changed(is.gaugedMost, LIMITS.maker.past + d.between(0, by, 5), "growth", unit, true), "gauged length of the maker"],
    );
  if (more.rope)
    ways.push(() => ["rope", changed(row.is.size, LIMITS.ropeDiameter.past + d.between(0, by, 5), "loss", unit, true), "rope diameter"]);
  if (more.groove)
    ways.push(() => ["groove", changed(row.is.size, LIMITS.groove.past - 1 - d.between(0, 0.01, 5), "growth", unit), "groove"]);
  if (more.beam)
    ways.push(() => ["bend", changed(row.is.span * (LIMITS.bend.past + d.between(0, 0.01, 5)), 0, "growth", unit, true), "bend of a beam"]);
  if (more.twist) ways.push(() => ["twist", d.pick([1, 2, 5, 10, 12, 0.5]), "twist"]);
  if (more.clearance)
    ways.push(() => {
      const [mm, name] = d.pick([
        [LIMITS.clearanceStrip.pastMm + d.between(0, 4, 1), "clearance above 3/16 in"],
        [LIMITS.clearanceUnknown.pastMm + d.between(0, 1.2, 1), "clearance above 1/8 in, size not known"],
      ]);
      return ["clearance", changed(mm / (unit === "mm" ? 1 : 25.4), 0, "growth", unit, true), name];
    });
  for (const [of, limit] of Object.entries(more.counts ?? {})) ways.push(() => [of, limit.past + d.whole(0, 8), `count ${of}`]);
  if (more.clips)
    ways.push(
      () => ["clipsFitted", LIMITS.clips.find(([size]) => size === row.is.clipSize)[1] - 1, "clip count"],
      () => [
        "spacing",
        Number(
          (LIMITS.clips.find(([size]) => size === row.is.clipSize)[2] * (unit === "mm" ? 25.4 : 1) * d.between(0.6, 0.97, 3)).toFixed(2),
        ),
        "clip spacing",
      ],
    );
  return ways.length > 0 ? d.pick(ways)() : null;
}
const cellFor = (log, of, figure, d) =>
  isDimension(of) ? written(figure, log.style.unit, log.style.place, d) : d.pick([figure, String(figure)]);

/** Hooks wear at their saddle from 5 % by common practice, where the log says that it is the saddle. */
function wornSaddle(log, row, d) {
  const at = placeOf(log, "section.now");
  if (at < 0 || row.kind !== "hook" || !/section|saddle|bowl/i.test(log.columns[at].heading)) return;
  const figure = changed(row.is["section.asNew"], LIMITS.hookSaddle.past + d.between(0, 0.04, 5), "loss", log.style.unit, true);
  row.cells[at] = cellFor(log, "section.now", figure, d);
  tell(row, "out", "hook saddle 5 to 10 %", pin(at), pin(placeOf(log, "section.asNew")));
}
function pastALimit(log, row, d) {
  const past = pastLimit(log, row, d);
  if (!past) return;
  const [of, figure, name] = past;
  const at = placeOf(log, of);
  if (at < 0) return;
  row.cells[at] = cellFor(log, of, figure, d);
  const beside =
    {
      link: KINDS[row.kind].maker ? "leastLink" : "chainSize",
      gauged: "gaugedMost",
      rope: "size",
      groove: "size",
      bend: "span",
      clipsFitted: "clipSize",
      spacing: "clipSize",
    }[of] ?? of.replace(".now", ".asNew");
  tell(row, "out", `past its limit: ${name}`, pin(at), ...(placeOf(log, beside) >= 0 ? [pin(placeOf(log, beside))] : []));
}
function blankNeeded(log, row, d) {
  const { blank } = log.style;
  const able = own(
    log,
    row,
    (of) => needed(row.kind, of) && of !== log.doubled && (blank !== 0 || (isDimension(of) && !["clearance", "bend"].includes(of))),
  );
  if (able.length === 0) return;
  const at = d.pick(able);
  const cell = blank === 0 ? 0 : d.pick([blank, blank, "   ", "\u00a0"]);
  row.cells[at] = cell;
  tell(row, "out", `blank needed reading: ${log.columns[at].of}`, pin(at));
}
function noSize(log, row, d) {
  const able = own(log, row, (of) => (isDimension(of) || isCount(of) || of === "twist") && needed(row.kind, of));
  if (able.length === 0) return;
  const at = d.pick(able);
  const { of } = log.columns[at];
  const cells = isDimension(of)
    ? [...NO_SIZE, -Math.abs(row.is[of])]
    : of === "twist"
      ? ["?", "some", "slight", "n/a", "see note", "a bit", "yes", "#REF!"]
      : NO_COUNT;
  row.cells[at] = d.pick(cells);
  tell(row, "out", `unreadable: ${of}`, pin(at));
}
function implausible(log, row, d) {
  const part = KINDS[row.kind].sizes.length > 0 ? d.pick(KINDS[row.kind].sizes) : null;
  if (!part) return;
  const asNew = placeOf(log, `${part.of}.asNew`),
    now = placeOf(log, `${part.of}.now`);
  if (asNew < 0 || now < 0) return;
  const from = row.is[`${part.of}.asNew`];
  const figure = d.pick([part.change === "loss" ? from * 1.15 : from * 0.85, from * 25.4, from / 25.4, from * 10]);
  row.cells[now] = written(Number(figure.toFixed(2)) || 0.01, log.style.unit, log.style.place, d);
  tell(row, "out", "implausible beside as-new", pin(now), pin(asNew));
}
function seenBad(log, row, d) {
  const able = own(log, row, isSight);
  if (able.length === 0) return;
  const at = d.pick(able);
  const column = log.columns[at];
  const { sense, bad } = SIGHTS[column.of];
  const own_ = column.form === "plain" || (column.form === "turned" && sense === "fault");
  row.cells[at] = d.pick(own_ && d.chance(0.65) ? bad : column.bad);
  tell(row, "out", `seen bad: ${column.of}, ${column.form} heading`, pin(at, "both"));
}
function doubtful(log, row, d) {
  const able = own(log, row, isSight);
  if (able.length === 0) return;
  const at = d.pick(able);
  row.cells[at] = d.pick(
    needed(row.kind, log.columns[at].of) && log.columns[at].of !== log.doubled ? [...DOUBTFUL, ...SUSPECTED] : SUSPECTED,
  );
  tell(row, "out", `doubtful word: ${log.columns[at].form} heading`, pin(at, "both"));
}
const UNKNOWN_GEAR = [
  "widget",
  "ladder",
  "?",
  "",
  "unknown",
  "see list",
  "forklift",
  "fire extinguisher",
  "harness",
  "ratchet strap",
  "misc",
  "sling",
  "TBC",
  "thing",
  "tool bag",
  "lanyard",
  12,
];
function unknownGear(log, row, d) {
  const at = placeOf(log, "gear");
  row.cells[at] = d.pick(UNKNOWN_GEAR);
  tell(row, "out", "gear kind not known", pin(at));
}
function described(log, row, d) {
  if (row.truth.family !== "clean") return;
  const able = own(log, row, (of) => isSight(of)).filter((at) => log.columns[at].form === "plain");
  const remarks = placeOf(log, "remarks");
  if (remarks >= 0 && d.chance(0.4)) {
    row.cells[remarks] = d.pick(REMARKS.harmless);
    row.truth = { wanted: "in", family: "described", pins: [pin(remarks)] };
    return;
  }
  if (able.length === 0) return;
  const at = d.pick(able);
  const { of } = log.columns[at];
  // Rust at an end connection is no surface rust of a body.
  const words = SIGHTS[of].described.filter(
    (word) => row.kind !== "end connection" || of !== "corrosion" || !/rust$/.test(word) || /^no /.test(word),
  );
  row.cells[at] = d.pick(words);
  row.truth = { wanted: "in", family: "described", pins: [pin(at)] };
}
function badRemark(log, row, d) {
  const at = placeOf(log, "remarks");
  if (at < 0) return;
  row.cells[at] = d.pick(REMARKS.bad);
  tell(row, "out", "a remark against the item", pin(at, "both"));
}
/** Plants in one row, by weight. */
export const ROW_PLANTS = [
  [10, pastALimit],
  [1, wornSaddle],
  [6, blankNeeded],
  [4, noSize],
  [2, implausible],
  [9, seenBad],
  [6, doubtful],
  [1, unknownGear],
  [2, badRemark],
];
export { described };

// ---- plants in a whole log ----

function fitness(log, d) {
  const { headings, good, bad } = d.pick(FITNESS);
  const heading = d.pick(headings);
  if (unused(log, [heading]).length === 0) return;
  const at = addColumn(log, heading, () => d.pick(good));
  for (const row of log.rows) {
    if (d.chance(0.15)) {
      row.cells[at] = blankText(log);
      tell(row, "free", "fitness column, blank");
    } else if (d.chance(0.5)) {
      row.cells[at] = d.pick(bad);
      tell(row, "out", `fitness column: ${heading}`, pin(at, "both"));
    }
  }
}
function result(log, d) {
  const [heading] = d.shuffle(unused(log, RESULT.headings));
  if (placeOf(log, "result") >= 0 || heading === undefined) return;
  const at = addColumn(log, heading, () => d.pick(RESULT.good));
  for (const row of log.rows)
    if (d.chance(0.6)) {
      const word = d.pick(d.chance(0.15) ? RESULT.removes : RESULT.bad);
      row.cells[at] = word;
      tell(row, "out", `result word: ${heading}`, pin(at, "both"));
    }
}
function remarks(log, d) {
  const [heading] = d.shuffle(unused(log, REMARKS.headings));
  if (placeOf(log, "remarks") >= 0 || heading === undefined) return;
  const at = addColumn(log, heading, () => "", { of: "remarks", optional: true });
  for (const row of log.rows)
    if (d.chance(0.6)) {
      row.cells[at] = d.pick(REMARKS.bad);
      tell(row, "out", "a remark against the item", pin(at, "both"));
    } else row.cells[at] = blankText(log);
}
function tagged(log, d) {
  const [heading] = d.shuffle(unused(log, TAGGED.headings));
  const at = addColumn(log, heading, () => blankText(log));
  for (const row of log.rows)
    if (d.chance(0.5)) {
      row.cells[at] = d.pick(TAGGED.bad);
      tell(row, "out", "tagged out", pin(at, "both"));
    } else if (d.chance(0.3)) row.cells[at] = d.pick(TAGGED.good);
}
/** A column that no trade word explains: its filled cells ask. */
function strange(log, d) {
  const heading = d.pick(STRANGE.headings);
  const at = addColumn(log, heading, () => d.pick(STRANGE.cells));
  for (const row of log.rows)
    if (d.chance(0.3)) {
      row.cells[at] = blankText(log);
      row.plain[at] = blankText(log);
      tell(row, "free", "strange column, blank");
    } else tell(row, "out", `strange column: ${heading}`, pin(at, "both"));
}
const sightsOf = (log) =>
  log.columns.flatMap(({ of }, at) => (isSight(of) && log.rows.some((row) => of in row.is && needed(row.kind, of)) ? [at] : []));
/** Puts another column where a needed one stood. Rows of kinds that need it are out whatever it says. */
function insteadOf(log, at, heading, cell, family) {
  const { of } = log.columns[at];
  log.columns[at] = { of: "instead", heading, plain: heading };
  for (const row of log.rows) {
    const fact = row.is[of];
    if (fact === undefined) continue;
    const given = cell(row, fact);
    row.cells[at] = given;
    row.plain[at] = given;
    if (needed(row.kind, of)) tell(row, "out", family, pin(at, "both"));
    else tell(row, "free", family);
  }
}
/** A heading of one damaged state, beside or in place of the column that it belongs to. */
function state(log, d) {
  const able = sightsOf(log);
  if (able.length === 0) return;
  const at = d.pick(able);
  const { of } = log.columns[at];
  const heading = d.pick(SIGHTS[of].states);
  const family = `damaged state as a heading: ${heading}`;
  const answers = ["yes", "Y", "Yes", "x", "found", true];
  if (d.chance(0.3)) {
    insteadOf(log, at, heading, () => d.pick(answers), `${family}, alone`);
    return;
  }
  const added = addColumn(log, heading, () => d.pick(["no", "N"]));
  for (const row of log.rows)
    if (of in row.is && d.chance(0.6)) {
      row.cells[added] = d.pick(answers);
      tell(row, "out", family, pin(added, "both"));
    } else tell(row, "free", family);
}
const lower = (text) => text[0].toLowerCase() + text.slice(1);
/** Another time or thing than today's reading, where today's should stand. */
function notToday(log, d) {
  const able = log.columns.flatMap(({ of }, at) =>
    of !== "gear" &&
    log.rows.some((row) => of in row.is && needed(row.kind, of)) &&
    !of.endsWith(".asNew") &&
    !/^(size|chainSize|clipSize|span|leastLink|gaugedMost)$/.test(of)
      ? [at]
      : [],
  );
  if (able.length === 0) return;
  const at = d.pick(able);
  const { of } = log.columns[at];
  const unit = isDimension(of) && log.style.place === "heading" ? ` (${log.style.unit})` : "";
  const name = isSight(of)
    ? SIGHTS[of].heading
    : of.includes(".")
      ? PARTS[of.split(".")[0]].register
      : SINGLES[of][0].replace(/ now$/, "").replace(/ deg$/, "");
  const ways = [
    `Previous ${lower(name)}`,
    `Last ${lower(name)}`,
    `${name} last year`,
    `${name} at last inspection`,
    `Old ${lower(name)}`,
    `${name} before repair`,
    `Earlier ${lower(name)}`,
    `${name} last time`,
    ...(isSight(of)
      ? [`${name} required?`, `${name} when new`, `${name} to be checked`, `${name} training`]
      : [`${name} allowed`, `Max ${lower(name)}`, `${name} limit`, `Required ${lower(name)}`, `${name} target`, `${name} tolerance`]),
    ...(isDimension(of) ? [`${name} length`, `${name} paint thickness`, `Paint on ${lower(name)}`, `${name} coating`] : []),
  ];
  const way = d.pick(ways);
  insteadOf(
    log,
    at,
    way + unit,
    (row, fact) => row.cells[at] ?? fact,
    `not today's reading: ${way.replaceAll(new RegExp(name, "gi"), "...")} of ${of}`,
  );
}
/** A second column of one thing that is seen. */
function secondSight(log, d) {
  const able = sightsOf(log);
  if (able.length === 0) return;
  const at = d.pick(able);
  const { of } = log.columns[at];
  const { heading: name, sense, asks, turned, bad, plain } = SIGHTS[of];
  const beside = d.pick([
    `${name} - at eye`,
    `${name} (2nd check)`,
    `${name} 2`,
    `${name} at shank`,
    `${name} after cleaning`,
    `${name} - second look`,
    `${name} recheck`,
    d.pick(asks),
    d.pick(turned),
    d.pick(plain),
  ]);
  if (unused(log, [beside]).length === 0) return;
  const turnedHere = turned.includes(beside);
  const yes = (sense === "fault") !== turnedHere;
  const good = yes ? "no" : "yes";
  const added = addColumn(log, beside, () => good);
  // One thing in two columns: a blank in the one is not missing while the other tells.
  log.doubled = of;
  for (const row of log.rows) {
    if (of in row.is && d.chance(0.6)) {
      row.cells[added] = d.pick([yes ? "yes" : "no", yes ? "Y" : "N", ...(turnedHere ? [] : [...bad.slice(0, 4), "suspected"])]);
      tell(row, "out", `second column: ${of}`, pin(added, "both"));
    } else tell(row, "free", "second column, good");
  }
}
/** A second column of one size, in the log's unit or the other, in either order; sometimes one of them cannot be read. */
function secondSize(log, d) {
  const able = log.columns.flatMap(({ of }, at) => (/\.now$/.test(of) ? [at] : []));
  if (able.length === 0) return;
  const at = d.pick(able);
  const { of } = log.columns[at];
  const [part] = of.split(".");
  const name = `${PARTS[part].register} now`;
  const { unit } = log.style;
  const other = d.chance(0.35) ? (unit === "mm" ? "in" : "mm") : unit;
  // A failing one beside an unreadable one has to stand; that is asked only of headings that surely are the same reading.
  const unreadable = d.chance(0.35);
  const same = log.style.parts[part]?.name ?? PARTS[part].register;
  const sure = [`${same} measured`, `${same} actual`];
  const heading = inUnit(
    d.pick(
      unreadable
        ? sure
        : [...sure, `${name} - 2nd reading`, `${name} 2nd`, `${name} second reading`, `${name} at other side`, `${name} repeat`],
    ),
    other,
    d,
  );
  if (unused(log, [heading]).length === 0) return;
  const added = addColumn(log, heading, () => "");
  for (const row of log.rows) {
    const fit = KINDS[row.kind].sizes.find((size) => size.of === part);
    if (!fit) continue;
    const from = row.is[`${part}.asNew`];
    const figure = changed(from, Math.min(0.8, fit.limit.past + d.between(0.03, 0.3, 4)), fit.change, unit, true);
    const inOther = other === unit ? figure : unit === "mm" ? figure / 25.4 : figure * 25.4;
    row.cells[added] = Number(inOther.toFixed(other === "mm" ? 2 : 4));
    if (unreadable) row.cells[at] = d.pick(["?", "not measured", "see note"]);
    tell(
      row,
      unreadable ? "REMOVE" : "out",
      unreadable ? `failing beside unreadable: ${part}` : `second column: ${part}${other === unit ? "" : ", other unit"}`,
      pin(added, "both"),
      pin(at, "both"),
      pin(placeOf(log, `${part}.asNew`), "both"),
    );
  }
  if (d.chance(0.5)) swap(log, at, added);
}
function swap(log, one, other) {
  const change = (list) => ([list[one], list[other]] = [list[other], list[one]]);
  change(log.columns);
  for (const row of log.rows) {
    change(row.cells);
    change(row.plain);
    for (const p of row.truth.pins) p.at = p.at === one ? other : p.at === other ? one : p.at;
  }
}
const YEARS = [
  ["2023", "2024", "2025"],
  ["Mar 2024", "Mar 2025"],
  ["2024-05-01", "2025-05-02"],
  ["01/2024", "01/2025"],
  ["Q1 2025", "Q3 2025"],
];
/** One thing in columns by date, in any order: the newest is today's. */
function dated(log, d) {
  const able = log.columns.flatMap(({ of }, at) => ((isSight(of) && of !== "weld") || /\.now$/.test(of) || of === "twist" ? [at] : []));
  if (able.length === 0) return;
  const at = d.pick(able);
  const { of } = log.columns[at];
  const unit = isDimension(of) && log.style.place === "heading" ? ` (${log.style.unit})` : "";
  const name = isSight(of) ? SIGHTS[of].heading : of === "twist" ? "Twist deg" : PARTS[of.split(".")[0]].register;
  const dates = d.pick(YEARS);
  const way = d.pick([
    (date) => `${name} ${date}${unit}`,
    (date) => `${date} ${lower(name)}${unit}`,
    (date) => `${name}${unit} ${date}`,
    (date) => `${name} (${date})${unit}`,
  ]);
  const newest = way(dates.at(-1));
  log.columns[at] = { of: "dated", heading: newest, plain: newest };
  const older = dates.slice(0, -1).map((date) => addColumn(log, way(date), (row) => (of in row.is ? row.cells[at] : blankText(log))));
  for (const row of log.rows) {
    row.plain[at] = row.cells[at];
    if (!(of in row.is)) continue;
    const pins = [at, ...older].map((place) => pin(place, "both"));
    const kind = d.pick(["newest blank", "newest bad", "older bad", "all good"]);
    const worst = badCell(log, row, of, d);
    if (kind === "newest blank" && needed(row.kind, of)) {
      row.cells[at] = blankText(log);
      tell(row, "out", `dated columns of ${isSight(of) ? "a sight" : of}: newest blank`, ...pins);
    } else if (kind === "newest bad" && worst !== null) {
      row.cells[at] = worst;
      tell(row, "out", `dated columns of ${isSight(of) ? "a sight" : of}: newest bad`, ...pins);
    } else if (kind === "older bad" && worst !== null) {
      row.cells[older[0]] = worst;
      tell(row, "out", `dated columns of ${isSight(of) ? "a sight" : of}: older one bad, no repair recorded`, ...pins);
    } else tell(row, "free", "dated columns, good");
  }
  if (d.chance(0.5)) swap(log, at, older[0]);
}
function badCell(log, row, of, d) {
  if (isSight(of)) return SIGHTS[of].sense === "fault" ? "yes" : "no";
  if (of === "twist") return 6;
  const fit = KINDS[row.kind].sizes.find((size) => `${size.of}.now` === of);
  return fit
    ? written(
        changed(row.is[`${fit.of}.asNew`], Math.min(0.8, fit.limit.past + 0.1), fit.change, log.style.unit, true),
        log.style.unit,
        log.style.place,
        d,
      )
    : null;
}
/** A nick that leaves less than its limit, in a column that not every log has. */
function nicked(log, d) {
  const able = log.rows.filter((row) => "section.asNew" in row.is);
  if (able.length === 0) return;
  const unit = log.style.place === "heading" ? ` (${log.style.unit})` : "";
  const at = addColumn(log, d.pick(SINGLES.nick) + unit, () => blankText(log), { of: "nick" });
  for (const row of able) {
    if (d.chance(0.4)) continue;
    const depth = changed(row.is["section.asNew"] * (LIMITS.nick.past + d.between(0, 0.2, 4)), 0, "growth", log.style.unit, true);
    row.cells[at] = written(depth, log.style.unit, log.style.place, d);
    tell(row, "out", "a nick deeper than any grinding allowance", pin(at, "both"), pin(placeOf(log, "section.asNew")));
  }
}
/** A gauge so coarse that a clean reading cannot be told from the limit. */
function coarseGauge(log, d) {
  const unit = log.style.place === "heading" ? ` (${log.style.unit})` : "";
  const at = addColumn(log, d.pick(SINGLES.gauge) + unit, () => blankText(log), { of: "gauge" });
  for (const row of log.rows) {
    const [part] = KINDS[row.kind].sizes;
    if (part === undefined || d.chance(0.4)) continue;
    const from = row.is[`${part.of}.asNew`],
      now = row.is[`${part.of}.now`];
    // As far as the reading is from the limit, and more.
    const gap = Math.abs((part.change === "growth" ? from * (1 + part.limit.past) : from * (1 - part.limit.past)) - now);
    row.cells[at] = written(changed(gap * d.between(1.6, 4, 3), 0, "growth", log.style.unit, true), log.style.unit, log.style.place, d);
    tell(
      row,
      "out",
      "a gauge too coarse for the limit",
      pin(at, "both"),
      pin(placeOf(log, `${part.of}.now`)),
      pin(placeOf(log, `${part.of}.asNew`)),
    );
  }
}
/** One part of an assembly is stretched: all others were overloaded with it and stay out until they were looked at after that day. */
function assembled(log, d) {
  if (log.rows.length < 3) return;
  const at = addColumn(log, d.pick(["Assembly", "Set", "Assembly no."]), () => blankText(log), { of: "assembly" });
  const stretched = log.rows.find(({ is }) => "throat.now" in is || "deformed" in is);
  if (stretched === undefined) return;
  const of = "throat.now" in stretched.is ? "throat.now" : "deformed";
  const place = placeOf(log, of);
  if (place < 0 || (of === "deformed" && log.columns[place].form !== "plain")) return;
  stretched.cells[place] =
    of === "deformed"
      ? "stretched"
      : written(
          changed(stretched.is["throat.asNew"], LIMITS.throat.past + 0.05, "growth", log.style.unit, true),
          log.style.unit,
          log.style.place,
          d,
        );
  const name = d.pick(["A1", "set 4", "Bridle 12"]);
  for (const row of log.rows) {
    if (row !== stretched && d.chance(0.4)) continue;
    row.cells[at] = name;
    tell(row, "out", row === stretched ? "a stretched part" : "beside a stretched part of its assembly", pin(at, "both"));
  }
}
/** A needed column that the log does not have. */
function lacking(log, d) {
  const able = log.columns.flatMap(({ of }, at) => (log.rows.some((row) => of in row.is && needed(row.kind, of)) ? [at] : []));
  const at = d.pick(able);
  const { of } = log.columns[at];
  log.columns[at] = { of: "aside", heading: "Row no.", plain: "Row no.", optional: true };
  log.rows.forEach((row, i) => {
    row.cells[at] = i + 1;
    row.plain[at] = i + 1;
    if (of in row.is && needed(row.kind, of)) tell(row, "out", `needed column lacking: ${of}`);
  });
}
/** A heading with a slip of the pen: good cells may be asked about, bad ones never pass. */
function slip(log, d) {
  const able = sightsOf(log);
  if (able.length === 0) return;
  const at = d.pick(able);
  const column = log.columns[at];
  const { of } = column;
  const name = SIGHTS[of].heading;
  const place = d.whole(1, name.length - 2);
  const heading = d.pick([
    name.slice(0, place) + name.slice(place + 1),
    name.slice(0, place) + name[place + 1] + name[place] + name.slice(place + 2),
  ]);
  log.columns[at] = { ...column, heading, plain: heading };
  for (const row of log.rows) {
    if (!(of in row.is)) continue;
    row.cells[at] = SIGHTS[of].sense === "fault" ? "none" : "yes";
    row.plain[at] = row.cells[at];
    if (d.chance(0.6)) {
      row.cells[at] = d.pick([SIGHTS[of].sense === "fault" ? "yes" : "no", d.pick(SIGHTS[of].bad)]);
      tell(row, "out", `misspelt heading, bad answer: ${of}`, pin(at, "both"));
    } else tell(row, "free", "misspelt heading");
  }
}
/** Plants in a whole log, by weight. */
export const LOG_PLANTS = [
  [6, fitness],
  [5, result],
  [4, remarks],
  [2, tagged],
  [4, strange],
  [4, state],
  [6, notToday],
  [5, secondSight],
  [5, secondSize],
  [4, dated],
  [2, nicked],
  [2, coarseGauge],
  [2, assembled],
  [2, lacking],
  [2, slip],
];
