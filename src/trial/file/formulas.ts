/** Formulas as a person reads them and as the file has them: prefixes of newer functions and of the add-in's, table references. */
import { mapCode } from "../book/formula-text";
import { fromFileForm, toFileForm } from "../book/table-references";

/** Functions younger than the file format, which carry a prefix in the file. */
const PREFIXED = [
  "ACOT",
  "AGGREGATE",
  "CEILING.MATH",
  "COVARIANCE.P",
  "COVARIANCE.S",
  "FLOOR.MATH",
  "FORECAST.LINEAR",
  "MODE.SNGL",
  "NORM.DIST",
  "NORM.INV",
  "NORM.S.DIST",
  "NORM.S.INV",
  "PERCENTILE.EXC",
  "PERCENTILE.INC",
  "QUARTILE.EXC",
  "QUARTILE.INC",
  "RANK.AVG",
  "RANK.EQ",
  "T.DIST",
  "T.DIST.2T",
  "T.INV",
  "T.INV.2T",
  "ARRAYTOTEXT",
  "BYCOL",
  "BYROW",
  "CHOOSECOLS",
  "CHOOSEROWS",
  "CONCAT",
  "DAYS",
  "DROP",
  "EXPAND",
  "FORMULATEXT",
  "HSTACK",
  "IFNA",
  "IFS",
  "ISFORMULA",
  "ISOMITTED",
  "LAMBDA",
  "LET",
  "MAKEARRAY",
  "MAP",
  "MAXIFS",
  "MINIFS",
  "NUMBERVALUE",
  "RANDARRAY",
  "REDUCE",
  "SCAN",
  "SEQUENCE",
  "SHEET",
  "SHEETS",
  "SORTBY",
  "STDEV.P",
  "STDEV.S",
  "SWITCH",
  "TAKE",
  "TEXTAFTER",
  "TEXTBEFORE",
  "TEXTJOIN",
  "TEXTSPLIT",
  "TOCOL",
  "TOROW",
  "UNIQUE",
  "VALUETOTEXT",
  "VAR.P",
  "VAR.S",
  "VSTACK",
  "WRAPCOLS",
  "WRAPROWS",
  "XLOOKUP",
  "XMATCH",
  "XOR",
];
/** These carry a second one. */
const DOUBLE_PREFIXED = ["FILTER", "SORT"];
const FUNCTION = /(?<![\p{L}\p{N}_.])([\p{L}_][\p{L}\p{N}_.]*)(?=\()/gu;
const NAMESPACE = "GEAR";
/** `functions` are dotted names of add-in functions beside those in the namespace GEAR. */
export function formulaFromFile(text: string, functions: readonly string[] = []): string {
  const known = new Map(functions.map((name) => [name.replace(/\./g, "_").toUpperCase(), name]));
  const named = mapCode(text, (code) =>
    code
      .replace(/_xldudf_([\p{L}\p{N}_]+)(?=\()/giu, (found, name: string) => {
        const upper = name.toUpperCase();
        // The file can't say which underscore was the dot; the namespace can.
        return known.get(upper) ?? (upper.startsWith(`${NAMESPACE}_`) ? `${NAMESPACE}.${upper.slice(NAMESPACE.length + 1)}` : found);
      })
      .replace(/_xlfn\.(?:_xlws\.)?/gi, "")
      .replace(/_xlpm\./gi, ""),
  );
  return `=${fromFileForm(named)}`;
}
/** `table` is the table in which the formula stands, whose name it may leave out. */
export function formulaToFile(formula: string, table: string | null, functions: readonly string[] = []): string {
  const known = new Set(functions.map((name) => name.toUpperCase()));
  const written = mapCode(formula.replace(/^=/, ""), (code) =>
    code.replace(FUNCTION, (name: string) => {
      const upper = name.toUpperCase();
      if (upper.startsWith(`${NAMESPACE}.`) || known.has(upper)) return `_xldudf_${upper.replace(/\./g, "_")}`;
      if (DOUBLE_PREFIXED.includes(upper)) return `_xlfn._xlws.${upper}`;
      return PREFIXED.includes(upper) ? `_xlfn.${upper}` : name;
    }),
  );
  return toFileForm(withParameterPrefix(formula, written), table);
}
/** Names that LET and LAMBDA give carry a prefix of their own wherever they stand. */
function withParameterPrefix(formula: string, written: string): string {
  const names = givenNames(formula);
  if (names.size === 0) return written;
  return mapCode(written, (code) =>
    code.replace(/(?<![\p{L}\p{N}_.!])[\p{L}_][\p{L}\p{N}_.]*(?![\p{L}\p{N}_.!])/gu, (word) =>
      names.has(word.toUpperCase()) ? `_xlpm.${word}` : word,
    ),
  );
}
function givenNames(formula: string): Set<string> {
  const names = new Set<string>();
  // Quoted texts are blanked, so that a comma in them parts nothing.
  const plain = formula.replace(/"(?:[^"]|"")*"/g, (text) => " ".repeat(text.length));
  for (const found of plain.matchAll(/(?<![\p{L}\p{N}_.])(LET|LAMBDA)\(/giu)) {
    const parts = argumentsFrom(plain, found.index + found[0].length);
    const lambda = found[1]?.toUpperCase() === "LAMBDA";
    parts.slice(0, -1).forEach((part, at) => {
      if (lambda || at % 2 === 0) names.add(part.trim().toUpperCase());
    });
  }
  return names;
}
function argumentsFrom(formula: string, start: number): string[] {
  const parts = [""];
  let depth = 0;
  for (let at = start; at < formula.length; at += 1) {
    const character = formula.charAt(at);
    if (character === ")" && depth === 0) break;
    if ("([{".includes(character)) depth += 1;
    if (")]}".includes(character)) depth -= 1;
    if (character === "," && depth === 0) parts.push("");
    else parts.push((parts.pop() ?? "") + character);
  }
  return parts;
}
