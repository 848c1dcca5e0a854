/** Date and time formats: `m/d/yyyy`, `d-mmm-yy`, `[h]:mm`, `h:mm AM/PM`. */
import { dayOf } from "./serial";

const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];
const WEEKDAYS = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];
const TOKEN = /"[^"]*"|\\.|\[\$[^\]]*\]|\[h+\]|\[m+\]|\[s+\]|\[[^\]]*\]|_.|\*.|AM\/PM|A\/P|y+|m+|d+|h+|s+(?:\.0+)?|./gi;
export function showDate(serial: number, section: string): string {
  // Excel fills the cell with # for days before the calendar begins.
  if (serial < 0 || serial >= 2_958_466) return "########";
  const tokens = section.match(TOKEN) ?? [];
  const withHalves = tokens.some((token) => /^(AM\/PM|A\/P)$/i.test(token));
  const seconds = Math.round((serial - Math.floor(serial)) * 86_400);
  const date = dayOf(Math.floor(serial) + (seconds === 86_400 ? 1 : 0));
  const clock = { hour: Math.floor(seconds / 3600) % 24, minute: Math.floor(seconds / 60) % 60, second: seconds % 60 };
  return tokens
    .map((token, at) => {
      const kind = token.toLowerCase();
      const width = token.length;
      if (token.startsWith('"')) return token.slice(1, -1);
      if (token.startsWith("\\")) return token.slice(1);
      if (kind.startsWith("[h")) return pad(Math.floor(Math.round(serial * 86_400) / 3600), width - 2);
      if (kind.startsWith("[m")) return pad(Math.floor(Math.round(serial * 86_400) / 60), width - 2);
      if (kind.startsWith("[s")) return pad(Math.round(serial * 86_400), width - 2);
      if (kind.startsWith("[") || token.startsWith("*")) return "";
      if (token.startsWith("_")) return " ";
      if (kind === "am/pm") return clock.hour < 12 ? "AM" : "PM";
      if (kind === "a/p") return clock.hour < 12 ? "A" : "P";
      if (kind.startsWith("y")) return width > 2 ? String(date.year).padStart(4, "0") : pad(date.year % 100, 2);
      if (kind.startsWith("d")) return width > 2 ? name(WEEKDAYS[date.weekday] ?? "", width) : pad(date.day, width);
      if (kind.startsWith("h")) return pad(withHalves ? clock.hour % 12 || 12 : clock.hour, width);
      if (kind.startsWith("s"))
        return pad(clock.second, Math.min(2, width)) + (kind.includes(".") ? `.${"0".repeat(width - kind.indexOf(".") - 1)}` : "");
      if (kind.startsWith("m"))
        return isMinutes(tokens, at) ? pad(clock.minute, width) : width > 2 ? monthName(date.month, width) : pad(date.month, width);
      return token;
    })
    .join("");
}
function pad(number: number, width: number): string {
  return String(number).padStart(width >= 2 ? 2 : 1, "0");
}
function name(word: string, width: number): string {
  return width === 3 ? word.slice(0, 3) : word;
}
function monthName(month: number, width: number): string {
  const word = MONTHS[month - 1] ?? "";
  return width === 5 ? word.slice(0, 1) : name(word, width);
}
/** "m" means minutes beside hours and seconds, months elsewhere. */
function isMinutes(tokens: readonly string[], at: number): boolean {
  const letters = (token: string | undefined): string =>
    token !== undefined && /^\[?[hsdmy]/i.test(token) ? token.replace("[", "").charAt(0).toLowerCase() : "";
  const before = tokens
    .slice(0, at)
    .reverse()
    .find((token) => letters(token) !== "");
  const after = tokens.slice(at + 1).find((token) => letters(token) !== "");
  return letters(before) === "h" || letters(after) === "s";
}
