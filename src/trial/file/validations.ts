/** Data validation between the book and the sheet's XML; the file library unrolls it cell by cell. */
import { addressOf, parseBox } from "../book/address";
import type { Validation } from "../book/book";
import { isTrue } from "./raw";
import { attributeText, elementsOf, escapeXml, textOf } from "./xml";

const OPERATORS: Readonly<Record<string, string>> = {
  between: "Between",
  notBetween: "NotBetween",
  equal: "EqualTo",
  notEqual: "NotEqualTo",
  greaterThan: "GreaterThan",
  lessThan: "LessThan",
  greaterThanOrEqual: "GreaterThanOrEqualTo",
  lessThanOrEqual: "LessThanOrEqualTo",
};
const ALERTS: Readonly<Record<string, string>> = { stop: "Stop", warning: "Warning", information: "Information" };
/** Kind in the file to kind in the client library. */
const KINDS: Readonly<Record<string, string>> = {
  whole: "wholeNumber",
  decimal: "decimal",
  date: "date",
  time: "time",
  textLength: "textLength",
};
const DAYS_BETWEEN_SYSTEMS = 1462;
export function readValidations(sheetXml: string, days1904: boolean): Validation[] {
  return elementsOf(sheetXml, "dataValidation").flatMap(({ attributes, inner }) => {
    const places = attributes["sqref"] ?? textOf(inner, "sqref") ?? "";
    return places.split(/\s+/).flatMap((place) => {
      const box = parseBox(place);
      return box ? [{ box, ...readRule(attributes, inner, days1904) }] : [];
    });
  });
}
function readRule(attributes: Readonly<Record<string, string>>, inner: string, days1904: boolean): Omit<Validation, "box"> {
  const kind = attributes["type"] ?? "none";
  const first = formulaText(inner, "formula1"),
    second = formulaText(inner, "formula2");
  const prompt = {
    title: attributes["promptTitle"] ?? "",
    message: attributes["prompt"] ?? "",
    showPrompt: isTrue(attributes["showInputMessage"]),
  };
  const alert = {
    title: attributes["errorTitle"] ?? "",
    message: attributes["error"] ?? "",
    showAlert: isTrue(attributes["showErrorMessage"]),
    style: ALERTS[attributes["errorStyle"] ?? "stop"] ?? "Stop",
  };
  const hasPrompt = prompt.title !== "" || prompt.message !== "";
  return {
    rule: ruleOf(kind, attributes, first, second, days1904),
    ignoreBlanks: isTrue(attributes["allowBlank"]),
    ...(hasPrompt && { prompt }),
    errorAlert: alert,
  };
}
function ruleOf(
  kind: string,
  attributes: Readonly<Record<string, string>>,
  first: string,
  second: string | null,
  days1904: boolean,
): Record<string, unknown> {
  if (kind === "none") return {};
  if (kind === "list") {
    const written = /^"(.*)"$/s.exec(first);
    return {
      list: { inCellDropDown: !isTrue(attributes["showDropDown"]), source: written ? (written[1] ?? "").replace(/""/g, '"') : `=${first}` },
    };
  }
  if (kind === "custom") return { custom: { formula: `=${first}` } };
  const shift = kind === "date" && days1904 ? DAYS_BETWEEN_SYSTEMS : 0;
  return {
    [KINDS[kind] ?? kind]: {
      formula1: operand(first, shift),
      ...(second !== null && { formula2: operand(second, shift) }),
      operator: OPERATORS[attributes["operator"] ?? "between"] ?? "Between",
    },
  };
}
/** The x14 form, for rules that look at other sheets, wraps its formula once more. */
function formulaText(inner: string, name: "formula1" | "formula2"): string;
function formulaText(inner: string, name: string): string | null {
  const element = elementsOf(inner, name)[0];
  if (!element) return name === "formula1" ? "" : null;
  return textOf(element.inner, "f") ?? textOf(inner, name);
}
function operand(text: string, shift: number): number | string {
  const number = Number(text);
  return text !== "" && Number.isFinite(number) ? number + shift : `=${text}`;
}
export function validationsXml(validations: readonly Validation[]): string {
  if (validations.length === 0) return "";
  return `<dataValidations count="${String(validations.length)}">${validations.map(validationXml).join("")}</dataValidations>`;
}
function validationXml(validation: Validation): string {
  const [kind, rule] = Object.entries(validation.rule)[0] ?? [null, {}];
  const members = rule as Record<string, unknown>;
  const fileKind = kind === null ? undefined : (Object.entries(KINDS).find(([, name]) => name === kind)?.[0] ?? kind);
  const operator = Object.entries(OPERATORS).find(([, name]) => name === members["operator"])?.[0];
  const { prompt, errorAlert } = validation;
  const formulas =
    kind === "list"
      ? [listFormula(String(members["source"]))]
      : kind === "custom"
        ? [fileFormula(members["formula"])]
        : [members["formula1"], members["formula2"]].filter((formula) => formula !== undefined).map(fileFormula);
  const attributes = attributeText({
    type: fileKind,
    errorStyle: errorAlert && errorAlert.style !== "Stop" ? errorAlert.style.toLowerCase() : undefined,
    operator: operator === "between" ? undefined : operator,
    allowBlank: validation.ignoreBlanks ? 1 : undefined,
    showDropDown: members["inCellDropDown"] === false ? 1 : undefined,
    showInputMessage: prompt?.showPrompt ? 1 : undefined,
    showErrorMessage: (errorAlert?.showAlert ?? true) ? 1 : undefined,
    errorTitle: filled(errorAlert?.title),
    error: filled(errorAlert?.message),
    promptTitle: filled(prompt?.title),
    prompt: filled(prompt?.message),
    sqref: addressOf(validation.box),
  });
  return `<dataValidation${attributes}>${formulas.map((formula, at) => formulaXml(`formula${String(at + 1)}`, formula)).join("")}</dataValidation>`;
}
function filled(text: string | undefined): string | undefined {
  return text === "" ? undefined : text;
}
function formulaXml(name: string, formula: string): string {
  return `<${name}>${escapeXml(formula)}</${name}>`;
}
function listFormula(source: string): string {
  return source.startsWith("=") ? source.slice(1) : `"${source.replace(/"/g, '""')}"`;
}
function fileFormula(formula: unknown): string {
  const text = String(formula);
  return text.startsWith("=") ? text.slice(1) : text;
}
