/**
 * Limits that a house sets for itself, read from a sheet of its own. They only tighten, since the strictest finding
 * decides; a row that names the maker's written figure takes the place of the published limits for that check. A row
 * that cannot be read is refused by name, and then no item of its kind is judged.
 */
import { CHECKED } from "./gear/common";
import { readText, tidy } from "./cell";
import { exact } from "./exact";
import type { Check, Criterion, GearKind, Limit } from "./gear/kind";
import { matchKind } from "./gear/match";
import { within } from "./judge";
import type { CellValue } from "./model";
import { namedUnit } from "./units";

export interface RefusedRow {
  /** Kind whose items are not judged because of it; null is every kind. */
  readonly kind: string | null;
  readonly sentence: string;
}

export interface HouseLimits {
  /** Criteria by gear kind. */
  readonly criteria: ReadonlyMap<string, readonly Criterion[]>;
  /** `kind/check` where a maker's written figure stands instead of the published limits. */
  readonly replaced: ReadonlySet<string>;
  readonly refused: readonly RefusedRow[];
  /** Rule sets named on the sheet, or "". */
  readonly rules: string;
}

export const HOUSE_HEADINGS = ["Gear", "Check", "Comes out", "Limit", "Unit", "Source", "Maker's figure"] as const;

type Row = Readonly<Record<(typeof HOUSE_HEADINGS)[number], CellValue>>;

const PLAIN = /^\d+(\.\d+)?$/;

/** The house limits on a grid: a line "Rules in force" above, a row of headings, a row for each limit. */
export function readHouse(grid: readonly (readonly CellValue[])[]): HouseLimits {
  const at = grid.findIndex((line) => ["Gear", "Check", "Limit"].every((h) => line.some((cell) => readText(cell).toLowerCase() === h.toLowerCase())));
  const rulesLine = grid.slice(0, Math.max(0, at)).find((line) => /^rules in force$/i.test(readText(line[0])));
  const rules = rulesLine === undefined ? "" : readText(rulesLine[1]);
  if (at < 0) return { criteria: new Map(), replaced: new Set(), rules, refused: [{ kind: null, sentence: `House limits: no heading row with ${HOUSE_HEADINGS.slice(0, 4).join(", ")} was found, so none of them can be applied.` }] };
  const columns = HOUSE_HEADINGS.map((h) => (grid[at] ?? []).findIndex((cell) => readText(cell).toLowerCase() === h.toLowerCase()));
  const criteria = new Map<string, Criterion[]>();
  const replaced = new Set<string>();
  const refused: RefusedRow[] = [];
  grid.slice(at + 1).forEach((line, index) => {
    const row = Object.fromEntries(HOUSE_HEADINGS.map((h, i) => [h, line[columns[i] ?? -1]])) as Row;
    if (HOUSE_HEADINGS.every((h) => readText(row[h]) === "")) return;
    const read = readRow(row);
    const where = `House limits, row ${String(at + index + 2)} (${readText(row.Gear) || "no gear"}, ${readText(row.Check) || "no check"})`;
    if ("why" in read) return void refused.push({ kind: read.kind, sentence: `${where}: ${read.why}. Nothing is judged by a looser limit until the row is put right.` });
    const { kind, check, limit, source, maker } = read;
    if (maker) replaced.add(`${kind.id}/${check.name}`);
    const record: Criterion = {
      id: `${kind.id.replaceAll(" ", "-")}.${check.name.replaceAll(" ", "-")}.house-${String(at + index + 2)}`, check: check.name, basis: "house", limit, beyond: "REMOVE",
      source: { document: "house", clause: `${source}${maker ? " (maker's written figure)" : ""}` }, status: "read", checked: CHECKED,
    };
    criteria.set(kind.id, [...(criteria.get(kind.id) ?? []), record]);
  });
  return { criteria, replaced, refused, rules };
}

type ReadRow = { readonly kind: GearKind; readonly check: Check; readonly limit: Limit; readonly source: string; readonly maker: boolean } | { readonly kind: string | null; readonly why: string };

function readRow(row: Row): ReadRow {
  const match = matchKind(readText(row.Gear));
  if (!match.ok) return { kind: null, why: match.why };
  const { kind } = match;
  const name = readText(row.Check).toLowerCase();
  const check = kind.checks.find((c) => c.name === name);
  if (!check) return { kind: kind.id, why: `"${readText(row.Check)}" is no check of a ${kind.id}; its checks with a figure are ${kind.checks.filter(hasFigure).map((c) => c.name).join(", ")}` };
  if (!hasFigure(check)) return { kind: kind.id, why: `${check.name} is looked at and has no figure to limit` };
  const word = readText(row["Comes out"]).toLowerCase();
  if (word !== "above" && word !== "from") return { kind: kind.id, why: `"Comes out" must say above (the limit itself stays in) or from (the limit itself comes out)` };
  const source = readText(row.Source);
  if (source === "") return { kind: kind.id, why: "it names no source" };
  const maker = /^(yes|y|true|maker)$/i.test(readText(row["Maker's figure"]));
  const limit = readLimit(row.Limit, row.Unit, word, check);
  return "why" in limit ? { kind: kind.id, why: limit.why } : { kind, check, limit, source, maker };
}

const hasFigure = (check: Check): boolean => !["seen", "nick", "enough"].includes(check.kind);

function readLimit(cell: CellValue, unitCell: CellValue, word: "above" | "from", check: Check): Limit | { readonly why: string } {
  const text = tidy(readText(cell));
  const figure = text.replace(/ ?%$/, "").trim();
  if (!PLAIN.test(figure) && !/^(\d+ )?\d+\/\d+$/.test(figure)) return { why: `the limit "${text}" is not a figure` };
  const unit = text.endsWith("%") ? "%" : readText(unitCell).trim();
  switch (check.kind) {
    case "angle": return /^(deg|degrees?|°|)$/i.test(unit) && PLAIN.test(figure) ? { word, degrees: figure } : { why: "an angle is limited in degrees" };
    case "count": return /^(wires?|count|number|)$/i.test(unit) && /^\d+$/.test(figure) ? { word, count: Number(figure) } : { why: "a count is limited by a whole number" };
    case "gap": return lengthLimit(figure, unit, word);
    default: return unit === "%" ? shareLimit(figure, text, word) : lengthLimit(figure, unit, word);
  }
}

function shareLimit(figure: string, text: string, word: "above" | "from"): Limit | { readonly why: string } {
  const percent = exact(figure);
  if (!text.endsWith("%") && within(percent, null, exact(1))) return { why: `${figure} could be ${figure} % or ${String(Number(figure) * 100)} %; write the percent sign behind it` };
  if (!within(percent, exact(0), exact(50))) return { why: `${figure} % is no limit for wear or growth` };
  return { word, share: percent.div(100).toFraction() };
}

function lengthLimit(figure: string, unit: string, word: "above" | "from"): Limit | { readonly why: string } {
  const named = namedUnit(unit);
  if (named === null) return { why: unit === "" ? "it has no unit; write in, mm or %" : `"${unit}" is no unit; write in, mm or %` };
  return { word, length: exact(figure).mul(named.times).toFraction(), unit: named.unit };
}
