/** Table references inside formulas: renaming, and the longer form that files use for "this row". */
import { quoteSheet } from "./address";
import { mapCode, piecesOf } from "./formula-text";

const WORD = /[\p{L}\p{N}_.\\?]/u;
function escapeRegExp(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
/** A heading inside brackets: apostrophes before the characters that mean something there. */
function bracketed(heading: string): string {
  return heading.replace(/['[\]#]/g, "'$&");
}
/** `[@Id]` is enough for a plain heading, `[@[Last date]]` is needed for others. */
function thisRow(heading: string): string {
  return /^[\p{L}\p{N}_]+$/u.test(heading) ? `[@${heading}]` : `[@[${heading}]]`;
}
/** Changes each bracket; `table` is the name in front of it, "" when none stands there. */
function mapBrackets(formula: string, change: (bracket: string, table: string) => string): string {
  const pieces = piecesOf(formula);
  if (!pieces) return formula;
  return pieces
    .map((piece, at) => {
      if (piece.kind !== "bracket") return piece.text;
      const code = pieces[at - 1];
      let start = code?.kind === "code" ? code.text.length : 0;
      while (start > 0 && WORD.test(code?.text.charAt(start - 1) ?? "")) start -= 1;
      return change(piece.text, code?.kind === "code" ? code.text.slice(start) : "");
    })
    .join("");
}
export function renameTable(formula: string, from: string, to: string): string {
  const word = new RegExp(`(?<![\\p{L}\\p{N}_.])${escapeRegExp(from)}(?![\\p{L}\\p{N}_.(!])`, "giu");
  return mapCode(formula, (code) => code.replace(word, () => to));
}
export function renameSheet(formula: string, from: string, to: string): string {
  const pieces = piecesOf(formula);
  if (!pieces) return formula;
  const quoted = `'${from.replace(/'/g, "''")}'`.toLowerCase();
  const plain = new RegExp(`(?<![\\p{L}\\p{N}_.])${escapeRegExp(from)}!`, "giu");
  return pieces
    .map(({ kind, text }, at) => {
      if (kind === "sheet" && text.toLowerCase() === quoted && pieces[at + 1]?.text.startsWith("!")) return quoteSheet(to);
      return kind === "code" ? text.replace(plain, () => `${quoteSheet(to)}!`) : text;
    })
    .join("");
}
/** `own` says whether the formula stands in the table itself, where its name may be left out. */
export function renameHeading(formula: string, table: string, from: string, to: string, own: boolean): string {
  const old = bracketed(from).toLowerCase();
  return mapBrackets(formula, (bracket, name) => {
    if (name === "" ? !own : name.toLowerCase() !== table.toLowerCase()) return bracket;
    const inner = bracket.slice(1, -1);
    if (inner.toLowerCase() === old) return `[${bracketed(to)}]`;
    if (inner.toLowerCase() === `@${old}`) return thisRow(bracketed(to));
    return bracket.replace(/\[((?:[^'[\]]|'.)*)\]/g, (part, heading: string) =>
      heading.toLowerCase() === old ? `[${bracketed(to)}]` : part,
    );
  });
}
/** As a file has it: `Gear[@Id]` becomes `Gear[[#This Row],[Id]]`; `own` is the table the formula stands in. */
export function toFileForm(formula: string, own: string | null): string {
  return mapBrackets(formula, (bracket, name) => {
    const inner = bracket.slice(1, -1);
    const prefix = name === "" && own !== null ? own : "";
    if (!inner.startsWith("@")) return prefix + bracket;
    const rest = inner.slice(1);
    if (rest === "") return `${prefix}[#This Row]`;
    return `${prefix}[[#This Row],${rest.startsWith("[") ? rest : `[${rest}]`}]`;
  });
}
/** As Excel shows it: `Gear[[#This Row],[Id]]` becomes `Gear[@Id]`. */
export function fromFileForm(formula: string): string {
  return mapBrackets(formula, (bracket) => {
    if (/^\[#this row\]$/i.test(bracket)) return "[@]";
    const parts = /^\[\[#this row\],(.*)\]$/is.exec(bracket);
    if (!parts) return bracket;
    const columns = parts[1] ?? "";
    const single = /^\[((?:[^'[\]]|'.)*)\]$/.exec(columns);
    return single ? thisRow(single[1] ?? "") : `[@${columns}]`;
  });
}
