/** A figure that does not fit its column is shown as number signs, as in Excel: half a date is worse than none. */
import type { IStyleData } from "@univerjs/core";

export const FONT = "Arial";
export const FONT_SIZE = 10;
const PIXELS_PER_POINT = 4 / 3;
const PADDING = 5;
const widths = new Map<string, number>();
let pen: CanvasRenderingContext2D | null | undefined;
export function hashes(text: string, style: IStyleData, columnWidth: number): string {
  const font = `${style.bl ? "bold " : ""}${String((style.fs ?? FONT_SIZE) * PIXELS_PER_POINT)}px ${style.ff ?? FONT}`;
  const room = columnWidth - PADDING;
  if (measured(text, font) <= room) return text;
  return "#".repeat(Math.max(1, Math.floor(room / measured("#", font))));
}
function measured(text: string, font: string): number {
  const key = `${font} ${text}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  pen ??= document.createElement("canvas").getContext("2d");
  if (!pen) return 0;
  pen.font = font;
  const { width } = pen.measureText(text);
  if (widths.size > 5000) widths.clear();
  widths.set(key, width);
  return width;
}
