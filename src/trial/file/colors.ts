/** Colours of a file: plain, from the theme with a tint, or from the old palette. */
interface FileColor {
  argb?: string;
  theme?: number;
  tint?: number;
  indexed?: number;
}
/** Colours 8 to 63 of the old palette; 0 to 7 are the same as 8 to 15. */
const PALETTE = (
  "000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF 800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF " +
  "000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 " +
  "003366 339966 003300 333300 993300 993366 333399 333333"
).split(" ");
/** `#RRGGBB`, or null when the file leaves the colour to the program. */
export function readColor(color: FileColor | undefined, theme: readonly string[]): string | null {
  if (!color) return null;
  if (color.argb !== undefined) return `#${color.argb.slice(-6).toUpperCase()}`;
  if (color.theme !== undefined) return tinted(theme[color.theme] ?? "000000", color.tint ?? 0);
  if (color.indexed === undefined || color.indexed >= 64) return null;
  return `#${PALETTE[color.indexed < 8 ? color.indexed : color.indexed - 8] ?? "000000"}`;
}
/** Lighter towards white, darker towards black: near enough to the lightness of the file format for looking at. */
function tinted(hex: string, tint: number): string {
  const parts = [0, 2, 4].map((at) => parseInt(hex.slice(at, at + 2), 16));
  const mixed = parts.map((part) => Math.round(tint < 0 ? part * (1 + tint) : part + (255 - part) * tint));
  return `#${mixed
    .map((part) => part.toString(16).padStart(2, "0"))
    .join("")
    .toUpperCase()}`;
}
export function fileColor(color: string): { argb: string } {
  return { argb: `FF${color.slice(1)}` };
}
