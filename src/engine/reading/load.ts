/** Loads and ratings as people write them: a mass with its unit, read exactly or refused. */
import { exact, type Exact, fromCell } from "../numbers/exact";
import type { CellValue } from "./cell-value";
import type { Read } from "./read";
import { ERROR_TEXT, isDateCell, tidy } from "./text";

export const LOAD_UNITS = ["kg", "t", "lb", "short ton"] as const;
/** t is the tonne of 1,000 kg, a short ton is 2,000 lb. */
export type LoadUnit = (typeof LOAD_UNITS)[number];
export interface Load {
  readonly value: Exact;
  readonly unit: LoadUnit;
}
/** 1 lb = 0.45359237 kg exactly (international pound). */
const POUND = exact("0.45359237");
const IN_KG: Readonly<Record<LoadUnit, Exact>> = { kg: exact(1), t: exact(1000), lb: POUND, "short ton": POUND.mul(2000) };
const UNIT_WORDS: ReadonlyMap<string, LoadUnit> = new Map(
  (
    [
      ["kg", ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"]],
      ["t", ["t", "te", "tonne", "tonnes", "metric ton", "metric tons"]],
      ["lb", ["lb", "lbs", "pound", "pounds"]],
      ["short ton", ["short ton", "short tons", "us short ton", "us short tons"]],
    ] as const
  ).flatMap(([unit, words]) => words.map((word) => [word, unit] as const)),
);
const FORCES = /^(k|da|m)?n$|^(kg|lb|ton)f$|newtons?$/i;
const NOTHING = /^(n\/?a|n\.a\.?|na|nil|none|unknown|not (known|marked|legible)|illegible|tbd|tba|-+|—|–|\/)$/i;
const missing = (text = ""): Read<never> => ({ kind: "missing", text });
const refused = (text: string, why: string): Read<never> => ({ kind: "refused", text, why });
/** Unit that a word names, or why it names none. */
export function loadUnit(word: string): LoadUnit | { readonly why: string } {
  const name = tidy(word).replace(/\.$/, "");
  if (name === "T") return { why: "T can mean tonnes or tons of 2,000 lb; type t, tonne or short ton" };
  const known = UNIT_WORDS.get(name.toLowerCase());
  if (known !== undefined) return known;
  if (/^tons?$/i.test(name)) return { why: "a ton can be 2,000 lb, 2,240 lb or 1,000 kg; type short ton or tonne" };
  if (FORCES.test(name)) return { why: `a rated load is a mass and ${name} is a force; type it in kg, t or lb` };
  return { why: `"${name}" is no unit of load that is read here; type kg, t, lb or short ton` };
}
/** Words of other units, which make a heading with a second unit as doubtful as two of those that are read. */
const OTHER_UNIT = /^(tons?|tonsf?|mt|m\.?tons?|cwts?|hundredweights?|kips?|stones?|quintals?)$/i;
/** Units that a heading names, each once; one that is not read here stands as its word. */
function unitsIn(heading: string): ReadonlySet<string> {
  const words = tidy(heading).match(/(?:short|metric)[ -]tons?(?![a-z])|[a-z]+/gi) ?? [];
  return new Set(
    words.flatMap((word) => {
      const unit = loadUnit(word.replace("-", " "));
      if (typeof unit === "string") return [unit];
      return word === "T" || OTHER_UNIT.test(word) || FORCES.test(word) ? [word.toLowerCase() + " unread"] : [];
    }),
  );
}
/** Unit at the end of a heading, such as "WLL (t)" or "SWL kg"; null when it names none, or two. */
export function loadUnitOfHeading(heading: string): LoadUnit | null {
  if (unitsIn(heading).size > 1) return null;
  const last = /(?:^|[\s([,/])((?:short |metric )?[a-z]+\.?)\s*[)\]]?$/i.exec(tidy(heading))?.[1];
  const unit = last === undefined ? null : loadUnit(last);
  return typeof unit === "string" ? unit : null;
}
/**
 * A load with its unit. `assume` is the unit of a bare figure, where a heading or a choice names it; without one a bare
 * figure is refused. "t" is a tonne; "ton" alone is refused, because it means three different masses.
 */
export function readLoad(cell: CellValue, assume: LoadUnit | null = null): Read<Load> {
  if (cell === null || cell === undefined || cell === "" || cell === 0) return missing();
  if (isDateCell(cell)) return refused("a date", "this cell is a date; type the load with its unit and format the column as text");
  if (typeof cell === "boolean") return refused(cell ? "TRUE" : "FALSE", "it is a yes or no, not a load");
  if (typeof cell === "number") {
    const shown = String(Number(cell.toPrecision(15)));
    if (!Number.isFinite(cell)) return refused(shown, "it is not a number");
    if (cell < 0) return refused(shown, "a load cannot be negative");
    if (assume === null) return refused(shown, NO_UNIT);
    const value = fromCell(cell);
    return value.equals(0) ? missing(shown) : { kind: "value", value: { value, unit: assume }, text: `${shown} ${assume}` };
  }
  return readText(tidy(cell), assume);
}
const NO_UNIT = "it has no unit; type it behind the number, such as 3.25 t or 4,750 lb";
function readText(text: string, assume: LoadUnit | null): Read<Load> {
  if (text === "" || NOTHING.test(text)) return missing(text);
  if (ERROR_TEXT.test(text)) return refused(text, "the cell shows an error; put the load there");
  if (text.startsWith("-")) return refused(text, "a load cannot be negative");
  const parts = /^(?:(?:wll|swl)[: ] ?)?(\d+(?: ?- ?| )\d+ ?\/ ?\d+|\d+ ?\/ ?\d+|\d{1,3}(?: \d{3})+|\d[\d.,]*|\.\d+) ?([a-z].*)?$/i.exec(
    text,
  );
  if (!parts) return refused(text, "it is not a plain load with its unit, such as 3.25 t");
  const [, figure = "", word] = parts;
  const unit = word === undefined ? assume : loadUnit(word);
  if (unit === null) return refused(text, NO_UNIT);
  if (typeof unit !== "string") return refused(text, unit.why);
  const value = readFigure(figure, unit);
  if ("why" in value) return refused(text, value.why);
  if (value.figure.equals(0)) return missing(text);
  return { kind: "value", value: { value: value.figure, unit }, text: word === undefined ? `${text} ${unit}` : text };
}
type FigureOrWhy = { readonly figure: Exact } | { readonly why: string };
function readFigure(text: string, unit: LoadUnit): FigureOrWhy {
  const fraction = /^(?:(\d+)(?: ?- ?| ))?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (fraction) {
    const [, whole = "0", top = "", bottom = ""] = fraction;
    if (Number(bottom) === 0) return { why: "it divides by zero" };
    if (Number(top) === 0) return { why: "a fraction of 0 is no load" };
    if (Number(top) >= Number(bottom)) return { why: `${top}/${bottom} is not a proper fraction` };
    return { figure: exact(whole).add(exact(`${top}/${bottom}`)) };
  }
  if (text.includes(" ")) return { figure: exact(text.replace(/ /g, "")) };
  const plain = plainDecimal(text.startsWith(".") ? `0${text}` : text, unit);
  return typeof plain === "string" ? { figure: exact(plain) } : plain;
}
/**
 * Comma and point. Gear is not rated to the thousandth of a pound or of a kilogram, nor in thousands of tonnes: 4,750 lb is
 * four thousand. Where both readings could be meant, the figure is refused.
 */
function plainDecimal(text: string, unit: LoadUnit): string | { readonly why: string } {
  if (/^\d+$/.test(text)) return text;
  const small = unit === "kg" || unit === "lb";
  const three = /^([1-9]\d{0,2})([.,])(\d{3})$/.exec(text);
  if (three) {
    const [, whole = "", sign = "", part = ""] = three;
    if (sign === ",")
      return small ? whole + part : { why: `it could be ${whole}.${part} or ${whole}${part} ${unit}; type it without the comma` };
    return small
      ? { why: `it could be ${whole}${part} or ${String(Number(`${whole}.${part}`))} ${unit}; type it without the point` }
      : `${whole}.${part}`;
  }
  if (/^\d+[.,]\d+$/.test(text)) return text.replace(",", ".");
  if (/^\d{1,3}(,\d{3})+(\.\d+)?$/.test(text)) return text.replace(/,/g, "");
  if (/^\d{1,3}(\.\d{3})+,\d+$/.test(text)) return text.replace(/\./g, "").replace(",", ".");
  return { why: "its commas and points do not make one number" };
}
export function inKg(load: Load): Exact {
  return load.value.mul(IN_KG[load.unit]);
}
export function fromKg(kg: Exact, unit: LoadUnit): Load {
  return { value: kg.div(IN_KG[unit]), unit };
}
const DECIMALS: Readonly<Record<LoadUnit, number>> = { kg: 1, t: 3, lb: 0, "short ton": 3 };
/** A load as text. What is needed is rounded up and what is there is rounded down, so that nothing looks enough that is not. */
export function showLoad(load: Load, round: "up" | "down"): string {
  const places = DECIMALS[load.unit];
  const shown = (round === "up" ? load.value.ceil(places) : load.value.floor(places)).toString();
  const [whole = "", part] = shown.split(".");
  return `${whole.replace(/\B(?=(\d{3})+$)/g, ",")}${part === undefined ? "" : `.${part}`} ${load.unit}`;
}
