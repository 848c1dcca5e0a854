import { invalidArgument } from "./errors";

/** The sixteen names of HTML 4 and orange, which the client library takes beside `#RRGGBB`. */
const NAMED: Readonly<Record<string, string>> = {
  black: "#000000",
  silver: "#C0C0C0",
  gray: "#808080",
  white: "#FFFFFF",
  maroon: "#800000",
  red: "#FF0000",
  purple: "#800080",
  fuchsia: "#FF00FF",
  green: "#008000",
  lime: "#00FF00",
  olive: "#808000",
  yellow: "#FFFF00",
  navy: "#000080",
  blue: "#0000FF",
  teal: "#008080",
  aqua: "#00FFFF",
  orange: "#FFA500",
};
export function colorOf(given: unknown, location: string): string {
  const text = String(given).trim();
  if (/^#[0-9a-f]{6}$/i.test(text)) return text.toUpperCase();
  const named = NAMED[text.toLowerCase()];
  if (named === undefined) throw invalidArgument(`${text} is no colour.`, location);
  return named;
}
