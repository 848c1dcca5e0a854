/** A round: what has to be looked at and measured on which items, in long form. Pure; the sheet is made from it. */
import { inUse, isFor, type Situation } from "../check/in-force";
import { field, type FieldId } from "../columns";
import { GEAR } from "../gear/index";
import type { GearKind } from "../gear/kind";
import { readVariant } from "../item/variant";
import { type Cells, cellsOf } from "../log/cells";
import type { HeadingMatch } from "../log/match-headings";
import { withUnit } from "../log/merge-columns";
import { showDate } from "../numbers/calendar";
import type { Unit } from "../numbers/lengths";
import type { CellValue } from "../reading/cell-value";
import { readDate } from "../reading/date";
import type { Length } from "../reading/length";
import { readText } from "../reading/text";
import type { ItemResult } from "../report/model";
import type { HouseLimits } from "../rules/house-limits";
import { type BasisId, inForce } from "../rules/rule-sets";
import { percent } from "../words";
import { lineComesOut } from "./comes-out";
import { type CheckLine, linesOf } from "./lines";

/** What is due, what shared an overloaded tackle, or what is missing on items without a verdict. */
export type RoundKind = "due" | "shared" | "missing";
export interface RoundRequest {
  readonly kind: RoundKind;
  readonly items: readonly ItemResult[];
  readonly headings: readonly HeadingMatch[];
  readonly basis: readonly BasisId[];
  readonly house?: HouseLimits | undefined;
  /** What the gauge of the round reads to; null where it is not known yet. */
  readonly gauge: Length | null;
}
/** "check" is to be filled; "taken" stands in the register and is not asked again; "known" says what the limits depend on. */
export interface RoundLine {
  readonly role: "check" | "taken" | "known";
  /** Column that the line fills or holds. */
  readonly now: FieldId;
  readonly asNewField: FieldId | null;
  readonly label: string;
  readonly asNew: string;
  readonly last: string;
  readonly comesOut: string;
  /** What stands in the register as it was read, to tell later whether somebody changed it meanwhile. */
  readonly was: string;
  readonly required: boolean;
}
export interface RoundItem {
  readonly id: string;
  readonly gear: string;
  readonly place: string;
  /** Day of the last inspection, as text; "" where there is none. */
  readonly inspected: string;
  /** What to know before measuring: "last 2025-12-30, 96 % used: measure carefully". */
  readonly words: string;
  readonly lines: readonly RoundLine[];
}
export interface Round {
  readonly kind: RoundKind;
  readonly items: readonly RoundItem[];
  /** Lines to fill. */
  readonly checks: number;
  /** Items that were asked for and are not in it, each with why. */
  readonly leftOut: readonly { readonly id: string; readonly why: string }[];
}
/** Items that a kind of round is about. */
export function itemsFor(kind: RoundKind, items: readonly ItemResult[]): readonly ItemResult[] {
  switch (kind) {
    case "due":
      return items.filter(({ dueState }) => dueState !== "CURRENT");
    case "shared":
      return items.filter(({ verdict }) => verdict.findings.some((found) => found.why === "overload"));
    default:
      return items.filter(({ verdict }) => verdict.decision === "NO VERDICT" && verdict.lacking.length > 0);
  }
}
export function roundOf(request: RoundRequest): Round {
  const leftOut: { id: string; why: string }[] = [];
  const items: RoundItem[] = [];
  for (const item of request.items) {
    const kind = GEAR.find(({ id }) => id === item.gear);
    if (item.id === "") leftOut.push({ id: "", why: "a row without an id" });
    else if (kind === undefined) leftOut.push({ id: item.id, why: "the kind of gear is not known" });
    else if (item.tagged && request.kind === "due") leftOut.push({ id: item.id, why: "tagged out" });
    else {
      const made = itemOf(item, kind, request);
      if (made.lines.some(({ role }) => role === "check")) items.push(made);
      else leftOut.push({ id: item.id, why: "nothing to look at" });
    }
  }
  return {
    kind: request.kind,
    items,
    checks: items.reduce((sum, { lines }) => sum + lines.filter(({ role }) => role === "check").length, 0),
    leftOut,
  };
}
/** The cells of an item as its log's headings read them, and what is in force for it. */
export function situated(
  item: ItemResult,
  kind: GearKind,
  request: Pick<RoundRequest, "headings" | "basis" | "house">,
): { readonly cells: Cells; readonly situation: Situation } {
  const read = request.headings.filter((h): h is HeadingMatch & { field: FieldId } => h.field !== null);
  const units = new Map(read.flatMap(({ field: id, unit }) => (unit === null ? [] : [[id, unit] as const])));
  const cells = cellsOf(item.cells, { units, names: new Map() });
  const variant = kind.variants === undefined ? null : readVariant(kind.variants, cells, readText(item.cells.get("gear")));
  const situation: Situation = {
    kind,
    bases: inForce(request.basis),
    gauge: null,
    variant: variant?.kind === "known" ? variant.variant : null,
    house: request.house,
  };
  return { cells, situation };
}
/** Columns beside those of checks on which a verdict depends. */
const ALSO: readonly FieldId[] = ["tagged", "releasedBy", "releasedOn"];
function itemOf(item: ItemResult, kind: GearKind, request: RoundRequest): RoundItem {
  const { cells, situation } = situated(item, kind, request);
  const asked = linesOf(kind).filter(
    (line) =>
      inUse(line.check, situation.bases) &&
      isFor(line.check, situation.variant) &&
      (isRequired(line) || recorded(item, line.now) || (line.asNew !== null && line.check.kind !== "least" && recorded(item, line.asNew))),
  );
  const lacking = new Set(item.verdict.lacking);
  const lines = asked.map((line): RoundLine => {
    const open = request.kind !== "missing" || lacking.has(line.now) || (line.asNew !== null && lacking.has(line.asNew));
    return lineOf(line, open ? "check" : "taken", { item, cells, situation, gauge: request.gauge });
  });
  return {
    id: item.id,
    gear: item.gearText,
    place: item.place,
    inspected: cellText("inspected", item.cells.get("inspected")),
    words: wordsOf(item),
    lines: [...lines, ...knownLines(item, kind, asked)],
  };
}
/** The second direction of a section is measured where it was before. */
const isRequired = ({ check, now }: CheckLine): boolean =>
  check.required && (check.kind === "nick" ? now === check.measured : !("measured" in check) || now === check.measured);
const recorded = (item: ItemResult, id: FieldId): boolean => readText(item.cells.get(id)) !== "" || item.cells.get(id) === 0;
/** Whether wear of a section is measured across as well, where the stricter figure of two directions counts. */
export const isTwoWays = ({ check }: CheckLine, item: ItemResult): boolean =>
  check.kind === "loss" && [check.acrossMeasured, check.acrossOriginal].some((id) => id !== undefined && recorded(item, id));
interface LineContext {
  readonly item: ItemResult;
  readonly cells: Cells;
  readonly situation: Situation;
  readonly gauge: Length | null;
}
function lineOf(line: CheckLine, role: RoundLine["role"], { item, cells, situation, gauge }: LineContext): RoundLine {
  const asNew = line.asNew === null ? "" : sizeText(cells, line.asNew) || ownOriginal(cells, line);
  const twoWays = isTwoWays(line, item);
  const across = line.check.kind === "loss" && line.now === line.check.acrossMeasured;
  const bare = asNew === "" && field(line.now).type === "length" ? cells.unit(line.now) : null;
  return {
    role,
    now: line.now,
    asNewField: line.asNew,
    label: bare === null ? line.label : `${line.label} (${bare})`,
    asNew,
    last: sizeText(cells, line.now),
    comesOut: lineComesOut(across ? line : { ...line, asNew: asNewOf(cells, line) }, cells, situation, gauge, twoWays),
    was: cellText(line.now, item.cells.get(line.now)),
    required: isRequired(line),
  };
}
/** The as-new size that counts: the line's own, else the one that stands in for it. */
function asNewOf(cells: Cells, { asNew, check }: CheckLine): FieldId | null {
  return asNew !== null && check.kind === "loss" && check.ownOriginal === asNew && readText(cells.value(asNew)) === ""
    ? check.original
    : asNew;
}
const ownOriginal = (cells: Cells, line: CheckLine): string => {
  const from = asNewOf(cells, line);
  return from === null || from === line.asNew ? "" : sizeText(cells, from);
};
/** What a register cell holds, as text that is the same whenever it is read: a date is 2026-03-31 whatever it was kept as. */
export function cellText(id: FieldId, cell: CellValue): string {
  const date = field(id).type === "date" ? readDate(cell) : null;
  return date?.kind === "value" ? date.text : cell === 0 ? "0" : readText(cell);
}
/** A size with its unit, so that a bare reading beside it takes it. */
function sizeText(cells: Cells, id: FieldId): string {
  const cell = cells.value(id);
  const unit: Unit | null = field(id).type === "length" || id === "size" ? cells.unit(id) : null;
  return cellText(id, unit === null || cellText(id, cell) === "" ? cell : withUnit(cell, unit));
}
/** What the limits depend on and no line asks for: construction, rope category, a tag that stands. */
function knownLines(item: ItemResult, kind: GearKind, asked: readonly CheckLine[]): readonly RoundLine[] {
  const fields: FieldId[] = [...(kind.variants === undefined ? [] : [kind.variants.field]), ...ALSO];
  for (const { check } of asked) {
    if (check.kind === "category") fields.push(check.category, check.lay, check.layers);
    if (check.kind === "enough" && check.inProportionTo !== undefined) fields.push(check.inProportionTo);
  }
  if (kind.asNew !== undefined) fields.push("asNewFrom", "ratedLoad");
  const filled = new Set(asked.flatMap(({ now, asNew }) => [now, asNew]));
  return [...new Set(fields)]
    .filter((id) => !filled.has(id) && recorded(item, id) && !(id === "ratedLoad" && !recorded(item, "asNewFrom")))
    .map((id) => {
      const text = cellText(id, item.cells.get(id));
      return {
        role: "known",
        now: id,
        asNewField: null,
        label: field(id).heading,
        asNew: text,
        last: "",
        comesOut: "",
        was: text,
        required: false,
      };
    });
}
function wordsOf({ cells, verdict, tagged, dueState, nextDue }: ItemResult): string {
  const last = readDate(cells.get("inspected"));
  const parts = [last.kind === "value" ? `last ${last.text}` : "no date of the last inspection"];
  if (dueState === "OVERDUE" && nextDue !== null) parts.push(`overdue since ${showDate(nextDue)}`);
  if (tagged) parts.push("tagged out");
  else if (verdict.share !== null && verdict.decision === "WATCH") parts.push(`${percent(verdict.share)} used: measure carefully`);
  else if (verdict.decision === "REMOVE" || verdict.decision === "EXAMINE") parts.push(verdict.short);
  return parts.join(", ");
}
