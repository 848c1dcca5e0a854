/**
 * Limits that a house sets for itself, read from a sheet of its own. They only tighten, since the strictest finding
 * decides; a row that names the maker's written figure takes the place of the published limits for that check. A row
 * that cannot be read is refused by name, and then no item of its kind is judged.
 */
import type { Check, GearKind } from "../gear/kind";
import { CHECKED } from "../gear/shared/records";
import { matchKind } from "../names/gear-name";
import { exact, type Exact, toNumber, within } from "../numbers/exact";
import { namedUnit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readText, tidy } from "../reading/text";
import type { Criterion, Limit } from "../rules/criterion";
import type { HouseLimit, HouseLimits, RefusedRow } from "../rules/house-limits";

export const HOUSE_HEADINGS = ["Gear", "Check", "Comes out", "Limit", "Unit", "Source", "Maker's figure"] as const;
/** The heading of Limit on a new sheet: a manual gives sizes. Older sheets say Limit. */
export const LIMIT_HEADING = "Limit (the change allowed, not the size)";
type Heading = (typeof HOUSE_HEADINGS)[number];
const isHeading = (cell: CellValue, heading: Heading): boolean =>
  [heading, ...(heading === "Limit" ? [LIMIT_HEADING] : [])].some((h) => h.toLowerCase() === readText(cell).toLowerCase());
/** Why a text names no rule sets; null when it does. */
export type ReadRules = (text: string) => string | null;
type Row = Readonly<Record<Heading, CellValue>>;
const PLAIN = /^\d+(\.\d+)?$/;
/** The house limits on a grid: a line "Rules in force" above, a row of headings, a row for each limit. */
export function readHouse(grid: readonly (readonly CellValue[])[], readRules: ReadRules): HouseLimits {
  const at = grid.findIndex((line) => (["Gear", "Check", "Limit"] as const).every((h) => line.some((cell) => isHeading(cell, h))));
  const { rules, refused } = rulesAbove(grid.slice(0, Math.max(0, at)), readRules);
  if (at < 0)
    return {
      criteria: new Map(),
      replaced: new Set(),
      rules,
      refused: [
        {
          kind: null,
          sentence: `House limits: no heading row with ${HOUSE_HEADINGS.slice(0, 4).join(", ")} was found, so none of them can be applied.`,
        },
      ],
    };
  const columns = HOUSE_HEADINGS.map((h) => (grid[at] ?? []).findIndex((cell) => isHeading(cell, h)));
  const criteria = new Map<string, Criterion[]>();
  const replaced = new Set<string>();
  grid.slice(at + 1).forEach((line, index) => {
    const row = Object.fromEntries(HOUSE_HEADINGS.map((h, i) => [h, line[columns[i] ?? -1]])) as Row;
    if (HOUSE_HEADINGS.every((h) => readText(row[h]) === "")) return;
    const read = readRow(row);
    const where = `${rowName(at + index + 1)} (${readText(row.Gear) || "no gear"}, ${readText(row.Check) || "no check"})`;
    if ("why" in read)
      return void refused.push({
        kind: read.kind,
        sentence: `${where}: ${read.why}. Until the row is put right, ${read.kind === null ? "every item" : `every ${read.kind}`} is NO VERDICT.`,
      });
    const { kind, check, limit, source, maker } = read;
    if (maker) replaced.add(`${kind.id}/${check.name}`);
    const placed: HouseLimit = { ...limit, row: where, most: mostOf(check) };
    const record: Criterion = {
      id: `${kind.id.replaceAll(" ", "-")}.${check.name.replaceAll(" ", "-")}.house-${String(at + index + 2)}`,
      check: check.name,
      basis: "house",
      limit: placed,
      beyond: "REMOVE",
      source: { document: "house", clause: `${source}${maker ? " (maker's written figure)" : ""}` },
      status: "read",
      checked: CHECKED,
    };
    criteria.set(kind.id, [...(criteria.get(kind.id) ?? []), record]);
  });
  return { criteria, replaced, refused, rules };
}
const rowName = (index: number): string => `House limits, row ${String(index + 1)}`;
/** The line of rule sets among those above the headings. One that cannot be understood refuses everything: the default could be looser. */
function rulesAbove(
  lines: readonly (readonly CellValue[])[],
  readRules: ReadRules,
): { readonly rules: string; readonly refused: RefusedRow[] } {
  const read = lines.map((line) =>
    rulesLine(
      line.map(readText).filter((text) => text !== ""),
      readRules,
    ),
  );
  const [rules = "", second] = read.flatMap((line) => line?.rules ?? []);
  const refused = read.flatMap((line, index) => {
    const why =
      line === null
        ? null
        : second !== undefined && line.rules !== undefined
          ? "Rules in force stands in more than one line; keep one"
          : line.why;
    return why === null ? [] : [{ kind: null, sentence: `${rowName(index)}: ${why}. Nothing is judged until the line is put right.` }];
  });
  return { rules, refused };
}
/** The rule sets of a line, or why they are not understood; null where the line is about something else. */
function rulesLine(cells: readonly string[], readRules: ReadRules): { readonly rules?: string; readonly why: string | null } | null {
  const [first = "", ...others] = cells;
  const named = /^rules in force ?(?::(.*))?$/i.exec(first);
  if (named !== null) {
    const rules = [(named[1] ?? "").trim(), ...others].filter((text) => text !== "").join(",");
    const why = readRules(rules);
    return { rules, why: why === null ? null : `${why.charAt(0).toLowerCase()}${why.slice(1).replace(/\.$/, "")}` };
  }
  if (!looksLikeRules(cells, readRules)) return null;
  return {
    why: `"${cells.join(" ")}" looks like a line of rule sets and is not understood; write Rules in force in its first cell and the rule sets in the next`,
  };
}
/** Words that speak of rule sets, whatever stands behind them. */
const RULES = /\b(?:rules?|rule ?sets?|bas[ei]s)\b|rules?[- ]?in[- ]?force|\bin force\b(?! (?:from|since|until|as|on|to)\b)/i;
/** Words that may, where rule sets stand behind them. */
const JUDGED = /\b(?:judg\w*|appl\w*|us(?:e|es|ed|ing)|under|by|sets?|criteria|limits?|standards?|force)\b/i;
/** Longer than this is a note. */
const WORDS = 8;
function looksLikeRules(cells: readonly string[], readRules: ReadRules): boolean {
  if (cells.some((cell, index) => speaksOfRules(cell, cells.slice(index + 1), readRules))) return true;
  const [alone = "", more] = cells;
  if (more !== undefined || alone.split(" ").length > WORDS) return false;
  // A cell by itself: rule sets, or one of them among words of rule sets. "House rules" is a title.
  const sets = alone
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== "" && word !== "house" && readRules(word) === null);
  return sets.length > 0 && (RULES.test(alone) || readRules(alone) === null);
}
/** Whether a cell names what stands behind it, in itself or in the next cells, as rule sets. */
function speaksOfRules(cell: string, others: readonly string[], readRules: ReadRules): boolean {
  if (/^rules? ?in ?force\b/i.test(cell)) return true;
  const [label = "", ...behind] = cell.split(/[:=]/);
  const value = [behind.join(" ").trim(), ...others].filter((text) => text !== "").join(",");
  if (value === "") return false;
  return readRules(value) === null ? RULES.test(label) || JUDGED.test(label) : RULES.test(label) && cell.split(" ").length <= WORDS;
}
type ReadRow =
  | { readonly kind: GearKind; readonly check: Check; readonly limit: Limit; readonly source: string; readonly maker: boolean }
  | { readonly kind: string | null; readonly why: string };
function readRow(row: Row): ReadRow {
  const match = matchKind(readText(row.Gear));
  if (!match.ok) return { kind: null, why: match.why };
  const { kind } = match;
  const name = readText(row.Check).toLowerCase();
  const check = kind.checks.find((c) => c.name === name);
  if (!check)
    return {
      kind: kind.id,
      why: `"${readText(row.Check)}" is no check of a ${kind.id}; its checks with a figure are ${kind.checks
        .filter(hasFigure)
        .map((c) => c.name)
        .join(", ")}`,
    };
  if (!hasFigure(check)) return { kind: kind.id, why: `${check.name} is looked at and has no figure to limit` };
  const word = readText(row["Comes out"]).toLowerCase();
  if (word !== "above" && word !== "from")
    return { kind: kind.id, why: `"Comes out" must say above (the limit itself stays in) or from (the limit itself comes out)` };
  const source = readText(row.Source);
  if (source === "") return { kind: kind.id, why: "it names no source" };
  const maker = /^(yes|y|true|maker)$/i.test(readText(row["Maker's figure"]));
  const limit = readLimit(row.Limit, row.Unit, word, check);
  return "why" in limit ? { kind: kind.id, why: limit.why } : { kind, check, limit, source, maker };
}
const hasFigure = (check: Check): boolean => !["seen", "nick", "enough", "category", "maker"].includes(check.kind);
function readLimit(cell: CellValue, unitCell: CellValue, word: "above" | "from", check: Check): Limit | { readonly why: string } {
  const text = tidy(readText(cell));
  const figure = text.replace(/ ?%$/, "").trim();
  if (!PLAIN.test(figure) && !/^(\d+ )?\d+\/0*[1-9]\d*$/.test(figure)) return { why: `the limit "${text}" is not a figure` };
  const unit = text.endsWith("%") ? "%" : readText(unitCell).trim();
  switch (check.kind) {
    case "angle":
      return /^(deg|degrees?|°|)$/i.test(unit) && PLAIN.test(figure)
        ? { word, degrees: figure }
        : { why: "an angle is limited in degrees" };
    case "count":
      return /^(wires?|count|number|)$/i.test(unit) && /^\d+$/.test(figure)
        ? { word, count: Number(figure) }
        : { why: "a count is limited by a whole number" };
    case "gap":
      return exact(figure).equals(0) ? { why: "a clearance of 0 is no limit" } : lengthLimit(figure, unit, word);
    default:
      return unit === "%" ? shareLimit(figure, text, word, check) : lengthLimit(figure, unit, word);
  }
}
/** The largest share of its size that an opening may grow, or a section wear, by any limit of a house. */
function mostOf(check: Check): Exact {
  return exact(check.kind === "growth" ? "0.20" : "0.25");
}
function shareLimit(figure: string, text: string, word: "above" | "from", check: Check): Limit | { readonly why: string } {
  const percent = exact(figure);
  const most = mostOf(check).mul(100);
  if (!text.endsWith("%") && within(percent, null, exact(1)))
    return { why: `${figure} could be ${figure} % or ${String(toNumber(percent.mul(100)))} %; write the percent sign behind it` };
  if (!within(percent, null, most))
    return { why: `${figure} % is no limit for ${check.name}, as it is more than ${String(toNumber(most))} %; ask a qualified person` };
  return { word, share: percent.div(100).toFraction() };
}
function lengthLimit(figure: string, unit: string, word: "above" | "from"): Limit | { readonly why: string } {
  const named = namedUnit(unit);
  if (named === null) return { why: unit === "" ? "it has no unit; write in, mm or %" : `"${unit}" is no unit; write in, mm or %` };
  return { word, length: exact(figure).mul(named.times).toFraction(), unit: named.unit };
}
