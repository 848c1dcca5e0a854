/** What a cell shows: its value under its number format, as the client library's `text` and a filter's list have it. */
import type { Cell } from "./book";
import { notModelled } from "./errors";
import { showDate } from "./show-date";

export function showCell(cell: Cell | undefined): string {
  if (!cell) return "";
  if (cell.error !== undefined) return cell.error;
  const { value } = cell;
  if (value === null) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  const format = cell.format ?? "General";
  if (typeof value === "number") return showNumber(value, format);
  const textSection = sections(format)[3];
  return textSection === undefined ? value : literal(textSection).replace(/@/g, value);
}
/** A number under the General format: 11 figures, exponents for the very large and the very small. */
export function showGeneral(value: number): string {
  const size = Math.abs(value);
  if (size !== 0 && (size >= 1e11 || size < 1e-9)) {
    const [mantissa = "", exponent = ""] = value.toExponential(5).split("e");
    const sign = exponent.startsWith("-") ? "-" : "+";
    return `${String(Number(mantissa))}E${sign}${exponent.replace(/[+-]/, "").padStart(2, "0")}`;
  }
  const whole = Math.max(1, Math.floor(size).toString().length);
  return String(Number(value.toFixed(Math.max(0, 10 - whole))));
}
function sections(format: string): string[] {
  return format.match(/(?:"[^"]*"|\\.|[^;"\\])+/g) ?? [];
}
/** Drops colours, conditions on locale, padding; takes quoted text and escapes as they are. */
function literal(section: string): string {
  return section
    .replace(/\[\$([^\-\]]*)[^\]]*\]/g, "$1")
    .replace(/\[[^\]hms]+\]/gi, "")
    .replace(/_./g, " ")
    .replace(/\*./g, "")
    .replace(/\\(.)/g, "$1")
    .replace(/"([^"]*)"/g, "$1");
}
function showNumber(value: number, format: string): string {
  const parts = sections(format);
  const section = (value < 0 ? parts[1] : value === 0 ? parts[2] : undefined) ?? parts[0] ?? "General";
  // A section of its own for negative numbers says itself how the sign looks.
  const ownSign = value < 0 && parts[1] !== undefined;
  const size = ownSign ? Math.abs(value) : value;
  const bare = section.replace(/"[^"]*"|\\.|\[[^\]hms]*\]/gi, "");
  if (/general/i.test(bare)) return literal(section).replace(/general/i, showGeneral(size));
  if (/[dmyhs]/i.test(bare)) return showDate(size, section);
  if (bare.includes("@")) return literal(section).replace(/@/g, showGeneral(size));
  if (/[?#0]\s*\/\s*[?#\d]/.test(bare)) return showFraction(size, bare);
  if (!/[0#?]/.test(bare)) return literal(section);
  return showDigits(size, section);
}
function showDigits(value: number, section: string): string {
  // Digits of one number may be parted by quoted text or padding in front and behind only.
  const spot = /[0#?](?:[0#?,.]*[0#?,.])?(?:E[+-]0+)?/i.exec(maskLiterals(section));
  if (!spot) throw notModelled(`number format ${section}`);
  const pattern = spot[0];
  const before = literal(section.slice(0, spot.index)),
    after = literal(section.slice(spot.index + pattern.length));
  const percent = (maskLiterals(section).match(/%/g) ?? []).length;
  let size = Math.abs(value) * 100 ** percent;
  const [whole = "", rest = ""] = pattern.replace(/E.*$/i, "").split(".");
  const thousands = /,+$/.exec(rest === "" ? whole : rest)?.[0].length ?? 0;
  size /= 1000 ** thousands;
  const places = rest.replace(/,/g, "").length,
    needed = rest.replace(/[^0]/g, "").length;
  const exponent = /E[+-]0+$/i.test(pattern);
  let digits = exponent ? scientific(size, places) : fixed(size, places, needed);
  if (!exponent) {
    const least = whole.replace(/[^0]/g, "").length;
    const [wholeDigits = "", decimals] = digits.split(".");
    let padded = wholeDigits === "0" && least === 0 ? "" : wholeDigits.padStart(least, "0");
    if (/,[#0?]/.test(whole)) padded = padded.replace(/\B(?=(\d{3})+(?!\d))/g, ",");
    digits = decimals === undefined ? padded : `${padded}.${decimals}`;
  }
  const shown = before + digits + after;
  return value < 0 && /[1-9]/.test(digits) ? `-${shown}` : shown;
}
function maskLiterals(section: string): string {
  return section.replace(/"[^"]*"|\\.|_.|\*.|\[[^\]]*\]/g, (found) => "\u0000".repeat(found.length));
}
function fixed(size: number, places: number, needed: number): string {
  // Rounded as written in decimals (half away from zero), not as the binary fraction would.
  const rounded = Number(`${String(Math.round(Number(`${size.toPrecision(15)}e${String(places)}`)))}e-${String(places)}`);
  let text = (Number.isFinite(rounded) ? rounded : size).toFixed(places);
  for (let spare = places - needed; spare > 0 && text.includes(".") && text.endsWith("0"); spare -= 1) text = text.slice(0, -1);
  return text;
}
function scientific(size: number, places: number): string {
  const [mantissa = "", exponent = ""] = size.toExponential(places).split("e");
  return `${mantissa}E${exponent.startsWith("-") ? "-" : "+"}${exponent.replace(/[+-]/, "").padStart(2, "0")}`;
}
function showFraction(value: number, pattern: string): string {
  const fixedUnder = /\/\s*(\d+)/.exec(pattern)?.[1];
  const places = /\/\s*([?#]+)/.exec(pattern)?.[1]?.length ?? 1;
  const mixed = /[#0?]\s+[?#]/.test(pattern);
  const size = Math.abs(value);
  const whole = mixed ? Math.floor(size) : 0;
  let [over, under] =
    fixedUnder === undefined
      ? nearestFraction(size - whole, 10 ** places - 1)
      : [Math.round((size - whole) * Number(fixedUnder)), Number(fixedUnder)];
  let shownWhole = whole;
  if (mixed && over === under) [shownWhole, over, under] = [whole + 1, 0, 1];
  const sign = value < 0 ? "-" : "";
  if (over === 0) return mixed ? sign + String(shownWhole) : "0";
  const part = `${String(over)}/${String(under)}`;
  return sign + (mixed && shownWhole > 0 ? `${String(shownWhole)} ${part}` : part);
}
function nearestFraction(share: number, largest: number): [number, number] {
  let best: [number, number] = [Math.round(share), 1];
  for (let under = 1; under <= largest; under += 1) {
    const over = Math.round(share * under);
    if (Math.abs(over / under - share) < Math.abs(best[0] / best[1] - share) - 1e-12) best = [over, under];
  }
  return best;
}
